#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "metal/metal.h"
#include "pieces/order.h"

#include <string>

/// Pictures of an order as SVG.
namespace lapwright::command {

/// A colour for a name that no data file gives a value for: told apart, and never too light for the paper.
/// The name is always written beside it.
[[nodiscard]] drawing::Colour colourOf(const std::string& name);

/// The profile in section with its dimensions.
[[nodiscard]] std::string profileSvg(const pieces::OrderedProfile& profile, const metal::Metal& metal,
                                     const Style& style);
/// The chains of the order's job, with the marks of the pieces on each run.
[[nodiscard]] std::string planSvg(const pieces::Order& order, const Style& style);

} // namespace lapwright::command
