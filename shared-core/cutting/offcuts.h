#pragma once

#include "cutting/instance.h"

#include <functional>

namespace lapwright::cutting {

/// The same sheets and strips with the room at strip ends gathered into fewer, longer offcuts: blanks move
/// from the emptiest strips of a width to others of that width, wherever that leaves more that is worth
/// keeping. `stop` is asked often; true ends it with what has been gathered.
[[nodiscard]] RawPlan withLargerOffcuts(const Instance& instance, const RawPlan& plan,
                                        const std::function<bool()>& stop);

} // namespace lapwright::cutting
