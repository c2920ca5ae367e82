#include "fold/planner.h"

#include "fold/blank.h"
#include "fold/refuse.h"
#include "fold/replay.h"
#include "fold/search.h"
#include "fold/suggest.h"
#include "fold/two_goes.h"
#include "measure/rounding.h"

#include <algorithm>
#include <bit>
#include <memory>

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

/// What is out of the ordinary in bringing the sheet in and taking it out.
std::vector<Phrase> notesOn(const Problem& problem, const FoldStep& step)
{
    const Handling& handling = step.handling;
    std::vector<Phrase> notes;
    if (handling.in == WayIn::Endways)
        notes.push_back({"Slide the piece in past the end of the clamp, and out the same way.", {}});
    else if (handling.out == WayOut::Endways)
        notes.push_back({"Slide the folded piece out past the end of the clamp.", {}});
    if (handling.lift > problem.settings.slidesOver)
        notes.push_back({"Lift by {lift} while laying in: a folded edge hangs below the sheet.",
                         {{"lift", handling.lift}}});
    if (handling.out == WayOut::LittleOpen)
        notes.push_back({"Open the clamp by {open} only, then draw the sheet out: it reaches back over it.",
                         {{"open", handling.open}}});
    // A pre-bent hem is drawn forward to be pressed anyhow.
    if (handling.out == WayOut::DrawnFirst && step.action != Action::PreBend)
        notes.push_back({step.direction == Direction::Up
                             ? "Draw the sheet {drawn} towards you before the clamp opens wide."
                             : "Draw the sheet {drawn} towards you before lifting it.",
                         {{"drawn", handling.drawn}}});
    if (handling.out == WayOut::AsClampOpens && step.action != Action::PreBend)
        notes.push_back(
            {"Draw the sheet {drawn} towards you as the clamp opens.", {{"drawn", handling.drawn}}});
    return notes;
}

void addCautions(const Problem& problem, FoldStep& step)
{
    step.cautions.push_back(
        {step.action == Action::Flatten
             ? "Stop with the clamp just open, look, keep hands clear, then press the hem."
             : "Stop with the clamp just open, look, keep hands clear, then close it.",
         {}});
    if (step.twoPeople)
        step.cautions.push_back(
            {"Two people: {mass}, {length} long.",
             {{"mass", Mass::kilograms(problem.kilograms)}, {"length", problem.pieceLength}}});
}

Action actionOf(const FoldLine& fold, Go go)
{
    if (fold.hem)
        return Action::PreBend;
    return go == Go::First ? Action::FoldPartly : go == Go::Second ? Action::FinishFold : Action::Fold;
}

FoldStep stepFor(const Problem& problem, const Chosen& chosen)
{
    const FoldLine& fold = problem.blank.lines[chosen.line];
    FoldStep step;
    step.action = actionOf(fold, chosen.go);
    step.line = chosen.line;
    step.endToGauge = chosen.placement.endToGauge;
    step.faceUp = chosen.placement.up;
    step.colourUp = chosen.placement.up == problem.profile.colourFace;
    step.direction = directionOf(fold, chosen.placement.up);
    step.gaugeDistance = chosen.gaugeDistance;
    step.touching = chosen.touching;
    step.gaugeSetting = roundToNearest(step.gaugeDistance, problem.machine->displayStep);
    step.handling = chosen.handling;
    const bool whole = chosen.go != Go::First && !fold.hem;
    step.foldAngle = whole ? magnitude(problem.flat.lines[chosen.line].turn) : Angle::radians(chosen.angle);
    step.angleToSet = Angle::radians(chosen.angleToSet);
    step.twoPeople = problem.twoPeople;
    step.notes = notesOn(problem, step);
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
    step.handling = {};
    step.notes.clear();
    step.cautions.clear();
    addCautions(problem, step);
    return step;
}

