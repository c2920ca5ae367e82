#include "site/hip_valley.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::site {

namespace {

constexpr Angle flattestCorner = Angle::degrees(1.0);

/// Sine and cosine without the last-digit noise of right angles held in radians.
double cleanSine(Angle angle)
{
    const double sine = std::sin(angle.inRadians());
    return std::abs(sine) < 1e-15 ? 0.0 : sine;
}
double cleanCosine(Angle angle)
{
    const double cosine = std::cos(angle.inRadians());
    return std::abs(cosine) < 1e-15 ? 0.0 : cosine;
}

/// Plan angle between the crease and the eave before it, in (0°, 180°).
Angle planAngleBefore(Slope before, Slope after, Angle planCorner)
{
    const double opposite = after.ratio() * cleanSine(planCorner);
    const double adjacent = before.ratio() + after.ratio() * cleanCosine(planCorner);
    const double angle = std::atan2(opposite, adjacent);
    // The crease lies inside the building, whichever way the corner turns.
    return Angle::radians(angle > 0.0 ? angle : angle + std::numbers::pi);
}

Angle signedTurn(Slope before, Slope after, Angle planCorner)
{
    const Angle first = before.angle(), second = after.angle();
    const double cosine =
        std::cos(first.inRadians()) * std::cos(second.inRadians()) +
        std::sin(first.inRadians()) * std::sin(second.inRadians()) * cleanCosine(halfTurn - planCorner);
    const Angle turn = Angle::radians(std::acos(std::clamp(cosine, -1.0, 1.0)));
    return planCorner < halfTurn ? -turn : turn;
}

} // namespace

std::optional<Crease> creaseOf(Slope before, Slope after, Angle planCorner)
{
    if (before.isLevel() || after.isLevel())
        return std::nullopt;
    const bool possible = planCorner >= flattestCorner && planCorner <= fullTurn - flattestCorner;
    if (!possible || magnitude(planCorner - halfTurn) < flattestCorner)
        return std::nullopt;
    Crease crease;
    crease.planCorner = planCorner;
    crease.planBefore = planAngleBefore(before, after, planCorner);
    crease.planAfter = planCorner - crease.planBefore;
    const double sine = std::sin(crease.planBefore.inRadians());
    const double rise = before.ratio() * sine;
    crease.slope = Angle::radians(std::atan(rise));
    const double bevel = std::sin(crease.slope.inRadians());
    crease.backingBefore = Angle::radians(std::atan(bevel / std::tan(crease.planBefore.inRadians())));
    crease.backingAfter = Angle::radians(std::atan(bevel / std::tan(crease.planAfter.inRadians())));
    crease.turn = signedTurn(before, after, planCorner);
    crease.planFactor = 1.0 / sine;
    crease.lengthFactor = std::hypot(crease.planFactor, before.ratio());
    return crease;
}

std::optional<Derived<Length>> creaseLength(Length commonRun, Slope before, Slope after, Angle planCorner)
{
    const std::optional<Crease> crease = creaseOf(before, after, planCorner);
    if (!crease || std::abs(inMillimetres(commonRun)) * crease->lengthFactor > largestMillimetres)
        return std::nullopt;
    const Length length = scaled(commonRun, crease->lengthFactor);
    const Derivation plan{
        {"in plan the {kind} stands δ = {angle} off the eave before it: both planes, {before} and "
         "{after}, rise equally along it",
         {{"kind", std::string(crease->isHip() ? "hip" : "valley")},
          {"angle", crease->planBefore},
          {"before", before},
          {"after", after}}},
        "",
        {}};
    return Derived<Length>{length,
                           {{"{length} = common run {run} × {factor}, √(1/sin²δ + (rise/run)²)",
                             {{"length", length}, {"run", commonRun}, {"factor", crease->lengthFactor}}},
                            "",
                            {plan}}};
}

std::optional<Derived<Angle>> creaseTurn(Slope before, Slope after, Angle planCorner)
{
    const std::optional<Crease> crease = creaseOf(before, after, planCorner);
    if (!crease)
        return std::nullopt;
    return Derived<Angle>{
        crease->turn,
        {{"the {kind} turns {turn}: cos = cos θ₁ cos θ₂ + sin θ₁ sin θ₂ cos φ with slopes {before} ({first}) and "
          "{after} ({second}) and φ = {between} between the ways they fall",
          {{"kind", std::string(crease->isHip() ? "hip" : "valley")},
           {"turn", crease->turn},
           {"before", before},
           {"first", before.angle()},
           {"after", after},
           {"second", after.angle()},
           {"between", magnitude(halfTurn - planCorner)}}},
         "",
         {}}};
}

Length planLengthUnder(Length alongCrease, const Crease& crease)
{
    return scaled(alongCrease, std::cos(crease.slope.inRadians()));
}

} // namespace lapwright::site
