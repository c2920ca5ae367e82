#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/slope.h"
#include "site/derived.h"

#include <optional>

/// Where two roof planes meet over a corner of their eaves: a hip over an outside corner, a valley over an
/// inside one, with any two slopes and any corner.
namespace lapwright::site {

/// Shape of a hip or valley. Both planes rise from level eaves at one height; the crease rises from the
/// corner.
///
/// The crease's plan direction follows from both planes rising equally along it: tan δ₁ = t₂ sin β /
/// (t₁ + t₂ cos β), δ₂ = β − δ₁, with t = rise/run and β the interior plan angle of the eaves.
struct Crease {
    /// Interior plan angle of the eaves: under 180° a hip, over 180° a valley.
    Angle planCorner;
    /// Plan angle between the crease and the eave before the corner, and after it.
    Angle planBefore;
    Angle planAfter;
    /// Slope angle of the crease: tan = t₁ sin δ₁.
    Angle slope;
    /// Angle between a square to the crease and each plane, for beveling the timber: tan = sin(crease slope)
    /// / tan δ. Positive for a hip of ordinary shape, negative for a valley.
    Angle backingBefore;
    Angle backingAfter;
    /// Signed turn of the section: cos = cos θ₁ cos θ₂ + sin θ₁ sin θ₂ cos φ with φ = |180° − β| between the
    /// downslope directions; hip −, valley +.
    Angle turn;
    /// Length along the crease, and its plan length, per unit of common run (level, square to the eave
    /// before).
    double lengthFactor = 0.0;
    double planFactor = 0.0;

    [[nodiscard]] bool isHip() const { return planCorner < halfTurn; }
};

/// Nothing if a plane is level (then nothing rises), if the corner is outside [1°, 359°] or within 1° of
/// straight (then the planes meet in no crease, or in one that runs along the eave). Formulas: vector
/// geometry of two planes; agrees with the framing-square rafter tables for square corners.
[[nodiscard]] std::optional<Crease> creaseOf(Slope before, Slope after, Angle planCorner);

/// Length along a hip or valley over `commonRun`, measured level and square to the eave of the plane whose
/// slope is `before`. Nothing where creaseOf gives nothing, and past largestMillimetres.
[[nodiscard]] std::optional<Derived<Length>> creaseLength(Length commonRun, Slope before, Slope after,
                                                          Angle planCorner);
/// Signed turn at a hip or valley, with its reasons. Nothing where creaseOf gives nothing.
[[nodiscard]] std::optional<Derived<Angle>> creaseTurn(Slope before, Slope after, Angle planCorner);
/// The level distance under a length along a hip or valley.
[[nodiscard]] Length planLengthUnder(Length alongCrease, const Crease& crease);

} // namespace lapwright::site
