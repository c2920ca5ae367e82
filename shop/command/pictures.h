#pragma once

#include "measure/writing.h"
#include "metal/metal.h"
#include "pieces/order.h"

#include <string>

/// Pictures of an order as SVG.
namespace lapwright::command {

/// The profile in section with its dimensions.
[[nodiscard]] std::string profileSvg(const pieces::OrderedProfile& profile, const metal::Metal& metal,
                                     const Style& style);
/// The chains of the order's job, with the marks of the pieces on each run.
[[nodiscard]] std::string planSvg(const pieces::Order& order, const Style& style);

} // namespace lapwright::command