void appendStep(const Problem& problem, const CostModel& cost, const Chosen& chosen,
                std::optional<AtMachine>& at, FoldPlan& plan)
{
    FoldStep step = stepFor(problem, chosen);
    if (at)
        step.move = moveBetween(at->placement, chosen.placement);
    const FoldLine& fold = problem.blank.lines[chosen.line];
    AtMachine next{chosen.placement, step.gaugeSetting, chosen.angleToSet, step.handling};
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

FoldPlan planFrom(const Problem& problem, const CostModel& cost, const Found& found, std::size_t face)
{
    FoldPlan plan;
    plan.machine = problem.machine->id;
    plan.beamFace = face;
    plan.kilograms = problem.kilograms;
    plan.twoPeople = problem.twoPeople;
    std::optional<AtMachine> at;
    for (const Chosen& chosen : found.steps)
        appendStep(problem, cost, chosen, at, plan);
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
    if (std::any_of(found.steps.begin(), found.steps.end(),
                    [](const Chosen& chosen) { return chosen.go == Go::Second; }))
        plan.cautions.push_back(
            {"One bend is made in two goes: fold it partly, then its neighbours, then finish it and check "
             "its angle.",
             {}});
    plan.cautions.push_back({"Sheet edges cut: wear gloves. The machine's own manual and guards rule.", {}});
    plan.feasibility = flagsOf(problem, plan);
    return plan;
}

FoldPlan flatPiece(const Problem& problem)
{
    FoldPlan plan;
    plan.machine = problem.machine->id;
    plan.kilograms = problem.kilograms;
    plan.feasibility = flagsOf(problem, plan);
    return plan;
}

/// The machine with one beam face.
struct WithFace {
    WithFace(const Problem& problem, std::size_t number)
        : face(number), checker(problem.blank, problem.machine, number, problem.settings), reach(checker)
    {
    }

    std::size_t face;
    StepChecker checker;
    Reach reach;
};

/// The machine with each face that may be fitted, until one makes the piece in one go a bend: the last one
/// then. A change of face takes longer than any handling it could save: the usual face is kept if it will do.
std::vector<std::unique_ptr<WithFace>> facesUntilOneWillDo(const Problem& problem)
{
    std::size_t first = 0, last = problem.machine->beamFaces.size() - 1;
    if (problem.settings.beamFace)
        first = last = *problem.settings.beamFace;
    std::vector<std::unique_ptr<WithFace>> tried;
    for (std::size_t face = first; face <= last; ++face) {
        tried.push_back(std::make_unique<WithFace>(problem, face));
        if (tried.back()->reach.comesTo(tried.back()->reach.whole()))
            break;
    }
    return tried;
}

/// The plan with a bend in two goes where there is one: the last resort, as a second go marks the sheet and
/// is less exact.
std::optional<FoldPlan> inTwoGoes(const Problem& problem, const CostModel& cost, WithFace& tried)
{
    const std::optional<Found> found = searchTwoGoes(tried.reach, cost, problem.machine, tried.face,
                                                     problem.metal, problem.sheet, problem.settings);
    if (!found)
        return std::nullopt;
    return planFrom(problem, cost, *found, tried.face);
}

std::optional<Refusal> alwaysRefused(const Problem& problem)
{
    return refusedAlways(problem.profile, problem.blank, problem.metal, problem.sheet, problem.machine,
                         problem.pieceLength);
}

Outcome planOn(const Problem& problem)
{
    if (std::optional<Refusal> always = alwaysRefused(problem))
        return *std::move(always);
    if (problem.blank.lines.empty())
        return flatPiece(problem);
    const CostModel cost(problem.settings, problem.kilograms, problem.pieceLength, problem.twoPeople);
    const std::vector<std::unique_ptr<WithFace>> tried = facesUntilOneWillDo(problem);
    if (const std::optional<Found> found =
            search(tried.back()->reach, cost, problem.machine->displayStep, problem.settings.flattenInset))
        return planFrom(problem, cost, *found, tried.back()->face);
    if (std::optional<Refusal> never = refusedBend(tried.front()->checker, problem.machine))
        return *std::move(never);
    const bool inTwo = problem.settings.twoGoes && problem.blank.lines.size() <= mostLinesInTwoGoes;
    for (const std::unique_ptr<WithFace>& each : tried)
        if (std::optional<FoldPlan> plan = inTwo ? inTwoGoes(problem, cost, *each) : std::nullopt)
            return *std::move(plan);
    const auto bends = [](const std::unique_ptr<WithFace>& each) {
        return std::popcount(each->reach.furthest(1).front());
    };
    const auto closest = std::max_element(
        tried.begin(), tried.end(), [&bends](const auto& a, const auto& b) { return bends(a) < bends(b); });
    Refusal refusal = refusalFrom((*closest)->reach, problem.machine, (*closest)->face);
    if (inTwo && !refusal.made.empty())
        refusal.statement.text += " One bend in two goes does not help either.";
    return refusal;
}

/// Errors: what of it cannot be folded by any planner. None of the numbers it holds is out of its limits.
Result<Problem> problemOf(const trim::Profile& profile, const trim::FlatPattern& flat,
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
    Result<Blank> blank = makeBlank(profile, flat, metal, sheet, machine, settings);
    if (!blank)
        return blank.errors();
    blank->slidesEndways = machine->slidesEndways && pieceLength <= *machine->slidesEndways;
    const double kilograms = inMetres(flat.girth) * inMetres(pieceLength) * sheet.kilogramsPerSquareMetre;
    return Problem{
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
}

Refusal tooManyBends(const trim::FlatPattern& flat, const Machine& machine)
{
    Refusal refusal;
    refusal.machine = machine->id;
    refusal.obstacle = Obstacle::TooManyBends;
    refusal.statement = {
        "{count} bends and hem edges are more than the {most} whose every order can be tried.",
        {{"count", static_cast<std::int64_t>(flat.lines.size())},
         {"most", static_cast<std::int64_t>(mostBendLines)}}};
    return refusal;
}

} // namespace

Result<Outcome> planFold(const trim::Profile& profile, const trim::FlatPattern& flat,
                         const metal::Metal& metal, const metal::Sheet& sheet, const Machine& machine,
                         Length pieceLength, const Settings& settings)
{
    const Result<Problem> problem = problemOf(profile, flat, metal, sheet, machine, pieceLength, settings);
    if (!problem)
        return problem.errors();
    Outcome outcome =
        flat.lines.size() > mostBendLines ? Outcome(tooManyBends(flat, machine)) : planOn(*problem);
    if (Refusal* refusal = std::get_if<Refusal>(&outcome); refusal != nullptr && settings.findSuggestions)
        suggest(*refusal, profile, metal, sheet, machine, pieceLength, settings);
    return outcome;
}

bool canBeFolded(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Metal& metal,
                 const metal::Sheet& sheet, const Machine& machine, Length pieceLength,
                 const Settings& settings)
{
    const Result<Problem> problem = problemOf(profile, flat, metal, sheet, machine, pieceLength, settings);
    if (!problem || flat.lines.size() > mostBendLines || alwaysRefused(*problem))
        return false;
    if (flat.lines.empty())
        return true;
    const std::vector<std::unique_ptr<WithFace>> tried = facesUntilOneWillDo(*problem);
    Reach& last = tried.back()->reach;
    return last.comesTo(last.whole());
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
