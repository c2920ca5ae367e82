#include "fold/search.h"

#include "measure/rounding.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <queue>

namespace lapwright::fold {

namespace {

/// Room for the tie-breakers of a whole sequence below one millisecond.
constexpr std::int64_t perMillisecond = 1'024;
constexpr std::int64_t unreached = std::numeric_limits<std::int64_t>::max();

constexpr Placement placements[] = {{End::Start, trim::Side::Left},
                                    {End::Start, trim::Side::Right},
                                    {End::End, trim::Side::Left},
                                    {End::End, trim::Side::Right}};

class Search {
public:
    Search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset);
    Found run();

private:
    /// Node number: (made × lines + last) × 4 + placement; the start is its own number.
    using Node = std::uint32_t;
    struct Open {
        std::int64_t estimate;
        std::int64_t made;
        Node node;
        bool operator<(const Open& other) const
        {
            // A priority queue takes its largest: the smallest estimate, then the one with most made.
            if (estimate != other.estimate)
                return estimate > other.estimate;
            if (made != other.made)
                return made < other.made;
            return node > other.node;
        }
    };

    [[nodiscard]] Made madeOf(Node node) const { return static_cast<Made>(node / 4 / lines_); }
    [[nodiscard]] std::size_t lastOf(Node node) const { return node / 4 % lines_; }
    [[nodiscard]] Node nodeOf(Made made, std::size_t last, std::size_t placement) const
    {
        return static_cast<Node>((made * lines_ + last) * 4 + placement);
    }
    [[nodiscard]] std::int64_t estimate(Made made, std::size_t last, std::size_t placement) const;
    [[nodiscard]] AtMachine arrival(Made before, std::size_t line, std::size_t placement, Length& folding);
    void expand(Made made, const std::optional<AtMachine>& from, Node fromNode, std::int64_t soFar);
    [[nodiscard]] std::vector<Chosen> sequenceTo(Node node) const;

    StepChecker& steps_;
    const CostModel& cost_;
    Length displayStep_, inset_;
    std::size_t lines_;
    Made all_;
    Node start_;
    std::vector<std::int64_t> best_;
    std::vector<Node> from_;
    std::vector<std::uint8_t> done_;
    std::vector<std::size_t> angleGroup_;
    std::vector<std::uint8_t> allowed_; ///< placements a line may be folded in, ever, as bits
    std::priority_queue<Open> open_;
};

Search::Search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset)
    : steps_(steps), cost_(cost), displayStep_(displayStep), inset_(inset), lines_(steps.lineCount()),
      all_((Made{1} << lines_) - 1), start_(static_cast<Node>((std::size_t{1} << lines_) * lines_ * 4)),
      best_(start_ + 1, unreached), from_(start_ + 1, start_), done_(start_ + 1, 0)
{
    const std::vector<FoldLine>& folds = steps.blank().lines;
    for (std::size_t i = 0; i < lines_; ++i) {
        std::size_t group = 0;
        while (std::abs(folds[group].angleToSet - folds[i].angleToSet) > 1e-6)
            ++group;
        angleGroup_.push_back(group);
        std::uint8_t allowed = 0;
        for (std::size_t p = 0; p < 4; ++p)
            if (steps.allowedAtAll(i, placements[p]))
                allowed = static_cast<std::uint8_t>(allowed | 1U << p);
        allowed_.push_back(allowed);
    }
}

