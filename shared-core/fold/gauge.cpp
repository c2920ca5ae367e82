#include "fold/gauge.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

/// A face leaning less than this over the finger would ride up on it.
constexpr double steepEnough = 0.7;

} // namespace

std::optional<GaugeReach> gaugeReach(const Half& half, double thickness, const Machine& machine)
{
    const double top = machine->backGauge ? inMillimetres(machine->backGauge->fingerHeight)
                                          : std::numeric_limits<double>::infinity();
    const double halfThickness = thickness / 2.0;
    using Part = GaugeReach::Part;
    GaugeReach reach{-std::numeric_limits<double>::infinity(), Part::Edge, 0};
    bool steep = true;
    const auto touch = [&](double x, bool holds, Part part, std::size_t arc = 0) {
        if (x > reach.millimetres) {
            reach = {x, part, arc};
            steep = holds;
        }
    };
    for (std::size_t i = 0; i < half.arcs.size(); ++i) {
        const Arc& arc = half.arcs[i];
        const double a = arc.from, b = arc.from + arc.sweep;
        const double turnsBelow = std::floor(std::max(a, b) / (2.0 * std::numbers::pi));
        const bool facesGauge = turnsBelow * 2.0 * std::numbers::pi >= std::min(a, b);
        if (facesGauge && arc.centre.y <= top)
            touch(arc.centre.x + arc.middleRadius + halfThickness, true, Part::Arc, i);
    }
    for (std::size_t i = 0; i + 1 < half.points.size(); ++i) {
        if (!half.isFlat[i])
            continue;
        const Vector a = half.points[i], b = half.points[i + 1];
        const Vector along = (1.0 / std::max(lengthOf(b - a), 1e-12)) * (b - a);
        const double out = halfThickness * std::abs(along.y);
        const bool last = i + 2 == half.points.size();
        if (a.y <= top)
            touch(a.x + out, true, Part::Leg);
        if (b.y <= top)
            touch(b.x + out, true, last ? Part::Edge : Part::Leg);
        if ((a.y > top) != (b.y > top))
            touch(a.x + (b.x - a.x) * (top - a.y) / (b.y - a.y) + halfThickness / std::abs(along.y),
                  std::abs(along.y) >= steepEnough, Part::Leg);
    }
    return steep ? std::optional(reach) : std::nullopt;
}

} // namespace lapwright::fold
