#pragma once

#include "measure/rounding.h"
#include "trim/profile.h"

#include <random>

namespace random_profile {

inline double between(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}
inline bool chance(std::mt19937& random, double share)
{
    return between(random, 0.0, 1.0) < share;
}

inline std::optional<lapwright::trim::Hem> hem(std::mt19937& random)
{
    using namespace lapwright::trim;
    if (chance(random, 0.5))
        return std::nullopt;
    const bool closed = chance(random, 0.6);
    return Hem{closed ? HemKind::Closed : HemKind::Open,
               lapwright::nearestFromMillimetres(between(random, 7.0, 14.0)),
               chance(random, 0.5) ? Side::Left : Side::Right,
               closed ? lapwright::Length() : lapwright::Length::micrometres(1'500)};
}

/// One to eight legs of 15 to 120 mm, turns of 5 to 140° either way, hems on half of the ends; it may cross
/// itself.
inline lapwright::trim::Profile profile(std::mt19937& random)
{
    using namespace lapwright;
    trim::Profile profile;
    profile.trim = "free";
    const int legs = std::uniform_int_distribution<int>(1, 8)(random);
    for (int leg = 0; leg < legs; ++leg) {
        profile.legs.push_back(
            {"leg " + std::to_string(leg + 1), nearestFromMillimetres(between(random, 15.0, 120.0))});
        if (leg > 0)
            profile.bends.push_back(
                {Angle::degrees(between(random, 5.0, 140.0) * (chance(random, 0.5) ? 1.0 : -1.0)),
                 Length::micrometres(600)});
    }
    profile.startHem = hem(random);
    profile.endHem = hem(random);
    profile.colourFace = chance(random, 0.5) ? trim::Side::Left : trim::Side::Right;
    profile.firstDirection = Angle::degrees(between(random, -179.0, 179.0));
    profile.startX = nearestFromMillimetres(between(random, -100.0, 100.0));
    profile.startY = nearestFromMillimetres(between(random, -100.0, 100.0));
    return profile;
}

} // namespace random_profile
