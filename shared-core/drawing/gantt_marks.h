#pragma once

#include "drawing/display_list.h"

/// What stands above a bar of a schedule: seen in black and white too.
namespace lapwright::drawing {

/// Where a late task ends.
[[nodiscard]] Path lateFlag(Point end);
/// Where a task that is made ends.
[[nodiscard]] Path madeTick(Point end);
/// Where a pinned task begins.
[[nodiscard]] Circle pinHead(Point centre);

} // namespace lapwright::drawing
