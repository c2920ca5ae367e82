#pragma once

#include "pieces/order.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// A length that the site cuts from stock, and the mark it then has.
struct WantedCut {
    std::string mark;
    Length length;
};

/// A guide for cutting `wanted` from stock lengths of `stock`, numbered from `firstStock`: the longest first,
/// each from the offcut it leaves least of, a new stock length where none is long enough (best fit
/// decreasing). The lines of one stock length follow one another; their lengths and the last `left` sum to
/// `stock` exactly. Snips take no kerf. Precondition: 0 < length <= stock for every wanted cut.
[[nodiscard]] std::vector<SiteCut> cutFromStock(std::vector<WantedCut> wanted, Length stock,
                                                std::int64_t firstStock);

} // namespace lapwright::pieces
