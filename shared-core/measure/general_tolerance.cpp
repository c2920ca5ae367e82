#include "measure/general_tolerance.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

namespace lapwright {

namespace {

/// Upper ends of the ranges of table 1, in millimetres.
constexpr std::array<std::int64_t, 8> lengthsUpTo{3, 6, 30, 120, 400, 1'000, 2'000, 4'000};
/// Hundredths of a millimetre; 0 where the class gives no value.
constexpr std::array<std::array<std::int64_t, 8>, 4> hundredths{{{5, 5, 10, 15, 20, 30, 50, 0},
                                                                 {10, 10, 20, 30, 50, 80, 120, 200},
                                                                 {20, 30, 50, 80, 120, 200, 300, 400},
                                                                 {0, 50, 100, 150, 250, 400, 600, 800}}};
/// Upper ends of the ranges of table 3 but the last, which has none.
constexpr std::array<std::int64_t, 4> legsUpTo{10, 50, 120, 400};
constexpr std::array<std::array<double, 5>, 4> minutes{
    {{60, 30, 20, 10, 5}, {60, 30, 20, 10, 5}, {90, 60, 30, 15, 10}, {180, 120, 60, 30, 20}}};

template <std::size_t count>
std::size_t rangeOf(const std::array<std::int64_t, count>& upTo, Length value)
{
    const auto found = std::find_if(upTo.begin(), upTo.end(), [value](std::int64_t millimetres) {
        return value <= Length::millimetres(millimetres);
    });
    return static_cast<std::size_t>(found - upTo.begin());
}

} // namespace

std::optional<Length> generalTolerance(ToleranceClass tolerance, Length nominal)
{
    const std::size_t range = rangeOf(lengthsUpTo, nominal);
    if (nominal < Length::micrometres(500) || range == lengthsUpTo.size())
        return std::nullopt;
    const std::int64_t allowed = hundredths.at(static_cast<std::size_t>(tolerance)).at(range);
    return allowed > 0 ? std::optional(Length::micrometres(allowed * 10)) : std::nullopt;
}

std::optional<Angle> generalAngleTolerance(ToleranceClass tolerance, Length shorterLeg)
{
    if (shorterLeg <= Length())
        return std::nullopt;
    const double allowed = minutes.at(static_cast<std::size_t>(tolerance)).at(rangeOf(legsUpTo, shorterLeg));
    return Angle::degrees(allowed / 60.0);
}

} // namespace lapwright
