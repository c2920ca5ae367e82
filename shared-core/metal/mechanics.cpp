#include "metal/mechanics.h"

#include "measure/rounding.h"

#include <cmath>

namespace lapwright::metal {

std::optional<Length> radiusAfterRelease(const Metal& metal, Length thickness, Length insideRadius)
{
    const double depth = inMillimetres(thickness);
    if (!(metal.elasticModulusPascals > 0.0) || !(metal.yieldStrengthPascals > 0.0) || !(depth > 0.0))
        return std::nullopt;
    const double initial = inMillimetres(insideRadius);
    const double q = initial * metal.yieldStrengthPascals / (metal.elasticModulusPascals * depth);
    if (!(q < 0.5))
        return std::nullopt;
    const double released = initial / (4.0 * q * q * q - 3.0 * q + 1.0);
    if (!(released <= largestMillimetres))
        return std::nullopt;
    return nearestFromMillimetres(released);
}

std::optional<Angle> foldAngleToSet(const Metal& metal, Length thickness, Length insideRadius, Angle wanted)
{
    const std::optional<Length> released = radiusAfterRelease(metal, thickness, insideRadius);
    if (!released)
        return std::nullopt;
    const double depth = inMillimetres(thickness);
    return wanted * ((2.0 * inMillimetres(*released) / depth + 1.0) /
                     (2.0 * inMillimetres(insideRadius) / depth + 1.0));
}

double outerFibreStrain(Length insideRadius, Length thickness)
{
    return 1.0 / (2.0 * inMillimetres(insideRadius) / inMillimetres(thickness) + 1.0);
}

std::optional<Length> smallestInsideRadius(Length thickness, double reductionOfAreaPercent)
{
    constexpr double bendsFlat = 50.0;
    if (!(reductionOfAreaPercent > 0.0 && reductionOfAreaPercent <= 100.0))
        return std::nullopt;
    if (reductionOfAreaPercent >= bendsFlat)
        return Length();
    const double radius = inMillimetres(thickness) * (bendsFlat / reductionOfAreaPercent - 1.0);
    if (!(radius <= largestMillimetres))
        return std::nullopt;
    return nearestFromMillimetres(radius);
}

double blankKilograms(const Sheet& sheet, Length girth, Length length)
{
    return inMetres(girth) * inMetres(length) * sheet.kilogramsPerSquareMetre;
}

Length thermalMovement(const Metal& metal, Length length, double kelvins)
{
    return scaled(length, metal.expansionPerKelvin * kelvins);
}

std::optional<Length> ratedEquivalent(Length thickness, double strengthPascals, double ratedStrengthPascals)
{
    if (!(strengthPascals > 0.0) || !(ratedStrengthPascals > 0.0))
        return std::nullopt;
    const double equivalent = inMillimetres(thickness) * std::sqrt(strengthPascals / ratedStrengthPascals);
    if (!(equivalent <= largestMillimetres))
        return std::nullopt;
    return nearestFromMillimetres(equivalent);
}

} // namespace lapwright::metal
