#pragma once

#include "fold/machine.h"
#include "fold/section.h"

#include <optional>

namespace lapwright::fold {

/// Millimetres from the bend line to what touches the back gauge's finger: the edge, or the face or bend that
/// stands furthest back below the finger's top. `half` is the part behind, laid along +x (halfSection()).
/// None if that face leans so far that it would ride up on the finger.
[[nodiscard]] std::optional<double> gaugeReach(const Half& half, double thickness, const Machine& machine);

} // namespace lapwright::fold
