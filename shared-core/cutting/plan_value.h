#pragma once

#include "cutting/plan.h"

/// The money and metal of plans as the checker counts them, without any code of the search.
namespace lapwright::cutting {

[[nodiscard]] Measure countedIn(const Problem& problem);
[[nodiscard]] std::int64_t scaleOf(const Problem& problem);

/// What one sheet or remnant, or one level of a coil takes, in the measure and scale of the plan; rounded up.
/// `level` is of a coil only, without its kerf.
[[nodiscard]] std::int64_t costOfOne(const Problem& problem, std::size_t stock, Length level);

/// The plan's value counted from its patterns: what they take less the credits of the remnants they leave.
[[nodiscard]] std::int64_t valueOf(const Problem& problem, const std::vector<Pattern>& patterns);
/// The same of the patterns that hold a blank of this due class or an earlier one.
[[nodiscard]] std::int64_t costDueBy(const Problem& problem, const std::vector<Pattern>& patterns,
                                     int dueClass);

} // namespace lapwright::cutting
