#pragma once

#include "measure/angle.h"
#include "measure/length.h"

#include <optional>

/// How far a part may be off its stated size where nobody states a tolerance for it.
namespace lapwright {

/// Classes f, m, c and v of ISO 2768-1:1989.
enum class ToleranceClass { Fine, Medium, Coarse, VeryCoarse };

/// Allowed either way on a length of `nominal`, from 0.5 mm up to and including 4 m. Nothing outside the
/// table, and where the class gives no value (fine over 2 m, very coarse up to 3 mm). Source: ISO
/// 2768-1:1989, table 1.
[[nodiscard]] std::optional<Length> generalTolerance(ToleranceClass tolerance, Length nominal);

/// Allowed either way on an angle whose shorter leg is `shorterLeg` long; nothing if that is not over 0.
/// Source: ISO 2768-1:1989, table 3.
[[nodiscard]] std::optional<Angle> generalAngleTolerance(ToleranceClass tolerance, Length shorterLeg);

} // namespace lapwright
