#pragma once

#include "drawing/chain_panels.h"
#include "drawing/display_list.h"
#include "drawing/plan_picture.h"

#include <string>
#include <vector>

namespace lapwright::drawing {

/// Draws one chain into its panel at so many millimetres on the sheet for one of the house: the runs, the
/// start and the way of the walk, the corners, the gap where it does not close, and their labels. Returns the
/// labels there was no room for.
[[nodiscard]] std::vector<std::string> paintChain(const LaidOut& chain, double scale,
                                                  const PlanPicture& picture, std::vector<Shape>& onto);

} // namespace lapwright::drawing
