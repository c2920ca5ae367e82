#include "fold/refuse.h"

#include "fold/crossing.h"
#include "measure/rounding.h"
#include "measure/writing.h"

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
    case Obstacle::Itself:
        return "profile itself";
    case Obstacle::TooManyBends:
        break;
    }
    return "number of bends";
}

std::string legName(const trim::Profile& profile, std::size_t leg)
{
    return profile.legs[leg].name.empty() ? "leg " + std::to_string(leg + 1) : profile.legs[leg].name;
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

/// What the part of the machine does to the fold, with {over} where the amount goes.
std::string inTheWay(Obstacle obstacle, bool known)
{
    if (known)
        switch (obstacle) {
        case Obstacle::ClampOpening:
            return "what is folded stands {over} higher than the {part}";
        case Obstacle::ClampAngle:
            return "the {part} stops it {over} short";
        case Obstacle::Gauge:
            return "what would touch the {part} is {over} out of its range";
        case Obstacle::Throat:
            return "what lies behind is {over} deeper than the {part}";
        case Obstacle::LeastLeg:
            return "the leg in front is {over} shorter than the {part}";
        case Obstacle::Sheet:
            return "it meets the {part} {over} before it is folded";
        case Obstacle::Flattening:
            return "the gap is {over} wider than the {part} can leave";
        case Obstacle::WayOut:
            return "folded, it closes round the clamp or the bed and there is no {part}; it reaches {over} back";
        default:
            return "in the way is the {part}, by {over}";
        }
    switch (obstacle) {
    case Obstacle::Gauge:
        return "what would touch the {part} leans so far that it rides up on it";
    case Obstacle::Flattening:
        return "the machine is not made for the {part}";
    case Obstacle::WayOut:
        return "folded, it closes round the clamp or the bed and there is no {part}";
    default:
        return "in the way is the {part}";
    }
}

/// Bend lines as they are counted on the drawing.
std::string numbersOf(const std::vector<std::size_t>& lines)
{
    std::string numbers;
    for (std::size_t i = 0; i < lines.size(); ++i)
        numbers += (i == 0 ? "" : i + 1 == lines.size() ? " and " : ", ") + std::to_string(lines[i] + 1);
    return numbers;
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
        text += refusal.made.size() == 1 ? " once bend line {made} is made"
                                         : " once bend lines {made} are made, in that order";
        refusal.statement.values.emplace_back("made", numbersOf(refusal.made));
    }
    text += ": " + inTheWay(refusal.obstacle, refusal.overBy || refusal.overByAngle);
    if (refusal.overBy)
        refusal.statement.values.emplace_back("over", *refusal.overBy);
    else if (refusal.overByAngle)
        refusal.statement.values.emplace_back("over", *refusal.overByAngle);
    refusal.statement.text = text + (refusal.made.empty() ? "." : ". No other sequence gets further.");
}

/// A flat of the section, counted from the start edge: the hems come before the first leg and after the last.
std::string flatName(const trim::Profile& profile, std::size_t flat)
{
    if (profile.startHem && flat-- == 0)
        return "the first hem";
    if (flat >= profile.legs.size())
        return "the last hem";
    return legName(profile, flat);
}

/// What no machine can fold: a profile with two legs in one place.
std::optional<Refusal> runsThroughItself(const trim::Profile& profile, const Blank& blank)
{
    const auto crossing = crossingFlats(blank);
    if (!crossing)
        return std::nullopt;
    Refusal refusal;
    refusal.obstacle = Obstacle::Itself;
    refusal.statement = {
        "The {part} is in the way: finished, {one} and {other} run through each other. No machine "
        "can fold it.",
        {{"part", std::string(nameOf(Obstacle::Itself))},
         {"one", flatName(profile, crossing->first)},
         {"other", flatName(profile, crossing->second)}}};
    refusal.suggestions.push_back(
        {"Look at the drawing: a turn to the wrong side, or a leg too long or too short.", {}});
    return refusal;
}

/// A thickness, which no rule's fraction of an inch can show: 0.0276" (0.70 mm).
std::string inBothUnits(Length thickness)
{
    return writeThickness(thickness, {LengthUnit::FeetInches, 16, 5}) + " (" +
           writeThickness(thickness, {LengthUnit::Millimetres, 16, 5}) + ")";
}

} // namespace

std::optional<Refusal> refusedAlways(const trim::Profile& profile, const Blank& blank,
                                     const metal::Metal& metal, const metal::Sheet& sheet,
                                     const Machine& machine, Length pieceLength)
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
        refusal.statement = {
            "{metal} {gauge}, {thickness}, is thicker than about {most}, the machine's capacity "
            "for it; a guide from {reference}: the machine's plate rules.",
            {{"metal", metal.name},
             {"gauge", sheet.gauge},
             {"thickness", inBothUnits(sheet.thickness)},
             {"most", inBothUnits(most)},
             {"reference", machine->capacity.metal}}};
        return refusal;
    }
    std::optional<Refusal> itself = runsThroughItself(profile, blank);
    if (itself)
        itself->machine = machine->id;
    return itself;
}

std::optional<Refusal> refusedBend(StepChecker& steps, const Machine& machine)
{
    for (std::size_t line = 0; line < steps.lineCount(); ++line) {
        if (std::any_of(allPlacements.begin(), allPlacements.end(),
                        [&](Placement placement) { return steps.allowedAtAll(line, placement); }))
            continue;
        Blocked closest{Obstacle::FoldsOneWayOnly, std::nullopt, std::nullopt};
        for (const Placement placement : allPlacements)
            if (const Blocked blocked = steps.explain(0, line, placement);
                badness(blocked) < badness(closest))
                closest = blocked;
        Refusal refusal;
        refusal.machine = machine->id;
        refusal.obstacle = closest.obstacle;
        refusal.line = line;
        refusal.overBy = closest.overBy;
        refusal.overByAngle = closest.overByAngle;
        say(refusal, steps.blank());
        return refusal;
    }
    return std::nullopt;
}

namespace {

/// Of the bends that `made` leaves, the one that is nearest to being possible goes into the refusal if it is
/// nearer than `least`.
void takeNearest(Reach& reach, Made made, double& least, Refusal& refusal)
{
    StepChecker& steps = reach.steps();
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
            refusal.made = reach.orderTo(made);
            refusal.overBy = blocked.overBy;
            refusal.overByAngle = blocked.overByAngle;
        }
    }
}

} // namespace

Refusal refusalFrom(Reach& reach, const Machine& machine, std::size_t face)
{
    constexpr std::size_t mostSets = 5;
    Refusal refusal;
    refusal.machine = machine->id;
    double least = std::numeric_limits<double>::infinity();
    for (const Made made : reach.furthest(mostSets))
        takeNearest(reach, made, least, refusal);
    say(refusal, reach.steps().blank());
    if (refusal.obstacle == Obstacle::Beam) {
        refusal.statement.text += " Beam face {face}.";
        refusal.statement.values.emplace_back("face", machine->beamFaces[face].name);
    }
    return refusal;
}

} // namespace lapwright::fold
