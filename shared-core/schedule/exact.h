#pragma once

#include "schedule/search.h"
#include "schedule/timing.h"
#include "schedule/watch.h"

namespace lapwright::schedule {

/// Up to so many tasks of a stage every order is tried.
inline constexpr std::size_t mostExactTasks = 9;

struct ExactAnswer {
    Candidate best;
    bool proven = false; ///< every order that could be better was tried
};

/// Branch and bound over all orders on all machines, cutting first: a branch is left where nothing that can
/// follow is better than the best so far. Ends unproven after `mostPlaced` tasks or when the watch says so.
/// Precondition: no stage has more than mostExactTasks tasks.
[[nodiscard]] ExactAnswer everyOrder(Timing& timing, Candidate start, std::int64_t mostPlaced, Watch& watch);

} // namespace lapwright::schedule
