#pragma once

#include "schedule/timing.h"
#include "schedule/watch.h"

#include <optional>

namespace lapwright::schedule {

/// Orders of tasks and their score.
struct Candidate {
    Sequences sequences;
    Score score;
};

/// Looks for a better candidate from `start`: tasks, runs of tasks that need the same setting, and lots
/// together with what they are cut from are moved and exchanged; a change is taken if it is no worse than
/// what stood some hundred changes ago (late acceptance: E. K. Burke, Y. Bykov, "The late acceptance
/// hill-climbing heuristic", European Journal of Operational Research 258 (2017) 70-78), so only comparisons
/// of scores are needed. Starts anew near the best when it stands still, and ends where nothing can be better
/// than `least`. Never worse than `start`.
[[nodiscard]] Candidate searched(Timing& timing, Candidate start, std::uint64_t seed, Watch& watch,
                                 const std::optional<Score>& least = std::nullopt);

} // namespace lapwright::schedule
