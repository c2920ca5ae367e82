#pragma once

#include <cstdint>
#include <functional>
#include <limits>
#include <utility>
#include <vector>

/// The one-dimensional cutting-stock problem: fewest bars of one capacity for items of some sizes.
namespace lapwright::cutting {

struct BarProblem {
    int capacity = 0;
    std::vector<int> sizes; ///< each between 1 and capacity; larger ones where none is wanted
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
    double relaxed = 0.0; ///< the bound before rounding up
    /// The basis of the relaxation: bars, and items whose demand it leaves slack. A good start for a search
    /// that holds this one as a part; empty where none was needed.
    std::vector<std::vector<std::pair<int, int>>> basicBars;
    std::vector<int> slackItems;
    std::int64_t work = 0; ///< ticks, see watch.h
};

struct BarSearch {
    int attempts = 6;   ///< ways of rounding while the bound is not reached
    int repackings = 0; ///< after each of them: some bars taken out of the plan and cut anew
    std::uint64_t seed = 1;
    double noise = 0.0; ///< in the order of the first rounding: for another plan with another seed
    std::int64_t workLimit = std::numeric_limits<std::int64_t>::max();
    std::function<bool()> stop; ///< asked often; true ends the search with the plan so far
};

/// Column generation, then residual rounding. Always a whole plan, stopped or not.
[[nodiscard]] BarPlan cutBars(const BarProblem& problem, const BarSearch& search);

} // namespace lapwright::cutting
