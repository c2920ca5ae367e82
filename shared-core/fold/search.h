#pragma once

#include "fold/cost.h"
#include "fold/reach.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::fold {

/// How much of its bend a step makes.
enum class Go { Whole, First, Second };

/// One fold of a sequence.
struct Chosen {
    std::size_t line = 0;
    Placement placement;
    Go go = Go::Whole;
    double angle = 0.0; ///< radians, what the bend is left at
    double angleToSet = 0.0;
    Length gaugeDistance;
    Touching touching = Touching::Edge;
    Handling handling;
};

/// The cheapest sequence that makes every bend.
struct Found {
    std::vector<Chosen> steps;
    std::int64_t milliseconds = 0;
};

/// Shortest path over (bends made, last bend, end to the gauge, face up). Every step makes one bend more, so
/// the states are settled in the order of the bends made, each once. A state is left out only if the piece
/// cannot be finished from there, or another one with the same bends made is cheaper by more than any move
/// and change of gauge and angle can cost. None if no sequence makes every bend.
[[nodiscard]] std::optional<Found> search(Reach& reach, const CostModel& cost, Length displayStep,
                                          Length inset);

/// One fold of a bend in one go. Precondition: nothing stands in its way.
[[nodiscard]] Chosen chosenOf(StepChecker& steps, Made made, std::size_t line, Placement placement);

/// The tie-breaker of one step: hems first, then from the edges inwards. Lower is better; below 64.
[[nodiscard]] std::int64_t unhandiness(const Blank& blank, Made made, std::size_t line);

} // namespace lapwright::fold
