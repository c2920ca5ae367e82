#include "fold/two_goes.h"

#include "fold/shortest_sequence.h"
#include "fold/springback.h"

#include <algorithm>

namespace lapwright::fold {

std::vector<FoldLine> firstGoesOf(const FoldLine& line, const metal::Metal& metal, const metal::Sheet& sheet,
                                  const Machine& machine, const Settings& settings)
{
    std::vector<FoldLine> goes;
    if (line.hem)
        return goes;
    const Angle most = Angle::radians(line.angle) - settings.firstGoStep / 2;
    for (Angle first = settings.firstGoStep; first <= most; first += settings.firstGoStep) {
        FoldLine partly = bentTo(line, first.inRadians(), first.inRadians());
        const Length inside = nearestFromMillimetres(partly.middleRadius) - sheet.thickness / 2;
        if (const std::optional<Angle> set = angleToSet(metal, sheet, inside, first, machine, settings)) {
            partly.angleToSet = set->inRadians();
            goes.push_back(std::move(partly));
        }
    }
    return goes;
}

bool TwoGoes::leadsOn(Made made) const
{
    const Made bit = Made{1} << line_, lines = made & ((Made{1} << whole_.lineCount()) - 1);
    const bool first = (made & bit) != 0U, second = made != lines;
    if (second)
        return first && sets_.after[lines];
    return first ? sets_.between[lines & ~bit] : sets_.before[lines];
}

double TwoGoes::angleToSet(std::size_t operation) const
{
    if (isSecond(operation))
        return whole_.blank().lines[line_].angleToSet;
    return partly_.blank().lines[operation].angleToSet;
}

StepChecker& TwoGoes::standing(Made made, std::size_t operation) const
{
    if (isSecond(operation))
        return whole_; // the bend itself: it does not stand on either side of itself
    if (operation == line_)
        return partly_;
    const bool first = (made >> line_ & 1U) != 0U, second = (made >> whole_.lineCount() & 1U) != 0U;
    return first && !second ? partly_ : whole_;
}

Made TwoGoes::linesOf(Made made, std::size_t operation) const
{
    const Made lines = made & ((Made{1} << whole_.lineCount()) - 1);
    return isSecond(operation) ? lines & ~(Made{1} << line_) : lines;
}

std::optional<Obstacle> TwoGoes::obstacle(Made made, std::size_t operation, Placement placement)
{
    const Made lines = linesOf(made, operation);
    if (!isSecond(operation))
        return standing(made, operation).obstacle(lines, operation, placement);
    if ((made >> line_ & 1U) == 0U)
        return Obstacle::Sheet; // nothing to finish yet
    if (const std::optional<Obstacle> found = whole_.obstacle(lines, line_, placement))
        return found;
    return whole_.layingInBent(lines, line_, placement, partly_.blank().lines[line_]);
}

Length TwoGoes::gaugeDistance(Made made, std::size_t operation, Placement placement)
{
    return standing(made, operation)
        .gaugeDistance(linesOf(made, operation), isSecond(operation) ? line_ : operation, placement);
}

Handling TwoGoes::handlingForTime(Made made, std::size_t operation, Placement placement)
{
    return standing(made, operation)
        .handlingForTime(linesOf(made, operation), isSecond(operation) ? line_ : operation, placement);
}

std::int64_t TwoGoes::unhandiness(Made made, std::size_t operation) const
{
    return isSecond(operation) ? 0 : fold::unhandiness(whole_.blank(), linesOf(made, operation), operation);
}

Chosen TwoGoes::chosen(Made made, std::size_t operation, Placement placement)
{
    const std::size_t line = isSecond(operation) ? line_ : operation;
    Chosen chosen = chosenOf(standing(made, operation), linesOf(made, operation), line, placement);
    chosen.go = isSecond(operation) ? Go::Second : line == line_ ? Go::First : Go::Whole;
    return chosen;
}

namespace {

bool anyPlacement(StepChecker& steps, Made made, std::size_t line)
{
    return std::any_of(allPlacements.begin(), allPlacements.end(),
                       [&](Placement placement) { return !steps.obstacle(made, line, placement); });
}

/// Adds to `sets` those from which `steps` come to one of them, `line` left alone: it is in the sets that
/// `steps` are asked for if it is in `standing`.
void addWhatComesTo(std::vector<bool>& sets, StepChecker& steps, std::size_t line, Made standing)
{
    for (Made after = static_cast<Made>(sets.size() - 1); after > 0; --after) // before all its subsets
        for (std::size_t other = 0; sets[after] && other < steps.lineCount(); ++other) {
            const Made before = after & ~(Made{1} << other);
            if (other != line && !sets[before] && anyPlacement(steps, before | standing, other))
                sets[before] = true;
        }
}

/// One bend in two goes, asked whether it can be at all before any time is counted.
class OneInTwo {
public:
    /// `ends` are the sets of bends that can be finished in one go each.
    OneInTwo(Reach& reach, const std::vector<bool>& ends, std::size_t line) : reach_(reach), line_(line)
    {
        sets_.after = ends;
    }

