#pragma once

#include "fold/cost.h"
#include "fold/search.h"
#include "measure/rounding.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <vector>

namespace lapwright::fold {

/// Room for the tie-breakers of a whole sequence below one millisecond.
inline constexpr std::int64_t perMillisecond = 1'024;

/// The search itself, over whatever `Operations` says can be done next: its count(), and for each of them
/// isHem(), angleToSet(), obstacle(), gaugeDistance(), handlingForTime(), unhandiness() and chosen(). Every
/// operation is done once; bit i of a set is operation i.
template <class Operations>
class ShortestSequence {
public:
    /// `inset` is how far the gauge moves back to press a hem.
    ShortestSequence(Operations& operations, const CostModel& cost, Length displayStep, Length inset);
    Found run();

private:
    /// Node number: (made × operations + last) × 4 + placement; the start is its own number.
    using Node = std::uint32_t;
    static constexpr std::int64_t unreached = std::numeric_limits<std::int64_t>::max();

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
        std::size_t operation = 0;
        std::size_t placement = 0;
        Length folding; ///< gauge setting
        Length leaving; ///< the same after a hem is pressed
        std::int64_t least = 0;
    };

    [[nodiscard]] Made madeOf(Node node) const { return static_cast<Made>(node / 4 / count_); }
    [[nodiscard]] std::size_t lastOf(Node node) const { return node / 4 % count_; }
    [[nodiscard]] Node nodeOf(Made made, std::size_t last, std::size_t placement) const
    {
        return static_cast<Node>((made * count_ + last) * 4 + placement);
    }
    void statesAt(Made made);
    void movesFrom(Made made);
    void settle(Made made);
    [[nodiscard]] std::vector<Chosen> sequenceTo(Node node) const;
    void addAlternatives(Node furthest);

    Operations& operations_;
    const CostModel& cost_;
    Length displayStep_, inset_;
    std::size_t count_;
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

template <class Operations>
ShortestSequence<Operations>::ShortestSequence(Operations& operations, const CostModel& cost,
                                               Length displayStep, Length inset)
    : operations_(operations), cost_(cost), displayStep_(displayStep), inset_(inset),
      count_(operations.count()), all_((Made{1} << count_) - 1),
      start_(static_cast<Node>((std::size_t{1} << count_) * count_ * 4)), best_(start_ + 1, unreached),
      from_(start_ + 1, start_), setting_(start_ + 1)
{
    found_.reached.assign(std::size_t{1} << count_, false);
    for (std::size_t i = 0; i < count_; ++i) {
        std::size_t group = 0;
        while (std::abs(operations.angleToSet(group) - operations.angleToSet(i)) > 1e-6)
            ++group;
        angleGroup_.push_back(group);
    }
    for (std::size_t from = 0; from < 4; ++from)
        for (std::size_t to = 0; to < 4; ++to) {
            move_[from][to] = cost.move(allPlacements[from], allPlacements[to]) * perMillisecond;
            widest_ = std::max(widest_, move_[from][to]);
        }
    widest_ += (cost.times().gaugeChange + cost.times().angleChange) * perMillisecond;
}

template <class Operations>
void ShortestSequence<Operations>::statesAt(Made made)
{
    states_.clear();
    std::int64_t least = unreached;
    for (std::size_t last = 0; last < count_; ++last) {
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

template <class Operations>
void ShortestSequence<Operations>::movesFrom(Made made)
{
    next_.clear();
    for (std::size_t operation = 0; operation < count_; ++operation) {
        if ((made >> operation & 1U) != 0U)
            continue;
        const bool hem = operations_.isHem(operation);
        for (std::size_t p = 0; p < 4; ++p) {
            const Placement placement = allPlacements[p];
            if (operations_.obstacle(made, operation, placement))
                continue;
            const Length exact = operations_.gaugeDistance(made, operation, placement);
            const Length folding = roundToNearest(exact, displayStep_);
            const std::int64_t extra =
                cost_.handling(operations_.handlingForTime(made, operation, placement));
            next_.push_back(
                {operation, p, folding, hem ? roundToNearest(exact + inset_, displayStep_) : folding,
                 (cost_.leastStep(hem) + extra) * perMillisecond + operations_.unhandiness(made, operation)});
        }
    }
}

template <class Operations>
void ShortestSequence<Operations>::settle(Made made)
{
    movesFrom(made);
    const std::int64_t gauge = cost_.times().gaugeChange * perMillisecond;
    const std::int64_t angle = cost_.times().angleChange * perMillisecond;
    for (const Next& next : next_) {
        const Node node = nodeOf(made | Made{1} << next.operation, next.operation, next.placement);
        setting_[node] = next.leaving;
        if (made == 0)
            best_[node] = next.least + gauge + angle;
        for (const State& state : states_) {
            const std::int64_t total = state.soFar + next.least + move_[state.placement][next.placement] +
                                       (state.setting != next.folding ? gauge : 0) +
                                       (state.angle != angleGroup_[next.operation] ? angle : 0);
            if (total < best_[node]) {
                best_[node] = total;
                from_[node] = state.node;
            }
        }
    }
}

template <class Operations>
std::vector<Chosen> ShortestSequence<Operations>::sequenceTo(Node node) const
{
    std::vector<Chosen> steps;
    for (; node != start_; node = from_[node]) {
        const Made before = madeOf(node) & ~(Made{1} << lastOf(node));
        steps.push_back(operations_.chosen(before, lastOf(node), allPlacements[node % 4]));
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

template <class Operations>
void ShortestSequence<Operations>::addAlternatives(Node furthest)
{
    const int most = furthest == start_ ? 0 : std::popcount(madeOf(furthest));
    for (Made made = 1; made < all_ && found_.alternatives.size() < mostAlternatives; ++made) {
        if (std::popcount(made) != most || !found_.reached[made] || made == madeOf(furthest))
            continue;
        statesAt(made);
        const auto cheapest = std::min_element(
            states_.begin(), states_.end(), [](const State& a, const State& b) { return a.soFar < b.soFar; });
        found_.alternatives.push_back(sequenceTo(cheapest->node));
    }
}

template <class Operations>
Found ShortestSequence<Operations>::run()
{
    Node furthest = start_;
    best_[start_] = 0;
    for (Made made = 0; made <= all_; ++made) { // a set of bends comes after all its subsets
        statesAt(made);
        if (made != 0 && states_.empty())
            continue;
        found_.reached[made] = true;
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
    if (!found_.complete)
        addAlternatives(furthest);
    found_.milliseconds = best_[furthest] / perMillisecond;
    return std::move(found_);
}

} // namespace lapwright::fold
