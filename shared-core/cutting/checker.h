#pragma once

#include "cutting/plan.h"

#include <vector>

namespace lapwright::cutting {

/// What an independent look at a plan found: it shares no code with the search, solves no linear program, and
/// recomputes positions, sums, remnants, waste, value and bound from the problem and the patterns alone.
struct Verdict {
    Feasibility feasibility;
    std::vector<Phrase> faults; ///< one for each rule broken, naming where
    Waste waste;
    std::int64_t value = 0;
    std::int64_t bound = 0; ///< what the certificate proves; 0 where it proves nothing
};

[[nodiscard]] Verdict check(const Problem& problem, const Plan& plan);

} // namespace lapwright::cutting
