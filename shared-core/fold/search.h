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

/// A* over (bends made, last bend, end to the gauge, face up). The estimate is the sum of what each bend left
/// takes at least, one move if a bend left needs the other face or end, and one change for each angle left
/// that is not set; no move or fold lowers it by more than it costs, so the first sequence taken out is the
/// cheapest.
[[nodiscard]] Found search(StepChecker& steps, const CostModel& cost, Length displayStep, Length inset);

/// The tie-breaker of one step: hems first, then from the edges inwards. Lower is better; below 64.
[[nodiscard]] std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line);

} // namespace lapwright::fold
