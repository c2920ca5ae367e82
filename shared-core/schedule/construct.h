#pragma once

#include "schedule/timing.h"

#include <vector>

/// Schedules made in one go, from a rule that says what comes before what.
namespace lapwright::schedule {

/// Tasks are taken in the order given, those of cutting first; each goes to the end of the machine that has
/// it done first, setups counted. Pinned starts are put where they keep their moments. Precondition: `order`
/// holds every task once.
[[nodiscard]] Sequences inOrder(Timing& timing, const std::vector<std::size_t>& order);

/// As they arrived: the order of the problem.
[[nodiscard]] std::vector<std::size_t> arrivalOrder(const Problem& problem);
/// Least work first.
[[nodiscard]] std::vector<std::size_t> shortestOrder(const Problem& problem);
/// What is due first, then the heavier weight; what feeds it likewise.
[[nodiscard]] std::vector<std::size_t> dueOrder(const Problem& problem);
/// Johnson's rule as a rule of thumb: lots with less cutting than folding first, by growing cutting; then by
/// falling folding.
[[nodiscard]] std::vector<std::size_t> twoStageOrder(const Problem& problem);
/// `order` with tasks of the same fitting gathered at the first of them, and those of the same setting
/// within.
[[nodiscard]] std::vector<std::size_t> gathered(const Problem& problem,
                                                const std::vector<std::size_t>& order);

/// A person pinned the task to a moment or behind another.
[[nodiscard]] bool standsByPin(const Problem& problem, std::size_t task);
/// Puts the tasks of a stage that stand by pins into sequences that hold all its others.
void addPinned(Timing& timing, Stage stage, Sequences& sequences);

/// Setups made by these sequences.
[[nodiscard]] Setups setupsOf(const Timing& timing, const Sequences& sequences);

} // namespace lapwright::schedule
