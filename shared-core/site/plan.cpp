#include "site/plan.h"

#include "measure/rounding.h"
#include "site/corner.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::site {

namespace {

bool isMeasured(const Corner& corner)
{
    return std::holds_alternative<InteriorAngle>(corner) || std::holds_alternative<TapedTriangle>(corner);
}

/// Far beyond any building, and so that coordinates of any number of runs that fit into memory stay exact.
constexpr Length mostPerRun = Length::millimetres(1'000'000'000);
constexpr Length mostAround = mostPerRun * 1'000;

std::optional<Length> planLength(const Run& run, Figure figure)
{
    const auto length = effectiveLength(run);
    if (!length || length->value < Length() || length->value > mostPerRun)
        return std::nullopt;
    if (figure == Figure::WallFace)
        return length->value;
    const std::optional<double> ratio = planRatio(run);
    if (!ratio)
        return std::nullopt;
    return scaled(length->value, *ratio);
}

} // namespace

std::optional<std::vector<Angle>> interiorAngles(const Chain& chain)
{
    const std::size_t wanted = chain.runs.empty() ? 0 : chain.runs.size() - (chain.closed ? 0 : 1);
    if (chain.corners.size() != wanted)
        return std::nullopt;
    std::vector<Angle> angles;
    angles.reserve(wanted);
    for (const Corner& corner : chain.corners) {
        const std::optional<Angle> angle = interiorAngle(corner);
        if (!angle)
            return std::nullopt;
        angles.push_back(*angle);
    }
    return angles;
}

Angle expectedAngleSum(std::size_t corners)
{
    return halfTurn * (static_cast<double>(corners) - 2.0);
}

Angle angularMisclosure(const std::vector<Angle>& interior)
{
    // Whole quarter turns are counted apart, so that the rounding of 90° in radians does not add up.
    constexpr double quarter = std::numbers::pi / 2.0;
    std::int64_t quarters = 0;
    double rest = 0.0;
    for (const Angle angle : interior) {
        const double whole = std::round(angle.inRadians() / quarter);
        const double over = angle.inRadians() - whole * quarter;
        quarters += static_cast<std::int64_t>(whole);
        rest += std::abs(over) < 1e-12 ? 0.0 : over;
    }
    quarters -= 2 * (static_cast<std::int64_t>(interior.size()) - 2);
    return quarterTurn * static_cast<double>(quarters) + Angle::radians(rest);
}

std::vector<Angle> balanced(const Chain& chain, std::vector<Angle> interior)
{
    const Angle misclosure = angularMisclosure(interior);
    const auto measured = std::count_if(chain.corners.begin(), chain.corners.end(), isMeasured);
    const auto sharing = measured > 0 ? static_cast<std::size_t>(measured) : interior.size();
    for (std::size_t corner = 0; corner < interior.size(); ++corner)
        if (measured == 0 || isMeasured(chain.corners[corner]))
            interior[corner] -= misclosure / static_cast<double>(sharing);
    return interior;
}

Figure figureOf(const Chain& chain)
{
    const bool opening = std::all_of(chain.runs.begin(), chain.runs.end(),
                                     [](const Run& run) { return isOfOpening(run.kind); });
    const bool jamb = std::any_of(chain.runs.begin(), chain.runs.end(),
                                  [](const Run& run) { return run.kind == RunKind::OpeningJamb; });
    return opening && jamb ? Figure::WallFace : Figure::GroundPlan;
}

std::optional<Plan> planWith(const Chain& chain, const std::vector<Angle>& interior)
{
    if (chain.runs.empty() || interior.size() + 1 < chain.runs.size() ||
        !std::isfinite(chain.firstBearing.inRadians()))
        return std::nullopt;
    Plan plan;
    plan.figure = figureOf(chain);
    plan.points.emplace_back();
    Bearing bearing(chain.firstBearing);
    for (std::size_t index = 0; index < chain.runs.size(); ++index) {
        const std::optional<Length> length = planLength(chain.runs[index], plan.figure);
        if (!length || plan.perimeter > mostAround)
            return std::nullopt;
        plan.lengths.push_back(*length);
        plan.bearings.push_back(bearing);
        plan.points.push_back(plan.points.back() + bearing.step(*length));
        plan.perimeter += *length;
        if (index < interior.size())
            bearing.turn(halfTurn - interior[index]);
    }
    return plan;
}

std::optional<Plan> planOf(const Chain& chain)
{
    const std::optional<std::vector<Angle>> interior = interiorAngles(chain);
    return interior ? planWith(chain, *interior) : std::nullopt;
}

std::vector<PlanVector> compassRule(const Plan& plan, PlanVector misclosure)
{
    std::vector<PlanVector> adjusted = plan.points;
    if (plan.perimeter <= Length())
        return adjusted;
    const double perimeter = inMillimetres(plan.perimeter);
    Length walked;
    for (std::size_t point = 1; point < adjusted.size(); ++point) {
        walked += plan.lengths[point - 1];
        const double share = inMillimetres(walked) / perimeter;
        adjusted[point] =
            adjusted[point] - PlanVector{scaled(misclosure.east, share), scaled(misclosure.north, share)};
    }
    return adjusted;
}

} // namespace lapwright::site
