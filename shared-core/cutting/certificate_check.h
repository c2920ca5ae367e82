#pragma once

#include "cutting/plan.h"

namespace lapwright::cutting {

/// What the certificate proves, by whole numbers alone; 0 where it proves nothing. No code of the search is
/// used.
[[nodiscard]] std::int64_t provenBound(const Problem& problem, const Certificate& certificate);

/// The plan's value counted from its patterns, and in what and at which scale it must be counted.
[[nodiscard]] std::int64_t valueOf(const Problem& problem, const std::vector<Pattern>& patterns);
/// The same of the patterns that hold a blank of this due class or an earlier one.
[[nodiscard]] std::int64_t costDueBy(const Problem& problem, const std::vector<Pattern>& patterns,
                                     int dueClass);
[[nodiscard]] Measure countedIn(const Problem& problem);
[[nodiscard]] std::int64_t scaleOf(const Problem& problem);

} // namespace lapwright::cutting
