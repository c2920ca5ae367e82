#include "fold/planner.h"

#include "fold/blank.h"
#include "fold/refuse.h"
#include "fold/replay.h"
#include "fold/search.h"
#include "fold/suggest.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

namespace {

/// Everything one piece needs, made once.
struct Problem {
    const trim::Profile& profile;
    const trim::FlatPattern& flat;
    const metal::Metal& metal;
    const metal::Sheet& sheet;
    const Machine& machine;
    Length pieceLength;
    const Settings& settings;
    Blank blank;
    double kilograms = 0.0;
    bool twoPeople = false;
};

void addCautions(const Problem& problem, FoldStep& step)
{
    step.cautions.push_back(
        {step.action == Action::Flatten
             ? "Stop with the clamp just open, look, keep hands clear, then press the hem."
             : "Stop with the clamp just open, look, keep hands clear, then close it.",
         {}});
    if (step.lift > problem.settings.slidesOver && step.action != Action::Flatten)
        step.cautions.push_back(
            {"Lift by {lift} while laying in: a folded edge hangs below the sheet.", {{"lift", step.lift}}});
    if (step.twoPeople)
        step.cautions.push_back(
            {"Two people: {mass} kg, {length} long.",
             {{"mass", std::round(10.0 * problem.kilograms) / 10.0}, {"length", problem.pieceLength}}});
}

FoldStep stepFor(const Problem& problem, StepChecker& checker, Made made, const Chosen& chosen)
{
    const FoldLine& fold = problem.blank.lines[chosen.line];
    FoldStep step;
    step.action = fold.hem ? Action::PreBend : Action::Fold;
    step.line = chosen.line;
    step.endToGauge = chosen.placement.endToGauge;
    step.faceUp = chosen.placement.up;
    step.colourUp = chosen.placement.up == problem.profile.colourFace;
    step.direction = directionOf(fold, chosen.placement.up);
    step.gaugeDistance = checker.gaugeDistance(made, chosen.line, chosen.placement);
    step.gaugeSetting = roundToNearest(step.gaugeDistance, problem.machine->displayStep);
    step.lift = checker.lift(made, chosen.line, chosen.placement);
    step.foldAngle = magnitude(problem.flat.lines[chosen.line].turn);
    step.angleToSet = Angle::radians(fold.angleToSet);
    if (fold.hem)
        step.foldAngle = step.angleToSet;
    step.twoPeople = problem.twoPeople;
    addCautions(problem, step);
    return step;
}

FoldStep flattenAfter(const Problem& problem, const FoldStep& preBend)
{
    FoldStep step = preBend;
    step.action = Action::Flatten;
    step.move = Move::None;
    step.gaugeDistance = preBend.gaugeDistance + problem.settings.flattenInset;
    step.gaugeSetting = roundToNearest(step.gaugeDistance, problem.machine->displayStep);
    step.foldAngle = halfTurn;
    step.angleToSet = halfTurn;
    step.openGap = 2 * problem.flat.lines[preBend.line].insideRadius;
    step.cautions.clear();
    addCautions(problem, step);
    return step;
}

void appendStep(const Problem& problem, const CostModel& cost, StepChecker& checker, Made made,
                const Chosen& chosen, std::optional<AtMachine>& at, FoldPlan& plan)
{
    FoldStep step = stepFor(problem, checker, made, chosen);
    if (at)
        step.move = moveBetween(at->placement, chosen.placement);
    const FoldLine& fold = problem.blank.lines[chosen.line];
    AtMachine next{chosen.placement, step.gaugeSetting, fold.angleToSet,
                   step.lift > problem.settings.slidesOver};
    std::optional<FoldStep> flatten;
    if (fold.hem) {
        flatten = flattenAfter(problem, step);
        next.gaugeSetting = flatten->gaugeSetting;
        flatten->milliseconds = cost.times().gaugeChange + cost.times().flatten;
    }
    step.milliseconds =
        cost.step(at, next, fold.hem, step.gaugeSetting) - (flatten ? flatten->milliseconds : 0);
    at = next;
    plan.milliseconds += step.milliseconds;
    plan.steps.push_back(std::move(step));
    if (flatten) {
        plan.milliseconds += flatten->milliseconds;
        plan.steps.push_back(std::move(*flatten));
    }
}

Feasibility flagsOf(const Problem& problem, const FoldPlan& plan)
{
    return replay(plan, problem.blank, problem.machine, problem.settings, problem.pieceLength,
                  capacityFor(problem.machine->capacity, problem.metal.tensileStrengthPascals));
}

FoldPlan planFrom(const Problem& problem, const CostModel& cost, StepChecker& checker, const Found& found,
                  std::size_t face)
{
    FoldPlan plan;
    plan.machine = problem.machine->id;
    plan.beamFace = face;
    plan.kilograms = problem.kilograms;
    plan.twoPeople = problem.twoPeople;
    plan.statesSeen = found.statesSeen;
    std::optional<AtMachine> at;
    Made made = 0;
    for (const Chosen& chosen : found.steps) {
        appendStep(problem, cost, checker, made, chosen, at, plan);
        made |= Made{1} << chosen.line;
    }
    if (face > 0 && !problem.settings.beamFace) {
        plan.milliseconds += cost.times().beamFaceChange;
        plan.cautions.push_back(
            {"Fit the {face} beam face.", {{"face", problem.machine->beamFaces[face].name}}});
    }
    if (problem.metal.brittle &&
        std::any_of(problem.flat.lines.begin(), problem.flat.lines.end(), [](const trim::BendLine& line) {
            return line.kind != trim::BendLine::Kind::Bend && line.insideRadius <= Length();
        }))
        plan.cautions.push_back({"{metal} may crack in a closed hem: use an open or teardrop hem.",
                                 {{"metal", problem.metal.name}}});
    plan.cautions.push_back({"Sheet edges cut: wear gloves. The machine's own manual and guards rule.", {}});
    plan.feasibility = flagsOf(problem, plan);
    return plan;
}

Outcome withFace(const Problem& problem, std::size_t face)
{
    StepChecker checker(problem.blank, problem.machine, face, problem.settings);
    const CostModel cost(problem.settings.times, problem.kilograms, problem.pieceLength, problem.twoPeople);
    if (problem.blank.lines.empty()) {
        FoldPlan flatPiece;
        flatPiece.machine = problem.machine->id;
        flatPiece.kilograms = problem.kilograms;
        flatPiece.feasibility = flagsOf(problem, flatPiece);
        return flatPiece;
    }
    const Found found = search(checker, cost, problem.machine->displayStep, problem.settings.flattenInset);
    if (found.complete)
        return planFrom(problem, cost, checker, found, face);
    return refusalFrom(checker, found, problem.machine, face);
}

Outcome planOn(const Problem& problem)
{
    if (std::optional<Refusal> always = refusedAlways(problem.blank, problem.metal, problem.sheet,
                                                      problem.machine, problem.pieceLength, problem.settings))
        return *always;
    if (problem.settings.beamFace)
        return withFace(problem, *problem.settings.beamFace);
    std::optional<Refusal> closest;
    std::optional<FoldPlan> best;
    for (std::size_t face = 0; face < problem.machine->beamFaces.size(); ++face) {
        // A change of face takes longer than any handling it could save: the usual face is kept if it will
        // do.
        Outcome outcome = withFace(problem, face);
        if (const FoldPlan* plan = std::get_if<FoldPlan>(&outcome)) {
            best = *plan;
            break;
        }
        const Refusal& refusal = std::get<Refusal>(outcome);
        if (!closest || refusal.made.size() > closest->made.size())
            closest = refusal;
    }
    if (best)
        return *best;
    return *closest;
}

} // namespace

