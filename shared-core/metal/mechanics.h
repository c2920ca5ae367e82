#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "metal/metal.h"

#include <optional>

/// What a metal does when it is folded, and when it warms up.
namespace lapwright::metal {

/// Inside radius after the sheet is let go: Ri/Rf = 4q³ − 3q + 1, q = Ri Y/(E T). Kalpakjian and Schmid,
/// Manufacturing Engineering and Technology, bending chapter (from memory). None if the sheet springs back
/// flat (q >= 1/2), or E, Y or T is not positive.
[[nodiscard]] std::optional<Length> radiusAfterRelease(const Metal& metal, Length thickness,
                                                       Length insideRadius);

/// Fold angle to set so that `wanted` is left: wanted × (2Rf/T + 1)/(2Ri/T + 1). Same source. None as above.
[[nodiscard]] std::optional<Angle> foldAngleToSet(const Metal& metal, Length thickness, Length insideRadius,
                                                  Angle wanted);

/// Strain of the outer fibre of a bend: e = 1/(2R/T + 1). Kalpakjian and Schmid, 6th edition in SI units, p.
/// 418. Precondition: thickness > 0, insideRadius >= 0.
[[nodiscard]] double outerFibreStrain(Length insideRadius, Length thickness);

/// Smallest inside radius that does not crack: R = T (50/r − 1), r the reduction of area in a tensile test in
/// per cent; 0 from 50 % on. Same page. None if r is not in (0, 100].
[[nodiscard]] std::optional<Length> smallestInsideRadius(Length thickness, double reductionOfAreaPercent);

/// Kilograms of a flat blank: girth × length × the gauge's mass per area.
[[nodiscard]] double blankKilograms(const Sheet& sheet, Length girth, Length length);

/// ΔL = α L ΔT: growth if `kelvins` is above 0, shrinkage if below. Precondition: |kelvins| <= 1 000.
[[nodiscard]] Length thermalMovement(const Metal& metal, Length length, double kelvins);

/// The thickness of the rated metal that loads a folder as much as `thickness` of another: t √(σ/σ_rated),
/// from the bending moment per length σ t²/4 of a fully plastic section. Both strengths of one kind (yield or
/// tensile). None if a strength is not positive.
[[nodiscard]] std::optional<Length> ratedEquivalent(Length thickness, double strengthPascals,
                                                    double ratedStrengthPascals);

} // namespace lapwright::metal
