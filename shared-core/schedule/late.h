#pragma once

#include "schedule/schedule.h"

#include <vector>

namespace lapwright::schedule {

/// Why each lot that ends after its delivery is due does so, the latest first. Precondition: the blocks are a
/// schedule of the problem that passes its check.
[[nodiscard]] std::vector<LateReason> whyLate(const Problem& problem, const std::vector<Block>& blocks);

} // namespace lapwright::schedule
