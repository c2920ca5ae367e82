#pragma once

#include "measure/length.h"

#include <cmath>
#include <limits>

/// The borders between exact lengths and floating-point numbers, each with a name that says how it rounds.
namespace lapwright {

/// The avoirdupois pound: exact by the international yard and pound agreement of 1959.
inline constexpr double kilogramsPerPound = 0.45359237;

[[nodiscard]] constexpr double inMillimetres(Length value)
{
    return static_cast<double>(value.inNanometres()) / 1e6;
}
[[nodiscard]] constexpr double inMetres(Length value)
{
    return static_cast<double>(value.inNanometres()) / 1e9;
}
[[nodiscard]] constexpr double inSquareMetres(Length width, Length length)
{
    return inMetres(width) * inMetres(length);
}
[[nodiscard]] constexpr double inInches(Length value)
{
    return static_cast<double>(value.inNanometres()) / 25'400'000.0;
}
[[nodiscard]] constexpr double inFeet(Length value)
{
    return static_cast<double>(value.inNanometres()) / 304'800'000.0;
}

/// The largest millimetre count that the functions below take: 1 000 km, far beyond any building, far inside
/// what 64 bits hold. Callers that read outside data check against it first.
inline constexpr double largestMillimetres = 1e9;

/// Nearest nanometre to a computed number of millimetres. Precondition: |millimetres| <= largestMillimetres.
[[nodiscard]] inline Length nearestFromMillimetres(double millimetres)
{
    return Length::nanometres(std::llround(millimetres * 1e6));
}
/// Nearest nanometre to a computed number of inches. Precondition as above.
[[nodiscard]] inline Length nearestFromInches(double inches)
{
    return Length::nanometres(std::llround(inches * 25.4e6));
}

/// Nearest nanometre to `value` times a ratio (a slope factor, a tangent…).
[[nodiscard]] inline Length scaled(Length value, double ratio)
{
    return Length::nanometres(std::llround(static_cast<double>(value.inNanometres()) * ratio));
}

/// To a multiple of `step` (> 0): nearest, halves away from zero. At the far ends of the range, where the
/// next multiple cannot be held, towards zero.
[[nodiscard]] constexpr Length roundToNearest(Length value, Length step)
{
    const std::int64_t size = step.inNanometres();
    const std::int64_t amount = value.inNanometres();
    const std::int64_t over = amount % size;
    const std::int64_t down = amount - over;
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
    if (over >= size - over && down <= most - size)
        return Length::nanometres(down + size);
    if (over < 0 && -over >= size + over && down >= -most + size)
        return Length::nanometres(down - size);
    return Length::nanometres(down);
}
/// To a multiple of `step` (> 0): towards minus infinity.
[[nodiscard]] constexpr Length roundDown(Length value, Length step)
{
    const Length over = value % step;
    return over < Length() ? value - over - step : value - over;
}
/// To a multiple of `step` (> 0): towards plus infinity.
[[nodiscard]] constexpr Length roundUp(Length value, Length step)
{
    return -roundDown(-value, step);
}

} // namespace lapwright
