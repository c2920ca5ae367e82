#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// Lays what `residual` asks for into the room the plan's patterns leave, behind the blanks of strips and in
/// new strips beside them, and lowers it. Patterns are parted where only some of their copies are filled.
void fillUp(const Instance& instance, RawPlan& plan, std::vector<std::int64_t>& residual);

/// The plan without those remnants, dearest first, whose blanks find room in its other patterns.
[[nodiscard]] RawPlan withoutIdleRemnants(const Instance& instance, RawPlan plan);

} // namespace lapwright::cutting
