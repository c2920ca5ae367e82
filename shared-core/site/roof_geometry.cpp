#include "site/roof_geometry.h"

#include "measure/rounding.h"

#include <cmath>

namespace lapwright::site {

double slopeFactor(Slope slope)
{
    return std::hypot(1.0, slope.ratio());
}

Derived<Length> lengthAlongSlope(Length levelRun, Slope slope)
{
    const Length length = scaled(levelRun, slopeFactor(slope));
    return {length,
            {{"{length} = level run {run} × slope factor {factor} of {slope}, √(1 + (rise/run)²)",
              {{"length", length}, {"run", levelRun}, {"factor", slopeFactor(slope)}, {"slope", slope}}},
             "",
             {}}};
}

Length levelRunUnder(Length alongSlope, Slope slope)
{
    return scaled(alongSlope, 1.0 / slopeFactor(slope));
}

Derived<Angle> ridgeTurn(Slope slope, Slope otherSlope)
{
    const Angle turn = -(slope.angle() + otherSlope.angle());
    return {turn,
            {{"the ridge turns {turn} = −({angle} + {other}), the slope angles of {slope} and {otherSlope}",
              {{"turn", turn},
               {"angle", slope.angle()},
               {"other", otherSlope.angle()},
               {"slope", slope},
               {"otherSlope", otherSlope}}},
             "",
             {}}};
}

Derived<Angle> slopeChangeTurn(Slope upper, Slope lower)
{
    const Angle turn = upper.angle() - lower.angle();
    return {turn,
            {{"the slope changes by {turn} = {upper} of the upper plane − {lower} of the lower",
              {{"turn", turn}, {"upper", upper.angle()}, {"lower", lower.angle()}}},
             "",
             {}}};
}

Derived<Angle> wallTurn(Angle interiorAngle)
{
    const Angle turn = halfTurn - interiorAngle;
    return {turn,
            {{"the wall turns {turn} = 180° − interior angle {interior}",
              {{"turn", turn}, {"interior", interiorAngle}}},
             "",
             {}}};
}

Derived<Length> cricketHeight(Length width, Slope slope)
{
    const Length height = scaled(width, slope.ratio() / 2.0);
    return {height,
            {{"the cricket rises {height} = half the width {width} at {slope}",
              {{"height", height}, {"width", width}, {"slope", slope}}},
             "",
             {}}};
}

} // namespace lapwright::site
