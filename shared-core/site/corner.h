#pragma once

#include "rules/finding.h"
#include "site/chain.h"

#include <optional>
#include <string>

/// Corners of a chain: the interior angle, however it was taken.
namespace lapwright::site {

/// A corner with two of its runs overlapping is no corner: interior angles must stay this far from 0° and
/// 360°.
inline constexpr Angle sharpestCorner = Angle::degrees(1.0);

/// The angle of a triangle between two sides and across from the third, by the law of cosines:
/// cos γ = (a² + b² − c²) / 2ab. Nothing if a side is not positive or the three make no triangle (one is not
/// shorter than the other two together).
[[nodiscard]] std::optional<Angle> angleAcross(Length diagonal, Length before, Length after);

/// The interior angle in (0°, 360°): 90° and 270° for square corners, the given angle, or the taped
/// triangle's (360° minus it for an inside corner). Nothing where the corner cannot be: an angle within
/// `sharpestCorner` of 0° or 360°, or no triangle.
[[nodiscard]] std::optional<Angle> interiorAngle(const Corner& corner);

/// How far the taped angle moves when one of the three tapes is off by `error`: the largest of the three,
/// from the derivative of the law of cosines (for the diagonal dγ = c·dc / (a·b·sin γ)). Precondition: the
/// triangle exists and is not flat.
[[nodiscard]] Angle tapedSensitivity(const TapedTriangle& triangle, Length error);

/// What the person is told about the corner at `place`: blocks if it cannot be; warns within 15° of doubled
/// back; informs what an eighth of an inch of tape is worth where that is more than `tolerance`.
[[nodiscard]] rules::Findings checkCorner(const Corner& corner, Angle tolerance, const std::string& place);

} // namespace lapwright::site
