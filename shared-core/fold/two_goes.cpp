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

using Sets = std::vector<bool>;

/// `operations` are TwoGoes, or a StepChecker for bends in one go.
template <class Operations>
bool canBeDone(Operations& operations, Made made, std::size_t operation)
{
    return std::any_of(allPlacements.begin(), allPlacements.end(),
                       [&](Placement placement) { return !operations.obstacle(made, operation, placement); });
}

/// The sets of bends from which all others can be made in one go each.
Sets finishable(StepChecker& whole)
{
    const std::size_t count = whole.lineCount();
    Sets sets(std::size_t{1} << count, false);
    sets.back() = true;
    for (std::size_t made = sets.size() - 1; made-- > 0;)
        for (std::size_t line = 0; line < count && !sets[made]; ++line)
            sets[made] = (made >> line & 1U) == 0U && sets[made | std::size_t{1} << line] &&
                         canBeDone(whole, static_cast<Made>(made), line);
    return sets;
}

/// Whether some sequence makes the line in two goes. `reached` are the sets of bends that can be made in one
/// go each, `ends` those that can be finished so.
bool isPossible(TwoGoes& operations, std::size_t line, const Sets& reached, const Sets& ends)
{
    const Made bit = Made{1} << line;
    const std::size_t second = operations.count() - 1;
    Sets open(ends.size(), false); // the bend stands as the first go leaves it
    for (std::size_t all = ends.size(); all-- > 0;) {
        const Made made = static_cast<Made>(all);
        if ((made & bit) == 0U)
            continue;
        open[all] = ends[all] && canBeDone(operations, made, second);
        for (std::size_t other = 0; other < second && !open[all]; ++other)
            open[all] = (made >> other & 1U) == 0U && open[all | std::size_t{1} << other] &&
                        canBeDone(operations, made, other);
        if (open[all] && reached[all & ~std::size_t{bit}] && canBeDone(operations, made & ~bit, line))
            return true;
    }
    return false;
}

} // namespace

std::optional<Found> searchTwoGoes(StepChecker& whole, const Found& oneGo, const CostModel& cost,
                                   const Machine& machine, std::size_t face, const metal::Metal& metal,
                                   const metal::Sheet& sheet, const Settings& settings)
{
    const Sets ends = finishable(whole);
    std::optional<Found> best;
    for (std::size_t line = 0; line < whole.lineCount(); ++line) {
        // The second go is held to all that one go is held to: it ends where one go could.
        bool ended = false;
        for (std::size_t all = 0; all + 1 < ends.size() && !ended; ++all)
            ended = ends[all] && (all >> line & 1U) == 0U;
        if (!ended)
            continue;
        for (const FoldLine& first :
             firstGoesOf(whole.blank().lines[line], metal, sheet, machine, settings)) {
            const Blank bent = withLine(whole.blank(), line, first);
            StepChecker partly(bent, machine, face, settings);
            TwoGoes operations(whole, partly, line);
            if (!isPossible(operations, line, oneGo.reached, ends))
                continue;
            Found found =
                ShortestSequence(operations, cost, machine->displayStep, settings.flattenInset).run();
            if (found.complete && (!best || found.milliseconds < best->milliseconds))
                best = std::move(found);
        }
    }
    return best;
}

} // namespace lapwright::fold
