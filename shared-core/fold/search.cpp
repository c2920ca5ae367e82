#include "fold/search.h"

#include "fold/shortest_sequence.h"

#include <bit>

namespace lapwright::fold {

namespace {

/// Every bend in one go: operation i is bend line i.
class OneGo {
public:
    explicit OneGo(Reach& reach) : steps_(reach.steps()), finishable_(reach.finishable()) {}

    [[nodiscard]] bool leadsOn(Made made) const { return finishable_[made]; }

    [[nodiscard]] std::size_t count() const { return steps_.lineCount(); }
    [[nodiscard]] bool isHem(std::size_t line) const { return steps_.blank().lines[line].hem; }
    [[nodiscard]] double angleToSet(std::size_t line) const { return steps_.blank().lines[line].angleToSet; }
    [[nodiscard]] std::optional<Obstacle> obstacle(Made made, std::size_t line, Placement placement)
    {
        return steps_.obstacle(made, line, placement);
    }
    [[nodiscard]] Length gaugeDistance(Made made, std::size_t line, Placement placement)
    {
        return steps_.gaugeDistance(made, line, placement);
    }
    [[nodiscard]] Handling handlingForTime(Made made, std::size_t line, Placement placement)
    {
        return steps_.handlingForTime(made, line, placement);
    }
    [[nodiscard]] std::int64_t unhandiness(Made made, std::size_t line) const
    {
        return fold::unhandiness(steps_.blank(), made, line);
    }
    [[nodiscard]] Chosen chosen(Made made, std::size_t line, Placement placement)
    {
        return chosenOf(steps_, made, line, placement);
    }

private:
    StepChecker& steps_;
    std::vector<bool> finishable_;
};

} // namespace

std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line)
{
    if (blank.lines[line].hem)
        return std::int64_t{2} * std::popcount(made);
    const int below = std::popcount(~made & ((Made{1} << line) - 1));
    const int above = static_cast<int>(blank.lines.size() - 1 - line) - std::popcount(made >> (line + 1));
    return std::min(below, above);
}

Chosen chosenOf(StepChecker& steps, Made made, std::size_t line, Placement placement)
{
    const FoldLine& fold = steps.blank().lines[line];
    return {line,
            placement,
            Go::Whole,
            fold.hem ? fold.angleToSet : fold.angle,
            fold.angleToSet,
            steps.gaugeDistance(made, line, placement),
            steps.touching(made, line, placement),
            steps.handling(made, line, placement)};
}

std::optional<Found> search(Reach& reach, const CostModel& cost, Length displayStep, Length inset)
{
    if (!reach.comesTo(reach.whole()))
        return std::nullopt;
    OneGo operations(reach);
    return ShortestSequence(operations, cost, displayStep, inset).run();
}

} // namespace lapwright::fold
