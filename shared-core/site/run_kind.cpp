#include "site/run_kind.h"

#include "measure/writing.h"

#include <algorithm>

namespace lapwright::site {

std::string_view nameOf(RunKind kind)
{
    switch (kind) {
    case RunKind::Eave:
        return "eave";
    case RunKind::Rake:
        return "rake";
    case RunKind::Ridge:
        return "ridge";
    case RunKind::Hip:
        return "hip";
    case RunKind::Valley:
        return "valley";
    case RunKind::Headwall:
        return "headwall";
    case RunKind::Sidewall:
        return "sidewall";
    case RunKind::SlopeChange:
        return "slope_change";
    case RunKind::Fascia:
        return "fascia";
    case RunKind::WallBase:
        return "wall_base";
    case RunKind::OutsideCorner:
        return "outside_corner";
    case RunKind::InsideCorner:
        return "inside_corner";
    case RunKind::OpeningHead:
        return "opening_head";
    case RunKind::OpeningSill:
        return "opening_sill";
    case RunKind::OpeningJamb:
        return "opening_jamb";
    case RunKind::Parapet:
        return "parapet";
    case RunKind::GravelEdge:
        return "gravel_edge";
    }
    return "";
}

std::string_view nameOf(EndKind kind)
{
    switch (kind) {
    case EndKind::Free:
        return "free";
    case EndKind::Butt:
        return "butt";
    case EndKind::Mitre:
        return "mitre";
    case EndKind::WrapTab:
        return "wrap_tab";
    case EndKind::Closed:
        return "closed";
    case EndKind::TurnUp:
        return "turn_up";
    }
    return "";
}

std::optional<RunKind> runKindNamed(std::string_view name)
{
    for (const RunKind kind : allRunKinds)
        if (nameOf(kind) == name)
            return kind;
    return std::nullopt;
}

std::optional<EndKind> endKindNamed(std::string_view name)
{
    for (const EndKind kind : allEndKinds)
        if (nameOf(kind) == name)
            return kind;
    return std::nullopt;
}

std::string wordsFor(RunKind kind)
{
    return withSpaces(nameOf(kind));
}

std::string wordsFor(EndKind kind)
{
    return withSpaces(nameOf(kind));
}

Lie lieOf(RunKind kind)
{
    switch (kind) {
    case RunKind::Rake:
    case RunKind::Hip:
    case RunKind::Valley:
    case RunKind::Sidewall:
        return Lie::Sloped;
    case RunKind::OutsideCorner:
    case RunKind::InsideCorner:
    case RunKind::OpeningJamb:
        return Lie::Upright;
    default:
        return Lie::Level;
    }
}

bool asksForSlope(RunKind kind)
{
    return lieOf(kind) == Lie::Sloped || asksForOtherSlope(kind) || kind == RunKind::Eave ||
           kind == RunKind::Headwall;
}

bool asksForOtherSlope(RunKind kind)
{
    return kind == RunKind::Ridge || kind == RunKind::Hip || kind == RunKind::Valley ||
           kind == RunKind::SlopeChange;
}

bool asksForPlanCorner(RunKind kind)
{
    return squarePlanCorner(kind).has_value();
}

std::optional<Angle> squarePlanCorner(RunKind kind)
{
    switch (kind) {
    case RunKind::Hip:
    case RunKind::OutsideCorner:
        return quarterTurn;
    case RunKind::Valley:
    case RunKind::InsideCorner:
        return Angle::degrees(270.0);
    default:
        return std::nullopt;
    }
}

bool isOfOpening(RunKind kind)
{
    return kind == RunKind::OpeningHead || kind == RunKind::OpeningSill || kind == RunKind::OpeningJamb;
}

} // namespace lapwright::site
