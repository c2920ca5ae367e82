#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/slope.h"
#include "site/derived.h"

/// Lengths and turns of roof edges that lie in one plane or between two planes over parallel eaves. Hips and
/// valleys: hip_valley.h.
namespace lapwright::site {

/// √(1 + (rise/run)²): length along the slope per unit of level run.
[[nodiscard]] double slopeFactor(Slope slope);

/// Length along the slope over a level run: the run times the slope factor. Rake, sidewall.
[[nodiscard]] Derived<Length> lengthAlongSlope(Length levelRun, Slope slope);
/// The level run under a length along the slope: the length divided by the slope factor.
[[nodiscard]] Length levelRunUnder(Length alongSlope, Slope slope);

/// Turn of the section's path at a ridge, −(θ₁ + θ₂): always convex.
[[nodiscard]] Derived<Angle> ridgeTurn(Slope slope, Slope otherSlope);
/// Turn at a slope change, θ of the upper plane − θ of the lower: convex −, concave +.
[[nodiscard]] Derived<Angle> slopeChangeTurn(Slope upper, Slope lower);
/// Turn at a vertical wall corner, 180° − interior angle: outside +, inside −.
[[nodiscard]] Derived<Angle> wallTurn(Angle interiorAngle);

/// Height of a cricket (saddle) behind a chimney of this width across the slope, when its ridge is level and
/// its planes have the roof's slope: half the width times rise/run. Same as the ratios of IRC table R1003.20
/// (12 in 12: W/2, 6 in 12: W/4, 3 in 12: W/8; from memory).
[[nodiscard]] Derived<Length> cricketHeight(Length width, Slope slope);

} // namespace lapwright::site
