#pragma once

#include "fold/cost.h"
#include "fold/steps.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::fold {

struct Chosen {
    std::size_t line = 0;
    Placement placement;
};

/// The cheapest sequence, or the one that gets furthest if none makes every bend.
struct Found {
    bool complete = false;
    std::vector<Chosen> steps;
    std::int64_t milliseconds = 0;
    std::int64_t statesSeen = 0;
};

/// Shortest path over (bends made, last bend, end to the gauge, face up). Every step makes one bend more, so
/// the states are settled in the order of the bends made, each once. A state is left out only if another one
/// with the same bends made is cheaper by more than any move and change of gauge and angle can cost.
[[nodiscard]] Found search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset);

/// The tie-breaker of one step: hems first, then from the edges inwards. Lower is better; below 64.
[[nodiscard]] std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line);

} // namespace lapwright::fold
