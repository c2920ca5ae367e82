#pragma once

#include "drawing/display_list.h"
#include "measure/length.h"
#include "trim/profile.h"

#include <vector>

namespace lapwright::print {

/// The profile in section as large as `room` takes it, black, its coloured face dotted: enough to tell pieces
/// apart, no dimensions. Nothing if the room has no extent. Precondition: bends.size() + 1 == legs.size().
void addSmallSection(const trim::Profile& profile, Length thickness, const drawing::Rectangle& room,
                     std::vector<drawing::Shape>& onto);

} // namespace lapwright::print
