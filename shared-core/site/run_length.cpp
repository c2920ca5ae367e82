#include "site/run_length.h"

#include "site/roof_geometry.h"
#include "site/run_kind.h"

#include <cmath>

namespace lapwright::site {

namespace {

bool isCrease(RunKind kind)
{
    return kind == RunKind::Hip || kind == RunKind::Valley;
}

Angle planCornerOf(const Run& run)
{
    return run.planCorner ? *run.planCorner : squarePlanCorner(run.kind).value_or(quarterTurn);
}

} // namespace

std::optional<Length> measuredLength(const Run& run)
{
    if (run.counts >= run.lengths.size())
        return std::nullopt;
    return run.lengths[run.counts].value;
}

std::optional<Derived<Length>> derivedLength(const Run& run)
{
    if (!run.levelRun || !run.slope || lieOf(run.kind) != Lie::Sloped)
        return std::nullopt;
    if (!isCrease(run.kind))
        return lengthAlongSlope(run.levelRun->value, *run.slope);
    if (!run.otherSlope)
        return std::nullopt;
    return creaseLength(run.levelRun->value, *run.slope, *run.otherSlope, planCornerOf(run));
}

std::optional<Derived<Length>> effectiveLength(const Run& run)
{
    const std::optional<Length> measured = measuredLength(run);
    if (!measured)
        return derivedLength(run);
    Derivation reason{{"{length} as measured", {{"length", *measured}}}, "", {}};
    const std::string& entered = run.lengths[run.counts].entered;
    if (!entered.empty())
        reason.statement = {"{length} as measured, entered as {entered}",
                            {{"length", *measured}, {"entered", entered}}};
    return Derived<Length>{*measured, std::move(reason)};
}

std::optional<Crease> creaseOf(const Run& run)
{
    if (!isCrease(run.kind) || !run.slope || !run.otherSlope)
        return std::nullopt;
    return creaseOf(*run.slope, *run.otherSlope, planCornerOf(run));
}

std::optional<double> planRatio(const Run& run)
{
    switch (lieOf(run.kind)) {
    case Lie::Level:
        return 1.0;
    case Lie::Upright:
        return 0.0;
    case Lie::Sloped:
        break;
    }
    if (isCrease(run.kind)) {
        const std::optional<Crease> crease = creaseOf(run);
        return crease ? std::optional(std::cos(crease->slope.inRadians())) : std::nullopt;
    }
    return run.slope ? std::optional(1.0 / slopeFactor(*run.slope)) : std::nullopt;
}

} // namespace lapwright::site
