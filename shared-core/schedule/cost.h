#pragma once

#include "measure/result.h"
#include "pieces/order.h"
#include "schedule/cost_rates.h"

#include "measure/phrase.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// One line of a cost: what for, how it comes about, how much.
struct CostLine {
    Phrase what;
    Phrase how;
    std::int64_t cents = 0;

    friend bool operator==(const CostLine&, const CostLine&) = default;
};

struct Cost {
    std::string currency;
    std::vector<CostLine>
        lines;              ///< one for each material, one for the labour; tax is the last where there is one
    std::int64_t cents = 0; ///< their sum
    std::string note;       ///< what the shop says below it; may be empty

    friend bool operator==(const Cost&, const Cost&) = default;
};

/// What the pieces of `order` cost at a shop's rates: metal of the blanks (girth × longest points) by mass or
/// area, the waste share on it, then labour. Each line is rounded to the nearest cent, halves up, and the sum
/// is that of the lines. The arithmetic is in whole grams, square millimetres, seconds and cents; it
/// saturates nowhere inside what the schemas admit. Errors: a material of the order without a rate; place
/// names it.
[[nodiscard]] Result<Cost> costOf(const pieces::Order& order, const CostRates& rates);

/// "1 234.50 USD".
[[nodiscard]] std::string writeMoney(std::int64_t cents, const std::string& currency);

} // namespace lapwright::schedule