    /// Whether the second go can ever be made. It is held to all that one go is held to: it ends where one go
    /// could. Quick.
    [[nodiscard]] bool canEnd()
    {
        const Made bit = Made{1} << line_;
        for (Made others = 0; others < sets_.after.size(); ++others)
            if ((others & bit) == 0U && sets_.after[others | bit] && reach_.canFold(others, line_))
                lasts_.push_back(others);
        return !lasts_.empty();
    }
    /// Whether one of them can be made of the bend as a first go leaves it.
    [[nodiscard]] bool canEndFrom(const FoldLine& first)
    {
        sets_.between.assign(sets_.after.size(), false);
        bool any = false;
        for (const Made others : lasts_)
            if (canFinish(others, first))
                sets_.between[others] = any = true;
        return any;
    }
    /// Whether some sequence makes that first go and comes to the second. Precondition: canEndFrom() it.
    [[nodiscard]] bool isPossible(StepChecker& partly)
    {
        addWhatComesTo(sets_.between, partly, line_, Made{1} << line_);
        sets_.before.assign(sets_.after.size(), false);
        bool any = false;
        for (Made others = 0; others < sets_.between.size(); ++others)
            if (sets_.between[others] && reach_.comesTo(others) && anyPlacement(partly, others, line_))
                sets_.before[others] = any = true;
        if (any)
            addWhatComesTo(sets_.before, reach_.steps(), line_, 0);
        return any;
    }
    [[nodiscard]] const LeadsOn& sets() const { return sets_; }

private:
    [[nodiscard]] bool canFinish(Made others, const FoldLine& first)
    {
        StepChecker& whole = reach_.steps();
        return std::any_of(allPlacements.begin(), allPlacements.end(), [&](Placement placement) {
            return !whole.obstacle(others, line_, placement) &&
                   !whole.layingInBent(others, line_, placement, first);
        });
    }

    Reach& reach_;
    std::size_t line_;
    LeadsOn sets_;
    std::vector<Made> lasts_; ///< sets of others with which the second go can be made
};

} // namespace

std::optional<Found> searchTwoGoes(Reach& reach, const CostModel& cost, const Machine& machine,
                                   std::size_t face, const metal::Metal& metal, const metal::Sheet& sheet,
                                   const Settings& settings)
{
    StepChecker& whole = reach.steps();
    const std::vector<bool> ends = reach.finishable();
    std::optional<Found> best;
    for (std::size_t line = 0; line < whole.lineCount(); ++line) {
        OneInTwo bend(reach, ends, line);
        if (whole.blank().lines[line].hem || !bend.canEnd())
            continue;
        for (const FoldLine& first :
             firstGoesOf(whole.blank().lines[line], metal, sheet, machine, settings)) {
            if (!bend.canEndFrom(first))
                continue;
            const Blank bent = withLine(whole.blank(), line, first);
            StepChecker partly(bent, machine, face, settings);
            if (!bend.isPossible(partly))
                continue;
            TwoGoes operations(whole, partly, line, bend.sets());
            std::optional<Found> found =
                ShortestSequence(operations, cost, machine->displayStep, settings.flattenInset).run();
            if (found && (!best || found->milliseconds < best->milliseconds))
                best = std::move(found);
        }
    }
    return best;
}

} // namespace lapwright::fold
