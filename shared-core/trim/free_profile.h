#pragma once

#include "metal/metal.h"
#include "trim/template.h"

#include <vector>

namespace lapwright::trim {

/// More legs than anyone folds in one piece.
inline constexpr std::size_t mostFreeLegs = 40;

/// A profile as typed: leg, turn, leg, turn … leg. turns.size() + 1 == legs.size().
struct FreeProfile {
    std::string name;
    std::vector<Leg> legs;    ///< outside lengths; a leg without a name is called "leg 1", "leg 2"…
    std::vector<Angle> turns; ///< signed as in Profile
    std::optional<HemTemplate> startHem;
    std::optional<HemTemplate> endHem;
    Side colourFace = Side::Left;
    Angle firstDirection;
    std::optional<Length> insideRadius; ///< of every bend; the metal's own if not given
};

/// The shortest leg a folder can take hold of: 2 T + R. Source: common sheet-metal design practice for the
/// least flange of a bend; the machine may need more, which the fold planner finds.
[[nodiscard]] Length leastLeg(Length thickness, Length insideRadius);

/// The profile, with trim "free" and its path starting on the measured line, or findings, all of which block:
/// trim.free.legs (none, more than mostFreeLegs, or not one turn between each two legs), trim.leg.short (zero
/// or under leastLeg), trim.angle.range (|turn| of a half turn or more), trim.bend.flat (under 1°),
/// trim.leg.unfoldable, trim.section.crossing.
[[nodiscard]] Resolution resolveFree(const FreeProfile& typed, const metal::Metal& metal,
                                     const metal::Sheet& sheet);

} // namespace lapwright::trim
