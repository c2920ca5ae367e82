#include "drawing/palette.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

namespace {

constexpr Colour black{20, 20, 24};
constexpr Colour white{255, 255, 255};
constexpr Colour steel{150, 158, 166};
constexpr Colour measureBlue{0, 66, 120};
constexpr Colour plum{110, 20, 90};
constexpr Colour brick{165, 38, 20};
constexpr Colour grey{95, 98, 104};
constexpr Colour pale{232, 232, 228};

double linear(std::uint8_t channel)
{
    const double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(Colour colour)
{
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

} // namespace

Ink paperInk(Role role)
{
    switch (role) {
    case Role::Sheet:
        return {black, steel};
    case Role::ColouredFace:
        return {black, white};
    case Role::Dimension:
    case Role::Gauge:
        return {measureBlue, measureBlue};
    case Role::AngleMark:
    case Role::Movement:
        return {plum, plum};
    case Role::Caution:
    case Role::Misclosure:
        return {brick, brick};
    case Role::Leader:
    case Role::Note:
    case Role::Waste:
        return {grey, white};
    case Role::Machine:
        return {grey, pale};
    case Role::MovingBeam:
        return {grey, {206, 206, 200}};
    case Role::Stock:
    case Role::Remnant:
        return {black, white};
    case Role::Strip:
    case Role::Blank:
        return {black, {244, 238, 220}};
    case Role::Run:
    case Role::Corner:
    case Role::Compass:
    case Role::Label:
    case Role::Title:
        return {black, black};
    }
    return {black, white};
}

double contrastOf(Colour one, Colour other)
{
    const double first = luminance(one) + 0.05, second = luminance(other) + 0.05;
    return std::max(first, second) / std::min(first, second);
}

Colour contrasting(Colour ground)
{
    const double light = luminance(ground) + 0.05;
    return light * light > 0.05 * 1.05 ? black : white;
}

} // namespace lapwright::drawing
