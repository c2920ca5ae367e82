#include "paint/inks.h"

namespace lapwright::paint {

using drawing::Colour;
using drawing::Ink;
using drawing::Role;

namespace {

constexpr Colour night{17, 23, 23};
constexpr Colour chalk{236, 240, 236};
constexpr Colour ash{172, 182, 178};
constexpr Colour iron{52, 62, 62};
constexpr Colour slate{34, 43, 44};
constexpr Colour skyBlue{134, 196, 240};
constexpr Colour orchid{232, 160, 222};
constexpr Colour ember{255, 148, 120};

constexpr Colour black{0, 0, 0};
constexpr Colour white{255, 255, 255};

Ink darkInk(Role role)
{
    switch (role) {
    case Role::Sheet:
        return {chalk, {150, 160, 164}};
    case Role::Dimension:
    case Role::Gauge:
        return {skyBlue, skyBlue};
    case Role::AngleMark:
    case Role::Movement:
        return {orchid, orchid};
    case Role::Caution:
    case Role::Misclosure:
        return {ember, ember};
    case Role::Leader:
    case Role::Note:
    case Role::Waste:
        return {ash, night};
    case Role::Machine:
        return {ash, slate};
    case Role::MovingBeam:
        return {ash, iron};
    case Role::ColouredFace:
    case Role::Stock:
    case Role::Remnant:
        return {chalk, night};
    case Role::Strip:
    case Role::Blank:
        return {chalk, {58, 56, 44}};
    case Role::Run:
    case Role::Corner:
    case Role::Compass:
    case Role::Label:
    case Role::Title:
        return {chalk, chalk};
    }
    return {chalk, night};
}

/// Paper's colours, the ones that are too pale for sunlight replaced.
Ink sunlightInk(Role role)
{
    switch (role) {
    case Role::Dimension:
    case Role::Gauge:
        return {{0, 48, 104}, {0, 48, 104}};
    case Role::AngleMark:
    case Role::Movement:
        return {{92, 0, 76}, {92, 0, 76}};
    case Role::Caution:
    case Role::Misclosure:
        return {{140, 16, 0}, {140, 16, 0}};
    case Role::Run:
    case Role::Corner:
    case Role::Compass:
    case Role::Label:
    case Role::Title:
        return {black, black};
    default:
        return {black, drawing::paperInk(role).fill};
    }
}

} // namespace

Colour pageColour(Ground ground)
{
    return ground == Ground::Dark ? night : white;
}

Ink inkOn(Ground ground, Role role)
{
    switch (ground) {
    case Ground::Paper:
        return drawing::paperInk(role);
    case Ground::Dark:
        return darkInk(role);
    case Ground::HighContrast:
        return sunlightInk(role);
    }
    return drawing::paperInk(role);
}

} // namespace lapwright::paint
