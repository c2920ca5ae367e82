#pragma once

#include "schedule/schedule.h"

#include <cstdint>
#include <functional>
#include <string_view>

namespace lapwright::schedule {

/// How hard to look for a schedule. Everything decides by counting, so the same problem, seed and work limit
/// give the same schedule byte for byte.
struct Settings {
    std::int64_t workLimit = 20'000; ///< thousands of tasks placed
    std::uint64_t seed = 1;
};

struct Progress {
    std::int64_t work = 0; ///< in the unit of Settings::workLimit
    Score best;
    Bound bound;
    std::string_view phase;
};

/// The caller's side of a running search: called every now and then on the calling thread; false stops it and
/// keeps the best schedule so far. The core has no clock: whoever wants a time limit looks at one in here.
using GoOn = std::function<bool(const Progress&)>;

} // namespace lapwright::schedule
