#pragma once

#include "schedule/schedule.h"

#include <cstdint>
#include <vector>

/// What no schedule of a problem can undercut. Every bound drops rules until what is left can be solved.
namespace lapwright::schedule {

/// The greatest of the bounds below. Work is the unit of Settings::workLimit, counted onto `work`.
[[nodiscard]] Bound boundOf(const Problem& problem, std::int64_t& work);

/// Makespan: all work and all mandatory setups of a stage fill its machines' hours, folding cannot begin
/// before the first blank, for each later first blank the lots that come after it must follow, and after the
/// last cut something is still to be folded; each lot by itself; and Johnson's rule (johnson.h).
[[nodiscard]] Duration makespanBound(const Problem& problem);

/// Weighted lateness, the greatest of three. Alone: each delivery as if it had the shop to itself. In turn:
/// the k-th delivery to be finished is finished no earlier than the k smallest can be on machines that all
/// work on one at once; the cheapest matching of these moments with the deliveries. Of the first due: the
/// last of all deliveries due by a date is not finished before their work is done.
[[nodiscard]] std::int64_t latenessBound(const Problem& problem, std::int64_t& work);

/// The cost of the cheapest matching of rows with columns of a square matrix, by shortest augmenting paths
/// with integer duals. Rows one after the other.
[[nodiscard]] std::int64_t cheapestMatching(const std::vector<std::vector<std::int64_t>>& cost);

} // namespace lapwright::schedule
