#include "fold/springback.h"

#include "measure/rounding.h"

namespace lapwright::fold {

std::optional<Length> radiusAfterRelease(const metal::Metal& metal, const metal::Sheet& sheet,
                                         Length insideRadius)
{
    const double thickness = inMillimetres(sheet.thickness);
    if (!(metal.elasticModulusPascals > 0.0) || !(metal.yieldStrengthPascals > 0.0) || !(thickness > 0.0))
        return std::nullopt;
    const double initial = inMillimetres(insideRadius);
    const double q = initial * metal.yieldStrengthPascals / (metal.elasticModulusPascals * thickness);
    if (!(q < 0.5))
        return std::nullopt;
    const double released = initial / (4.0 * q * q * q - 3.0 * q + 1.0);
    if (!(released <= largestMillimetres))
        return std::nullopt;
    return nearestFromMillimetres(released);
}

std::optional<Angle> angleToSet(const metal::Metal& metal, const metal::Sheet& sheet, Length insideRadius,
                                Angle wanted, const Settings& settings)
{
    constexpr Angle sameAngle = Angle::degrees(0.05);
    for (const MeasuredSpringback& measured : settings.measuredSpringback)
        if (measured.metal == metal.id && measured.gauge == sheet.gauge &&
            magnitude(measured.foldAngle - wanted) <= sameAngle)
            return measured.angleToSet;
    const std::optional<Length> released = radiusAfterRelease(metal, sheet, insideRadius);
    if (!released)
        return std::nullopt;
    const double thickness = inMillimetres(sheet.thickness);
    return wanted * ((2.0 * inMillimetres(*released) / thickness + 1.0) /
                     (2.0 * inMillimetres(insideRadius) / thickness + 1.0));
}

} // namespace lapwright::fold
