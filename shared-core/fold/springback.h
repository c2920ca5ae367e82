#pragma once

#include "fold/settings.h"
#include "metal/metal.h"

#include <optional>

namespace lapwright::fold {

/// Radius after the sheet is let go: Ri/Rf = 4q³ − 3q + 1, q = Ri Y/(E T). Kalpakjian and Schmid,
/// Manufacturing Engineering and Technology, bending chapter (from memory). None if the sheet springs back
/// flat (q >= 1/2) or E, Y or T is not positive.
[[nodiscard]] std::optional<Length> radiusAfterRelease(const metal::Metal& metal, const metal::Sheet& sheet,
                                                       Length insideRadius);

/// Fold angle to set so that `wanted` is left: wanted × (2Rf/T + 1)/(2Ri/T + 1), or the shop's own measured
/// value for this metal, gauge and angle, which wins. None as above.
[[nodiscard]] std::optional<Angle> angleToSet(const metal::Metal& metal, const metal::Sheet& sheet,
                                              Length insideRadius, Angle wanted, const Settings& settings);

} // namespace lapwright::fold
