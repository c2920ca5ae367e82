#pragma once

#include "schedule/timing.h"

#include <cstdint>
#include <vector>

namespace lapwright::schedule {

/// What a second of making ready counts in each stage where the next task is chosen; a place in the order
/// counts 100, a second of waiting for metal 50.
struct SetupCare {
    std::int64_t cutting = 0;
    std::int64_t folding = 0;
};

/// A schedule made as a foreman would: the machine that is free first takes the task that costs least by its
/// place in `order`, its setup and its waiting. Pins as in construct.h.
[[nodiscard]] Sequences dispatched(Timing& timing, const std::vector<std::size_t>& order,
                                   const SetupCare& care);

} // namespace lapwright::schedule
