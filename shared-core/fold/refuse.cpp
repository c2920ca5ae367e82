#include "fold/refuse.h"

#include "measure/rounding.h"

#include <algorithm>
#include <limits>

namespace lapwright::fold {

const char* nameOf(Touching touching)
{
    switch (touching) {
    case Touching::Edge:
        return "raw edge";
    case Touching::HemFold:
        return "hem fold";
    case Touching::Corner:
        return "folded corner";
    case Touching::Leg:
        break;
    }
    return "folded leg";
}

const char* nameOf(Obstacle obstacle)
{
    switch (obstacle) {
    case Obstacle::BendingLength:
        return "bending length";
    case Obstacle::Capacity:
        return "capacity";
    case Obstacle::Bed:
        return "bed";
    case Obstacle::Clamp:
        return "clamp";
    case Obstacle::ClampOpening:
        return "clamp opening";
    case Obstacle::ClampAngle:
        return "clamp nose";
    case Obstacle::Beam:
        return "folding beam";
    case Obstacle::Gauge:
        return "back gauge";
    case Obstacle::Throat:
        return "throat";
    case Obstacle::LeastLeg:
        return "least leg";
    case Obstacle::Sheet:
        return "part already folded";
    case Obstacle::Flattening:
        return "flattening of the hem";
    case Obstacle::WayOut:
        return "way out of the machine";
    case Obstacle::FoldsOneWayOnly:
        return "direction of the fold";
    case Obstacle::TooManyBends:
        break;
    }
    return "number of bends";
}

namespace {

/// How near a fold is to being possible, for choosing among reasons: amounts first, then reasons without one.
double badness(const Blocked& blocked)
{
    if (blocked.obstacle == Obstacle::FoldsOneWayOnly)
        return 2e9; // the other face is the one to speak of
    if (blocked.overBy)
        return inMillimetres(*blocked.overBy);
    if (blocked.overByAngle)
        return blocked.overByAngle->inDegrees();
    return blocked.obstacle == Obstacle::Flattening ? 1.5e9 : 1e9;
}

void say(Refusal& refusal, const Blank& blank)
{
    const FoldLine& fold = blank.lines[refusal.line.value_or(0)];
    std::string text = fold.hem               ? "The hem at bend line {bend} cannot be made"
                       : fold.between.empty() ? "Bend line {bend} cannot be folded"
                                              : "Bend line {bend}, between {between}, cannot be folded";
    refusal.statement.values = {{"bend", static_cast<std::int64_t>(refusal.line.value_or(0) + 1)},
                                {"part", std::string(nameOf(refusal.obstacle))}};
    if (!fold.hem && !fold.between.empty())
        refusal.statement.values.emplace_back("between", fold.between);
    if (!refusal.made.empty()) {
        text += " after {count} others";
        refusal.statement.values.emplace_back("count", static_cast<std::int64_t>(refusal.made.size()));
    }
    const bool caught = refusal.obstacle == Obstacle::WayOut;
    text += caught ? ": folded, it closes round the clamp or the bed and there is no {part}"
                   : ": in the way is the {part}";
    if (caught && refusal.overBy) {
        text += "; it reaches {over} back";
        refusal.statement.values.emplace_back("over", *refusal.overBy);
    } else if (refusal.overBy) {
        text += ", by {over}";
        refusal.statement.values.emplace_back("over", *refusal.overBy);
    } else if (refusal.overByAngle) {
        text += ", by {over}";
        refusal.statement.values.emplace_back("over", *refusal.overByAngle);
    }
    refusal.statement.text = text + ". No other sequence gets further.";
}

} // namespace

std::optional<Refusal> refusedAlways(const Blank& blank, const metal::Metal& metal, const metal::Sheet& sheet,
                                     const Machine& machine, Length pieceLength, const Settings& settings)
{
    Refusal refusal;
    refusal.machine = machine->id;
    if (pieceLength > machine->bendingLength) {
        refusal.obstacle = Obstacle::BendingLength;
        refusal.overBy = pieceLength - machine->bendingLength;
        refusal.statement = {
            "The piece is {length} long, the machine folds {most}: {over} too long.",
            {{"length", pieceLength}, {"most", machine->bendingLength}, {"over", *refusal.overBy}}};
        return refusal;
    }
    const Length most = capacityFor(machine->capacity, metal.tensileStrengthPascals);
    if (sheet.thickness > most) {
        refusal.obstacle = Obstacle::Capacity;
        refusal.overBy = sheet.thickness - most;
        refusal.statement = {"{metal} {gauge} is thicker than about {most}, the machine's capacity for it; a "
                             "guide from {reference}: the machine's plate rules.",
                             {{"metal", metal.name},
                              {"gauge", sheet.gauge},
                              {"most", most},
                              {"reference", machine->capacity.metal}}};
        return refusal;
    }
    if (blank.lines.empty())
        return std::nullopt;
    StepChecker steps(blank, machine, 0, settings);
    for (std::size_t line = 0; line < blank.lines.size(); ++line) {
        if (std::any_of(allPlacements.begin(), allPlacements.end(),
                        [&](Placement placement) { return steps.allowedAtAll(line, placement); }))
            continue;
        Blocked closest{Obstacle::FoldsOneWayOnly, std::nullopt, std::nullopt};
        for (const Placement placement : allPlacements)
            if (const Blocked blocked = steps.explain(0, line, placement);
                badness(blocked) < badness(closest))
                closest = blocked;
        refusal.obstacle = closest.obstacle;
        refusal.line = line;
        refusal.overBy = closest.overBy;
        refusal.overByAngle = closest.overByAngle;
        say(refusal, blank);
        return refusal;
    }
    return std::nullopt;
}

namespace {

/// Of the bends a sequence leaves, the one that is nearest to being possible goes into the refusal if it is
/// nearer than `least`.
void takeNearest(StepChecker& steps, const std::vector<Chosen>& sequence, double& least, Refusal& refusal)
{
    Made made = 0;
    std::vector<std::size_t> order;
    for (const Chosen& chosen : sequence) {
        made |= Made{1} << chosen.line;
        order.push_back(chosen.line);
    }
    for (std::size_t line = 0; line < steps.lineCount(); ++line) {
        if ((made >> line & 1U) != 0U)
            continue;
        for (const Placement placement : allPlacements) {
            const Blocked blocked = steps.explain(made, line, placement);
            if (badness(blocked) >= least)
                continue;
            least = badness(blocked);
            refusal.obstacle = blocked.obstacle;
            refusal.line = line;
            refusal.made = order;
            refusal.overBy = blocked.overBy;
            refusal.overByAngle = blocked.overByAngle;
        }
    }
}

} // namespace

Refusal refusalFrom(StepChecker& steps, const Found& found, const Machine& machine, std::size_t face)
{
    Refusal refusal;
    refusal.machine = machine->id;
    refusal.statesSeen = found.statesSeen;
    double least = std::numeric_limits<double>::infinity();
    takeNearest(steps, found.steps, least, refusal);
    for (const std::vector<Chosen>& other : found.alternatives)
        takeNearest(steps, other, least, refusal);
    say(refusal, steps.blank());
    if (refusal.obstacle == Obstacle::Beam) {
        refusal.statement.text += " Beam face {face}.";
        refusal.statement.values.emplace_back("face", machine->beamFaces[face].name);
    }
    return refusal;
}

} // namespace lapwright::fold
