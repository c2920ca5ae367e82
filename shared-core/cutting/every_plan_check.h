#pragma once

#include "cutting/plan.h"

namespace lapwright::cutting {

/// Whether no plan for all blanks is worth less than `value`, found by trying them all, in lengths and
/// without any code of the search. False as well where there are too many to try.
[[nodiscard]] bool noPlanIsCheaper(const Problem& problem, std::int64_t value);

} // namespace lapwright::cutting
