#include "fold/gauge.h"
#include "fold/steps.h"
#include "measure/rounding.h"

#include <algorithm>

/// By how much something is in the way: slow, for the reason of a refusal.
namespace lapwright::fold {

namespace {

double lowestOf(const Half& half)
{
    return std::max(0.0, -boundsOf(half.points, 0).least.y);
}

/// Deepest that the part in front gets into the barrier on its way up.
double sweptDepth(const Half& ahead, const Barrier& barrier, const FoldLine& fold, double turn)
{
    constexpr int moments = 60;
    const Vector pole = poleOf(fold, turn);
    double deepest = 0.0;
    for (int moment = 0; moment <= moments; ++moment) {
        std::vector<Vector> points = ahead.points;
        for (Vector& point : points)
            point = pole + turned(point - pole, turn * moment / moments);
        deepest = std::max(deepest, depthInside(points, 1, barrier, 1.0));
    }
    return deepest;
}

} // namespace

Blocked StepChecker::explain(Made made, std::size_t line, Placement placement)
{
    const std::optional<Obstacle> found = obstacle(made, line, placement);
    return found ? measure(*found, made, line, placement) : Blocked{};
}

Blocked StepChecker::measure(Obstacle found, Made made, std::size_t line, Placement placement)
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    const double sign = direction == Direction::Up ? 1.0 : -1.0;
    const double turn = sign * fold.angleToSet;
    const Half canonical = halfSection(blank_, line, placement.endToGauge, made, placement.up);
    const Half back = behind(canonical);
    const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    Blocked blocked{found, std::nullopt, std::nullopt};
    const auto over = [&](double millimetres) {
        if (millimetres > 0.0)
            blocked.overBy = nearestFromMillimetres(millimetres);
    };
    switch (found) {
    case Obstacle::Bed:
        over(std::max({sweptDepth(ahead, around_.bed(), fold, turn),
                       depthInside(back.points, 1, around_.bed(), 1.0), lowestOf(back)}));
        break;
    case Obstacle::Clamp:
        over(std::max(sweptDepth(ahead, around_.clamp(), fold, turn),
                      depthInside(back.points, 1, around_.clamp(), 1.0)));
        break;
    case Obstacle::Beam:
        over(std::max(depthInside(ahead.points, 1, around_.beam(direction), 0.5),
                      depthInside(back.points, 1, around_.beam(direction), 0.5)));
        break;
    case Obstacle::ClampOpening:
        over(std::max({boundsOf(back.points, 0).most.y, boundsOf(ahead.points, 0).most.y,
                       fold.hem ? ahead.points.back().x * std::sin(fold.angleToSet) : 0.0}) +
             Surroundings::liftFor(back.points) + blank_.thickness - inMillimetres(machine_->clampOpening));
        break;
    case Obstacle::ClampAngle:
        blocked.overByAngle =
            Angle::radians(fold.angleToSet) - (direction == Direction::Up || !machine_->downFolding
                                                   ? machine_->largestFoldAngle
                                                   : machine_->downFolding->largestFoldAngle);
        break;
    case Obstacle::Gauge:
        if (const auto& gauge = machine_->backGauge) {
            const std::optional<GaugeReach> touch = gaugeReach(canonical, blank_.thickness, machine_);
            const double reach = touch ? touch->millimetres : 0.0;
            over(std::max(reach - inMillimetres(gauge->most), inMillimetres(gauge->least) - reach));
        }
        break;
    case Obstacle::Throat:
        over(boundsOf(canonical.points, 0).most.x - inMillimetres(machine_->throat));
        break;
    case Obstacle::LeastLeg:
        over(inMillimetres(machine_->leastLeg) - ahead.points[1].x);
        break;
    case Obstacle::Flattening:
        if (machine_->flattensHems)
            over(2.0 * fold.middleRadius - blank_.thickness - inMillimetres(machine_->largestOpenHem));
        break;
    case Obstacle::WayOut:
        over(overhang(made, line, placement).depth);
        break;
    case Obstacle::Sheet:
        if (const std::optional<double> first =
                sheetContact(ahead.points, back.points, poleOf(fold, turnOf(fold, direction)),
                             turnOf(fold, direction), sheetGap(blank_.thickness)))
            blocked.overByAngle = Angle::radians(std::abs(turnOf(fold, direction)) - *first);
        break;
    default:
        break;
    }
    return blocked;
}

} // namespace lapwright::fold
