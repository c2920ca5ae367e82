#pragma once

#include "cutting/instance.h"

#include <vector>

namespace lapwright::cutting {

/// Part of the demand and of the stock as an instance of its own, with the way back.
struct Part {
    Instance instance;
    std::vector<std::vector<int>> placements; ///< for each frame the placement of the whole
    std::vector<int> stocks;                  ///< the stock of the whole

    [[nodiscard]] RawPlan inWhole(RawPlan plan, const Instance& whole) const;
};

/// Whether a part keeps all widths of strips, with the numbers they have in the whole, or those it has blanks
/// for.
enum class Widths { All, Wanted };

/// `demands` of each kind; `available` of each stock, negative for no limit, 0 to leave it out. Something
/// must be wanted and something at hand.
[[nodiscard]] Part partOf(const Instance& whole, const std::vector<std::int64_t>& demands,
                          const std::vector<std::int64_t>& available, Widths widths);

/// What patterns cut of each kind, and take of each stock, added up.
struct Content {
    std::vector<std::int64_t> kinds, stocks;
};
[[nodiscard]] Content contentOf(const Instance& instance, const RawPlan& plan);

/// The plan in terms of the part. Precondition: it cuts nothing else.
[[nodiscard]] RawPlan inPart(const Part& part, const RawPlan& plan);

} // namespace lapwright::cutting
