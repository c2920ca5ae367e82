#include "fold/search.h"

#include "measure/rounding.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <limits>

namespace lapwright::fold {

namespace {

/// Room for the tie-breakers of a whole sequence below one millisecond.
constexpr std::int64_t perMillisecond = 1'024;
constexpr std::int64_t unreached = std::numeric_limits<std::int64_t>::max();

constexpr std::array<Placement, 4> placements = {{{End::Start, trim::Side::Left},
                                                  {End::Start, trim::Side::Right},
                                                  {End::End, trim::Side::Left},
                                                  {End::End, trim::Side::Right}}};

class Search {
public:
    Search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset);
    Found run();

private:
    /// Node number: (made × lines + last) × 4 + placement; the start is its own number.
    using Node = std::uint32_t;

    /// The machine as a state leaves it.
    struct State {
        Node node = 0;
        std::int64_t soFar = 0;
        std::size_t placement = 0;
        std::size_t angle = 0; ///< group
        Length setting;
    };
    /// A fold that can be made next.
    struct Next {
        std::size_t line = 0;
        std::size_t placement = 0;
        Length folding; ///< gauge setting
        Length leaving; ///< the same after a hem is pressed
        std::int64_t least = 0;
    };

    [[nodiscard]] Made madeOf(Node node) const { return static_cast<Made>(node / 4 / lines_); }
    [[nodiscard]] std::size_t lastOf(Node node) const { return node / 4 % lines_; }
    [[nodiscard]] Node nodeOf(Made made, std::size_t last, std::size_t placement) const
    {
        return static_cast<Node>((made * lines_ + last) * 4 + placement);
    }
    void statesAt(Made made);
    void movesFrom(Made made);
    void settle(Made made);
    [[nodiscard]] std::vector<Chosen> sequenceTo(Node node) const;

    StepChecker& steps_;
    const CostModel& cost_;
    Length displayStep_, inset_;
    std::size_t lines_;
    Made all_;
    Node start_;
    std::vector<std::int64_t> best_;
    std::vector<Node> from_;
    std::vector<Length> setting_;
    std::vector<std::size_t> angleGroup_;
    std::array<std::array<std::int64_t, 4>, 4> move_{};
    std::int64_t widest_ = 0; ///< dearest move with both changes
    std::vector<State> states_;
    std::vector<Next> next_;
    Found found_;
};

Search::Search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset)
    : steps_(steps), cost_(cost), displayStep_(displayStep), inset_(inset), lines_(steps.lineCount()),
      all_((Made{1} << lines_) - 1), start_(static_cast<Node>((std::size_t{1} << lines_) * lines_ * 4)),
      best_(start_ + 1, unreached), from_(start_ + 1, start_), setting_(start_ + 1)
{
    const std::vector<FoldLine>& folds = steps.blank().lines;
    for (std::size_t i = 0; i < lines_; ++i) {
        std::size_t group = 0;
        while (std::abs(folds[group].angleToSet - folds[i].angleToSet) > 1e-6)
            ++group;
        angleGroup_.push_back(group);
    }
    for (std::size_t from = 0; from < 4; ++from)
        for (std::size_t to = 0; to < 4; ++to) {
            move_[from][to] = cost.move(placements[from], placements[to]) * perMillisecond;
            widest_ = std::max(widest_, move_[from][to]);
        }
    widest_ += (cost.times().gaugeChange + cost.times().angleChange) * perMillisecond;
}

void Search::statesAt(Made made)
{
    states_.clear();
    std::int64_t least = unreached;
    for (std::size_t last = 0; last < lines_; ++last) {
        if ((made >> last & 1U) == 0U)
            continue;
        for (std::size_t p = 0; p < 4; ++p) {
            const Node node = nodeOf(made, last, p);
            if (best_[node] == unreached)
                continue;
            states_.push_back({node, best_[node], p, angleGroup_[last], setting_[node]});
            least = std::min(least, best_[node]);
        }
    }
    std::erase_if(states_, [&](const State& state) { return state.soFar > least + widest_; });
    found_.statesSeen += static_cast<std::int64_t>(states_.size());
}

void Search::movesFrom(Made made)
{
    next_.clear();
    for (std::size_t line = 0; line < lines_; ++line) {
        if ((made >> line & 1U) != 0U)
            continue;
        const bool hem = steps_.blank().lines[line].hem;
        for (std::size_t p = 0; p < 4; ++p) {
            if (steps_.obstacle(made, line, placements[p]))
                continue;
            const Length exact = steps_.gaugeDistance(made, line, placements[p]);
            const Length folding = roundToNearest(exact, displayStep_);
            const bool over = steps_.liftsOver(made, line, placements[p]);
            next_.push_back({line, p, folding, hem ? roundToNearest(exact + inset_, displayStep_) : folding,
                             (cost_.leastStep(hem) + (over ? cost_.layInOver() : 0)) * perMillisecond +
                                 unhandiness(steps_.blank(), made, line)});
        }
    }
}

void Search::settle(Made made)
{
    movesFrom(made);
    const std::int64_t gauge = cost_.times().gaugeChange * perMillisecond;
    const std::int64_t angle = cost_.times().angleChange * perMillisecond;
    for (const Next& next : next_) {
        const Node node = nodeOf(made | Made{1} << next.line, next.line, next.placement);
        setting_[node] = next.leaving;
        if (made == 0)
            best_[node] = next.least + gauge + angle;
        for (const State& state : states_) {
            const std::int64_t total = state.soFar + next.least + move_[state.placement][next.placement] +
                                       (state.setting != next.folding ? gauge : 0) +
                                       (state.angle != angleGroup_[next.line] ? angle : 0);
            if (total < best_[node]) {
                best_[node] = total;
                from_[node] = state.node;
            }
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
    Node furthest = start_;
    best_[start_] = 0;
    for (Made made = 0; made <= all_; ++made) { // a set of bends comes after all its subsets
        statesAt(made);
        if (made != 0 && states_.empty())
            continue;
        const auto cheapest = std::min_element(
            states_.begin(), states_.end(), [](const State& a, const State& b) { return a.soFar < b.soFar; });
        const int before = furthest == start_ ? 0 : std::popcount(madeOf(furthest));
        if (cheapest != states_.end() &&
            (std::popcount(made) > before ||
             (std::popcount(made) == before && cheapest->soFar < best_[furthest])))
            furthest = cheapest->node;
        settle(made);
    }
    found_.complete = furthest != start_ && madeOf(furthest) == all_;
    found_.steps = sequenceTo(furthest);
    found_.milliseconds = best_[furthest] / perMillisecond;
    return std::move(found_);
}

} // namespace

std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line)
{
    if (blank.lines[line].hem)
        return std::int64_t{2} * std::popcount(made);
    const int below = std::popcount(~made & ((Made{1} << line) - 1));
    const int above = static_cast<int>(blank.lines.size() - 1 - line) - std::popcount(made >> (line + 1));
    return std::min(below, above);
}

Found search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset)
{
    return Search(steps, cost, displayStep, inset).run();
}

} // namespace lapwright::fold
