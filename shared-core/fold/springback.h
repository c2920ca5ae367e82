#pragma once

#include "fold/settings.h"
#include "metal/metal.h"

#include <optional>

namespace lapwright::fold {

/// Fold angle to set so that `wanted` is left: metal::foldAngleToSet, or the shop's own measured value for
/// this metal, gauge and angle, of the settings or the machine, which wins. None if the sheet springs back
/// flat or E, Y or T is not positive.
[[nodiscard]] std::optional<Angle> angleToSet(const metal::Metal& metal, const metal::Sheet& sheet,
                                              Length insideRadius, Angle wanted, const Machine& machine,
                                              const Settings& settings);

} // namespace lapwright::fold
