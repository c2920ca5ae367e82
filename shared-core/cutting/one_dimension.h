#pragma once

#include <cstdint>
#include <utility>
#include <vector>

/// The one-dimensional cutting-stock problem: fewest bars of one capacity for items of some sizes.
namespace lapwright::cutting {

struct BarProblem {
    int capacity = 0;
    std::vector<int> sizes; ///< each between 1 and capacity
    std::vector<std::int64_t> demands;
    int mostPieces = 0; ///< on one bar
};

struct BarPattern {
    std::int64_t count = 1;
    std::vector<std::pair<int, int>> pieces; ///< item, how many on one bar
};

struct BarPlan {
    std::vector<BarPattern> patterns; ///< cut exactly what is demanded
    std::int64_t bars = 0;
    /// Worth of each item such that no bar is worth more than mostValue: bars >= ceil(sum of demand × worth /
    /// mostValue).
    std::vector<std::int64_t> worth;
    std::int64_t mostValue = 1;
    std::int64_t bound = 0;
    std::int64_t work = 0;
};

/// Column generation, then residual rounding in `attempts` ways while the bound is not reached.
[[nodiscard]] BarPlan cutBars(const BarProblem& problem, int attempts, std::uint64_t seed);

} // namespace lapwright::cutting
