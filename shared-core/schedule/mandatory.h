#pragma once

#include "schedule/problem.h"

#include <vector>

namespace lapwright::schedule {

/// The setups of a stage that every schedule makes at least once: each fitting and each setting that tasks
/// need on whatever machine they go to, and no machine stands ready with; and at least one change for each
/// different pair of the two. The least time of each.
[[nodiscard]] std::vector<Duration> mandatorySetups(const Problem& problem, Stage stage);

} // namespace lapwright::schedule
