#include "site/run_geometry.h"

#include "site/corner.h"
#include "site/hip_valley.h"
#include "site/roof_geometry.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <utility>

namespace lapwright::site {

namespace {

std::optional<Angle> turnAt(const Corner* corner)
{
    if (corner == nullptr)
        return std::nullopt;
    const std::optional<Angle> interior = interiorAngle(*corner);
    return interior ? std::optional(halfTurn - *interior) : std::nullopt;
}

std::optional<Derived<Angle>> turnBetweenPlanes(const Run& run)
{
    if (!run.slope || !run.otherSlope)
        return std::nullopt;
    switch (run.kind) {
    case RunKind::Ridge:
        return ridgeTurn(*run.slope, *run.otherSlope);
    case RunKind::SlopeChange:
        return slopeChangeTurn(*run.slope, *run.otherSlope);
    case RunKind::Hip:
    case RunKind::Valley:
        return creaseTurn(*run.slope, *run.otherSlope,
                          run.planCorner ? *run.planCorner
                                         : squarePlanCorner(run.kind).value_or(quarterTurn));
    default:
        return std::nullopt;
    }
}

std::optional<Derived<Angle>> turnOfWall(const Run& run)
{
    if (run.kind != RunKind::OutsideCorner && run.kind != RunKind::InsideCorner)
        return std::nullopt;
    return wallTurn(run.planCorner ? *run.planCorner : squarePlanCorner(run.kind).value_or(quarterTurn));
}

} // namespace

const Corner* cornerAtStart(const Chain& chain, std::size_t index)
{
    if (index == 0)
        return chain.closed && !chain.runs.empty() && chain.corners.size() == chain.runs.size()
                   ? &chain.corners.back()
                   : nullptr;
    return index - 1 < chain.corners.size() ? &chain.corners[index - 1] : nullptr;
}

const Corner* cornerAtEnd(const Chain& chain, std::size_t index)
{
    const bool last = index + 1 == chain.runs.size();
    if ((last && !chain.closed) || index >= chain.corners.size())
        return nullptr;
    return &chain.corners[index];
}

std::optional<RunGeometry> runGeometry(const Chain& chain, std::size_t index)
{
    const Run& run = chain.runs.at(index);
    std::optional<Derived<Length>> length = effectiveLength(run);
    if (!length)
        return std::nullopt;
    RunGeometry geometry;
    geometry.length = length->value;
    geometry.derivation = {{"{run} is {length} long", {{"run", run.id}, {"length", length->value}}},
                           "",
                           {std::move(length->derivation)}};
    if (run.slope)
        geometry.slope = run.slope->angle();
    if (run.otherSlope)
        geometry.otherSlope = run.otherSlope->angle();
    if (std::optional<Derived<Angle>> turn = turnBetweenPlanes(run)) {
        geometry.creaseTurn = turn->value;
        geometry.turnDerivation = std::move(turn->derivation);
    }
    if (std::optional<Derived<Angle>> turn = turnOfWall(run)) {
        geometry.wallTurn = turn->value;
        geometry.turnDerivation = std::move(turn->derivation);
    }
    geometry.startCornerTurn = turnAt(cornerAtStart(chain, index));
    geometry.endCornerTurn = turnAt(cornerAtEnd(chain, index));
    return geometry;
}

} // namespace lapwright::site
