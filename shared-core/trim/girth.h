#pragma once

#include "measure/derivation.h"
#include "measure/result.h"
#include "metal/metal.h"
#include "trim/profile.h"

#include <vector>

namespace lapwright::trim {

/// One bend line on the flat blank.
struct BendLine {
    /// Distance from the profile's start edge to the middle of the bend's arc on the flat.
    Length position;
    /// Signed like Bend::turn; a hem edge is a half turn towards its side.
    Angle turn;
    Length insideRadius;
    Length deduction;
    /// The hem this line folds, at either end; none for a plain bend.
    enum class Kind { Bend, StartHem, EndHem } kind = Kind::Bend;
    /// Index in Profile::bends; meaningful for Kind::Bend only.
    std::size_t bend = 0;
};

/// The flat of a profile: its girth and where each bend line stands on it, start edge to end edge.
struct FlatPattern {
    Length girth;
    std::vector<BendLine> lines;
    Derivation derivation;
};

/// Inside radius of the metal's own bends: its multiple of the thickness.
[[nodiscard]] Length ownInsideRadius(const metal::Metal& metal, const metal::Sheet& sheet);
/// Bend allowance BA = A (R + K T): length of the neutral line through a bend. A in radians, A >= 0.
/// Source: Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418,
/// equation 16.2.
[[nodiscard]] Length bendAllowance(Angle foldAngle, Length insideRadius, Length thickness, double k);
/// Outside setback OSSB = tan(A/2) (R + T) for A < 180°; R + T for a hem edge (A = 180°).
[[nodiscard]] Length outsideSetback(Angle foldAngle, Length insideRadius, Length thickness);
/// K by the metal's rule for this radius and thickness: its constant, or DIN 6935 (2011): k = 0.65 + 0.5
/// log10(R/T), 0 <= k <= 1, K = k/2.
[[nodiscard]] double neutralAxisK(const metal::Metal& metal, Length insideRadius, Length thickness);
/// Bend deduction BD = 2 OSSB - BA, or the metal's measured deduction for this gauge, angle and radius
/// (within 0.05° and 0.005 mm: what a folder's display and a radius gauge tell apart). 0 <= foldAngle <=
/// 180°.
[[nodiscard]] Length bendDeduction(const metal::Metal& metal, const metal::Sheet& sheet, Angle foldAngle,
                                   Length insideRadius);

/// Girth = Σ outside legs − Σ bend deductions + Σ hem flats − Σ hem-edge deductions, and the bend lines.
/// Springback does not come into it: the metal between the tangent lines is the same before and after.
/// Errors: no legs, not one bend between each two legs, a turn of a half turn or more, a leg or hem over 100
/// m or with no flat left between its bends, a radius under 0, no thickness; place is the leg's or hem's
/// name.
[[nodiscard]] Result<FlatPattern> flatPattern(const Profile& profile, const metal::Metal& metal,
                                              const metal::Sheet& sheet);

} // namespace lapwright::trim
