#pragma once

#include "cutting/plan.h"
#include "cutting/settings.h"

namespace lapwright::cutting {

/// The best plan found within the limits: first fit at once, then improved until proven least or a limit.
/// Every plan returned has passed the checker; `feasibility` holds its findings. Where limited stock cannot
/// hold all blanks the plan cuts what it can and lists the rest in `notCut`.
[[nodiscard]] Plan solve(const Problem& problem, const Settings& settings = {}, const Control& control = {});

} // namespace lapwright::cutting
