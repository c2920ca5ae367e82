#pragma once

#include "schedule/problem.h"

#include <vector>

namespace lapwright::schedule {

/// The pins that can be kept each for itself, the tasks with only the ways their pins leave, and the rest
/// with its reason.
struct PinAdmission {
    std::vector<Task> tasks;
    std::vector<Pin> kept; ///< at most one a task
    rules::Findings refused;
};

/// Refused, and told as blocking findings: a second pin of a task; a machine that cannot do the task; a
/// start before the schedule begins or outside the machine's hours; a start at which another pinned task
/// still runs on the same machine; a lot's start before its blanks can be cut; "after" itself, after a task
/// that no machine of this one can do, or in a ring.
[[nodiscard]] PinAdmission admitPins(const Problem& problem, const std::vector<Pin>& pins);

} // namespace lapwright::schedule
