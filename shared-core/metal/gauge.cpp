#include "metal/gauge.h"

#include "measure/rounding.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace lapwright::metal {

namespace {

constexpr int quartersPerPound = 64;
constexpr int galvanisingQuarters = 10;

Length tenThousandths(std::int64_t count)
{
    return Length::nanometres(count * 2'540);
}

/// pounds per square foot / 41.82, to the nearest 0.0001 in.
Length steelThickness(int quarterOunces)
{
    constexpr std::int64_t divisor = std::int64_t{quartersPerPound} * 4'182;
    return tenThousandths((std::int64_t{quarterOunces} * 1'000'000 + divisor / 2) / divisor);
}

std::optional<Length> steelGauge(int gauge, int thickest, int thinnest, int coating)
{
    const std::optional<int> weight = usStandardQuarterOunces(gauge);
    if (!weight || gauge < thickest || gauge > thinnest)
        return std::nullopt;
    return steelThickness(*weight + coating);
}

} // namespace

std::optional<int> usStandardQuarterOunces(int gauge)
{
    // Ounces per square foot × 4, from 7/0 on.
    constexpr std::array<int, 45> quarters{1280, 1200, 1120, 1040, 960, 880, 800, 720, 680, 640, 600, 560,
                                           520,  480,  440,  400,  360, 320, 280, 240, 200, 180, 160, 144,
                                           128,  112,  96,   88,   80,  72,  64,  56,  48,  44,  40,  36,
                                           32,   28,   26,   24,   22,  20,  18,  17,  16};
    if (gauge < usStandardThickest || gauge > usStandardThinnest)
        return std::nullopt;
    return quarters[static_cast<std::size_t>(gauge - usStandardThickest)];
}

std::optional<Length> usStandardThickness(int gauge)
{
    const std::optional<int> weight = usStandardQuarterOunces(gauge);
    if (!weight)
        return std::nullopt;
    constexpr std::int64_t inch = 25'400'000, divisor = std::int64_t{quartersPerPound} * 40;
    return Length::nanometres((*weight * inch + divisor / 2) / divisor);
}

std::optional<Length> manufacturersStandardThickness(int gauge)
{
    return steelGauge(gauge, 3, 38, 0);
}

std::optional<Length> galvanisedThickness(int gauge)
{
    return steelGauge(gauge, 8, 32, galvanisingQuarters);
}

std::optional<Length> americanWireThickness(int gauge)
{
    if (gauge < -3 || gauge > 40)
        return std::nullopt;
    return tenThousandths(std::llround(50.0 * std::pow(92.0, (36.0 - gauge) / 39.0)));
}

std::optional<Length> copperThickness(int ouncesPerSquareFoot)
{
    if (ouncesPerSquareFoot < 1 || ouncesPerSquareFoot > 1'000)
        return std::nullopt;
    constexpr double poundsPerCubicInch = 0.322;
    return tenThousandths(std::llround(10'000.0 * ouncesPerSquareFoot / 16.0 / 144.0 / poundsPerCubicInch));
}

double surfaceMass(int quarterOuncesPerSquareFoot)
{
    constexpr double squareMetresPerSquareFoot = 0.09290304;
    return quarterOuncesPerSquareFoot / static_cast<double>(quartersPerPound) * kilogramsPerPound /
           squareMetresPerSquareFoot;
}

} // namespace lapwright::metal