Result<Outcome> planFold(const trim::Profile& profile, const trim::FlatPattern& flat,
                         const metal::Metal& metal, const metal::Sheet& sheet, const Machine& machine,
                         Length pieceLength, const Settings& settings)
{
    if (pieceLength <= Length() || pieceLength > Length::millimetres(100'000))
        return Error{"length", std::to_string(inMillimetres(pieceLength)) + " mm", "over 0 and up to 100 m"};
    if (std::vector<Error> faults = faultsIn(settings); !faults.empty())
        return faults;
    if (settings.beamFace && *settings.beamFace >= machine->beamFaces.size())
        return Error{"beam face", std::to_string(*settings.beamFace + 1),
                     "1 to " + std::to_string(machine->beamFaces.size())};
    if (flat.lines.size() > mostBendLines) {
        Refusal refusal;
        refusal.machine = machine->id;
        refusal.obstacle = Obstacle::TooManyBends;
        refusal.statement = {"{count} bends and hem edges are more than the {most} the planner orders.",
                             {{"count", static_cast<std::int64_t>(flat.lines.size())},
                              {"most", static_cast<std::int64_t>(mostBendLines)}}};
        if (settings.findSuggestions)
            suggest(refusal, profile, metal, sheet, machine, pieceLength, settings);
        return Outcome(refusal);
    }
    Result<Blank> blank = makeBlank(profile, flat, metal, sheet, machine, settings);
    if (!blank)
        return blank.errors();
    const double kilograms = inMetres(flat.girth) * inMetres(pieceLength) * sheet.kilogramsPerSquareMetre;
    const Problem problem{
        profile,
        flat,
        metal,
        sheet,
        machine,
        pieceLength,
        settings,
        std::move(*blank),
        kilograms,
        kilograms >= settings.twoPeopleFromKilograms || pieceLength >= settings.twoPeopleFromLength};
    Outcome outcome = planOn(problem);
    if (Refusal* refusal = std::get_if<Refusal>(&outcome); refusal != nullptr && settings.findSuggestions)
        suggest(*refusal, profile, metal, sheet, machine, pieceLength, settings);
    return outcome;
}

Result<std::vector<MachineOutcome>> chooseMachine(const trim::Profile& profile, const trim::FlatPattern& flat,
                                                  const metal::Metal& metal, const metal::Sheet& sheet,
                                                  const std::vector<Machine>& machines, Length pieceLength,
                                                  const Settings& settings)
{
    std::vector<MachineOutcome> outcomes;
    for (std::size_t i = 0; i < machines.size(); ++i) {
        Result<Outcome> outcome = planFold(profile, flat, metal, sheet, machines[i], pieceLength, settings);
        if (!outcome)
            return outcome.errorsWithin(machines[i]->id);
        outcomes.push_back({i, std::move(*outcome)});
    }
    std::stable_sort(outcomes.begin(), outcomes.end(), [](const MachineOutcome& a, const MachineOutcome& b) {
        const FoldPlan* first = std::get_if<FoldPlan>(&a.outcome);
        const FoldPlan* second = std::get_if<FoldPlan>(&b.outcome);
        if (first != nullptr && second != nullptr)
            return first->milliseconds < second->milliseconds;
        return first != nullptr && second == nullptr;
    });
    suggestMachines(outcomes, machines);
    return outcomes;
}

} // namespace lapwright::fold
