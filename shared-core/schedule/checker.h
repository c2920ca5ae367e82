#pragma once

#include "schedule/schedule.h"

#include <string>
#include <vector>

namespace lapwright::schedule {

/// What an independent look at a schedule found. It shares no code with the search: it walks the blocks over
/// the machines' hours shift by shift and counts pieces, setups, lateness and makespan anew. Of the problem
/// it trusts the parts given and the hours, nothing derived.
struct Verdict {
    Feasibility feasibility;
    std::vector<std::string> faults; ///< one for each rule broken, naming where
};

[[nodiscard]] Verdict check(const Problem& problem, const Schedule& schedule);

} // namespace lapwright::schedule
