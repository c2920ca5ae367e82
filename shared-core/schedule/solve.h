#pragma once

#include "schedule/settings.h"

namespace lapwright::schedule {

/// The best schedule found: pins kept before anything else, then the least weighted lateness, then the least
/// makespan, then the least time of making ready. Johnson's rule where it is proved to be best; every order
/// where there are few tasks; otherwise simple rules and a search from the best of them until the work limit.
/// Checked (checker.h), with a bound, and with what two simple rules would have given.
[[nodiscard]] Schedule solve(const Problem& problem, const Settings& settings, const GoOn& goOn = {});

} // namespace lapwright::schedule
