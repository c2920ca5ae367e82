#pragma once

#include "fold/cost.h"
#include "fold/search.h"
#include "measure/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

namespace lapwright::fold {

/// Room for the tie-breakers of a whole sequence below one millisecond.
inline constexpr std::int64_t perMillisecond = 1'024;

/// The search itself, over whatever `Operations` says can be done next: its count(), whether a set of them
/// leadsOn() to all, and for each of them isHem(), angleToSet(), obstacle(), gaugeDistance(),
/// handlingForTime(), unhandiness() and chosen(). Every operation is done once; bit i of a set is operation
/// i.
template <class Operations>
class ShortestSequence {
public:
    /// `inset` is how far the gauge moves back to press a hem.
    ShortestSequence(Operations& operations, const CostModel& cost, Length displayStep, Length inset);
    /// None if no sequence does all operations.
    [[nodiscard]] std::optional<Found> run();

private:
    /// The machine as an operation leaves it, and the least that it has taken to come so far.
    struct State {
        std::int64_t soFar = 0;
        Length setting; ///< of the gauge
        std::uint32_t from = 0;
        std::uint8_t operation = 0;
        std::uint8_t placement = 0;
        std::uint8_t angle = 0; ///< group
    };
    static constexpr std::uint32_t fromTheStart = std::numeric_limits<std::uint32_t>::max();

    void settle(Made made);
    void take(Made before, std::size_t operation, std::size_t placement);
    void leaveOut(std::size_t first);
    [[nodiscard]] std::vector<Chosen> sequenceTo(std::uint32_t state) const;

    Operations& operations_;
    const CostModel& cost_;
    Length displayStep_, inset_;
    std::size_t count_;
    Made all_;
    std::int64_t gauge_, angle_;
    std::array<std::array<std::int64_t, 4>, 4> move_{};
    std::int64_t widest_ = 0; ///< dearest move with both changes
    std::vector<std::uint8_t> angleGroup_;
    std::vector<State> states_;        ///< set by set
    std::vector<std::uint32_t> first_; ///< where each set's states start
};

template <class Operations>
ShortestSequence<Operations>::ShortestSequence(Operations& operations, const CostModel& cost,
                                               Length displayStep, Length inset)
    : operations_(operations), cost_(cost), displayStep_(displayStep), inset_(inset),
      count_(operations.count()), all_((Made{1} << count_) - 1),
      gauge_(cost.times().gaugeChange * perMillisecond), angle_(cost.times().angleChange * perMillisecond)
{
    first_.reserve(std::size_t{all_} + 2);
    for (std::size_t i = 0; i < count_; ++i) {
        std::size_t group = 0;
        while (std::abs(operations.angleToSet(group) - operations.angleToSet(i)) > 1e-6)
            ++group;
        angleGroup_.push_back(static_cast<std::uint8_t>(group));
    }
    for (std::size_t from = 0; from < 4; ++from)
        for (std::size_t to = 0; to < 4; ++to) {
            move_[from][to] = cost.move(allPlacements[from], allPlacements[to]) * perMillisecond;
            widest_ = std::max(widest_, move_[from][to]);
        }
    widest_ += gauge_ + angle_;
}

/// Adds the state that the operation leaves, from the best of the states it can be done in.
template <class Operations>
void ShortestSequence<Operations>::take(Made before, std::size_t operation, std::size_t placement)
{
    const Placement placed = allPlacements[placement];
    if (operations_.obstacle(before, operation, placed))
        return;
    const bool hem = operations_.isHem(operation);
    const Length exact = operations_.gaugeDistance(before, operation, placed);
    const Length folding = roundToNearest(exact, displayStep_);
    State next;
    next.setting = hem ? roundToNearest(exact + inset_, displayStep_) : folding;
    next.from = fromTheStart;
    next.operation = static_cast<std::uint8_t>(operation);
    next.placement = static_cast<std::uint8_t>(placement);
    next.angle = angleGroup_[operation];
    std::int64_t change = gauge_ + angle_;
    if (before != 0) {
        change = std::numeric_limits<std::int64_t>::max();
        for (std::uint32_t i = first_[before]; i < first_[before + 1]; ++i) {
            const State& state = states_[i];
            const std::int64_t total = state.soFar + move_[state.placement][placement] +
                                       (state.setting != folding ? gauge_ : 0) +
                                       (state.angle != next.angle ? angle_ : 0);
            if (total < change) {
                change = total;
                next.from = i;
            }
        }
    }
    const std::int64_t extra = cost_.handling(operations_.handlingForTime(before, operation, placed));
    next.soFar =
        change + (cost_.leastStep(hem) + extra) * perMillisecond + operations_.unhandiness(before, operation);
    states_.push_back(next);
}

/// Drops the states from `first` on that are dearer than another one by more than any move and changes can
/// be: what follows them follows that one as well.
template <class Operations>
void ShortestSequence<Operations>::leaveOut(std::size_t first)
{
    const auto begin = states_.begin() + static_cast<std::ptrdiff_t>(first);
    std::int64_t least = std::numeric_limits<std::int64_t>::max();
    for (auto state = begin; state != states_.end(); ++state)
        least = std::min(least, state->soFar);
    states_.erase(std::remove_if(begin, states_.end(),
                                 [&](const State& state) { return state.soFar > least + widest_; }),
                  states_.end());
}

template <class Operations>
void ShortestSequence<Operations>::settle(Made made)
{
    const std::size_t first = states_.size();
    for (std::size_t operation = 0; operation < count_; ++operation) {
        const Made before = made & ~(Made{1} << operation);
        if (before == made || (before != 0 && first_[before] == first_[before + 1]))
            continue;
        for (std::size_t placement = 0; placement < allPlacements.size(); ++placement)
            take(before, operation, placement);
    }
    leaveOut(first);
}

template <class Operations>
std::vector<Chosen> ShortestSequence<Operations>::sequenceTo(std::uint32_t state) const
{
    std::vector<std::uint32_t> way;
    for (; state != fromTheStart; state = states_[state].from)
        way.push_back(state);
    std::vector<Chosen> steps;
    Made made = 0;
    for (auto each = way.rbegin(); each != way.rend(); ++each) {
        const State& at = states_[*each];
        steps.push_back(operations_.chosen(made, at.operation, allPlacements[at.placement]));
        made |= Made{1} << at.operation;
    }
    return steps;
}

template <class Operations>
std::optional<Found> ShortestSequence<Operations>::run()
{
    first_ = {0, 0};                            // of no bends: no states
    for (Made made = 1; made <= all_; ++made) { // a set of operations comes after all its subsets
        if (operations_.leadsOn(made))
            settle(made);
        first_.push_back(static_cast<std::uint32_t>(states_.size()));
    }
    const auto whole = states_.begin() + static_cast<std::ptrdiff_t>(first_[all_]);
    const auto cheapest = std::min_element(whole, states_.end(),
                                           [](const State& a, const State& b) { return a.soFar < b.soFar; });
    if (cheapest == states_.end())
        return std::nullopt;
    Found found;
    found.milliseconds = cheapest->soFar / perMillisecond;
    found.steps = sequenceTo(static_cast<std::uint32_t>(cheapest - states_.begin()));
    return found;
}

} // namespace lapwright::fold
