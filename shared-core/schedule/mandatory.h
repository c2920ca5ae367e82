#pragma once

#include "schedule/problem.h"

#include <vector>

namespace lapwright::schedule {

/// The setups of a stage that every schedule makes at least once: each fitting and each setting that tasks
/// need on whatever machine they go to, and no machine stands ready with. Seconds each, the least.
[[nodiscard]] std::vector<Duration> mandatorySetups(const Problem& problem, Stage stage);

} // namespace lapwright::schedule