std::int64_t Search::estimate(Made made, std::size_t last, std::size_t placement) const
{
    std::int64_t sum = 0;
    Made groups = 0;
    bool otherFace = false, otherEnd = false;
    const unsigned here = 1U << placement;
    for (std::size_t i = 0; i < lines_; ++i) {
        if ((made >> i & 1U) != 0U)
            continue;
        sum += cost_.leastStep(steps_.blank().lines[i].hem);
        groups |= Made{1} << angleGroup_[i];
        const unsigned allowed = allowed_[i];
        const unsigned sameFace = (placement & 1U) == 0 ? 0b0101U : 0b1010U;
        const unsigned sameEnd = (placement & 2U) == 0 ? 0b0011U : 0b1100U;
        if ((allowed & here) == 0U) {
            otherFace = otherFace || (allowed & sameFace) == 0U;
            otherEnd = otherEnd || (allowed & sameEnd) == 0U;
        }
    }
    groups &= ~(Made{1} << angleGroup_[last]);
    sum += std::popcount(groups) * cost_.times().angleChange;
    const Placement at = placements[placement];
    const std::int64_t over = cost_.move(at, placements[placement ^ 1U]);
    const std::int64_t spin = cost_.move(at, placements[placement ^ 2U]);
    const std::int64_t both = cost_.move(at, placements[placement ^ 3U]);
    if (otherFace && otherEnd)
        sum += std::min(both, over + spin);
    else if (otherFace)
        sum += std::min(over, both);
    else if (otherEnd)
        sum += std::min(spin, both);
    return sum * perMillisecond;
}

AtMachine Search::arrival(Made before, std::size_t line, std::size_t placement, Length& folding)
{
    const FoldLine& fold = steps_.blank().lines[line];
    const Length exact = steps_.gaugeDistance(before, line, placements[placement]);
    folding = roundToNearest(exact, displayStep_);
    return {placements[placement], fold.hem ? roundToNearest(exact + inset_, displayStep_) : folding,
            fold.angleToSet};
}

void Search::expand(Made made, const std::optional<AtMachine>& from, Node fromNode, std::int64_t soFar)
{
    for (std::size_t line = 0; line < lines_; ++line) {
        if ((made >> line & 1U) != 0U)
            continue;
        for (std::size_t p = 0; p < 4; ++p) {
            if ((allowed_[line] >> p & 1U) == 0U || steps_.obstacle(made, line, placements[p]))
                continue;
            Length folding;
            const AtMachine next = arrival(made, line, p, folding);
            const Made then = made | Made{1} << line;
            const Node node = nodeOf(then, line, p);
            const std::int64_t total =
                soFar + cost_.step(from, next, steps_.blank().lines[line].hem, folding) * perMillisecond +
                unhandiness(steps_.blank(), made, line);
            if (total >= best_[node])
                continue;
            best_[node] = total;
            from_[node] = fromNode;
            open_.push({total + estimate(then, line, p), std::popcount(then), node});
        }
    }
}

std::vector<Chosen> Search::sequenceTo(Node node) const
{
    std::vector<Chosen> steps;
    for (; node != start_; node = from_[node])
        steps.push_back({lastOf(node), placements[node % 4]});
    std::reverse(steps.begin(), steps.end());
    return steps;
}

Found Search::run()
{
    Found found;
    Node furthest = start_;
    int mostMade = 0;
    best_[start_] = 0;
    expand(0, std::nullopt, start_, 0);
    while (!open_.empty()) {
        const Open top = open_.top();
        open_.pop();
        if (done_[top.node] != 0)
            continue;
        done_[top.node] = 1;
        ++found.statesSeen;
        const Made made = madeOf(top.node);
        if (std::popcount(made) > mostMade) {
            mostMade = std::popcount(made);
            furthest = top.node;
        }
        if (made == all_) {
            found.complete = true;
            break;
        }
        Length folding;
        const std::size_t last = lastOf(top.node);
        const AtMachine at = arrival(made & ~(Made{1} << last), last, top.node % 4, folding);
        expand(made, at, top.node, best_[top.node]);
    }
    found.steps = sequenceTo(furthest);
    found.milliseconds = best_[furthest] / perMillisecond;
    return found;
}

} // namespace

std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line)
{
    if (blank.lines[line].hem)
        return 2 * std::popcount(made);
    const int below = std::popcount(~made & ((Made{1} << line) - 1));
    const int above = static_cast<int>(blank.lines.size() - 1 - line) - std::popcount(made >> (line + 1));
    return std::min(below, above);
}

Found search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset)
{
    return Search(steps, cost, displayStep, inset).run();
}

} // namespace lapwright::fold
