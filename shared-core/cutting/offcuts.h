#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// What the new remnants of a plan are credited with, in whole square millimetres of their area times the
/// percentage of the rules: it breaks ties between plans of equal cost and setups.
[[nodiscard]] std::int64_t creditOf(const Problem& problem, const Plan& plan);

/// The same sheets and strips with the room at strip ends gathered into fewer, longer offcuts: blanks move
/// from the emptiest strips of a width to others of that width, wherever that leaves more that is worth
/// keeping.
[[nodiscard]] RawPlan withLargerOffcuts(const Instance& instance, const RawPlan& plan);

} // namespace lapwright::cutting
