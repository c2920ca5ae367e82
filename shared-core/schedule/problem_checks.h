#pragma once

#include "schedule/problem.h"

#include <vector>

namespace lapwright::schedule {

/// Everything that keeps these parts from being a problem, pins' indices included; see ProblemBuilder::build.
[[nodiscard]] std::vector<Error> faultsOf(Moment begin, const std::vector<Machine>& machines,
                                          const std::vector<Task>& tasks, const std::vector<Supply>& supplies,
                                          const std::vector<Delivery>& deliveries,
                                          const std::vector<Pin>& pins);

} // namespace lapwright::schedule
