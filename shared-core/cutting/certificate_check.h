#pragma once

#include "cutting/plan.h"

#include <limits>

namespace lapwright::cutting {

/// What the certificate proves, by whole numbers alone; 0 where it proves nothing. No code of the search is
/// used. Of the patterns that hold blanks due by `lastDue` only, where its values say so.
[[nodiscard]] std::int64_t provenBound(const Problem& problem, const Certificate& certificate,
                                       int lastDue = std::numeric_limits<int>::max());

} // namespace lapwright::cutting
