#pragma once

#include "fold/planner.h"

#include <string>
#include <vector>

namespace lapwright::fold {

/// What a plan really makes, derived again from its steps alone.
struct PlanCheck {
    Feasibility feasibility;
    /// Largest difference between a leg or hem the exact gauge distances make and the profile's.
    Length largestLegError;
    /// The same with the distances as set on the machine's display.
    Length largestLegErrorAsSet;
    Angle largestAngleError;
    std::vector<std::string> problems; ///< empty if the plan holds
};

/// Folds the blank again step by step, on its own code path: the section is traced whole from edge to edge,
/// placed, and sampled every degree and every millimetre against the machine's outlines as they are in the
/// file (the planner works with outlines grown by the clearance and exact arcs). The legs are derived from
/// the gauge distances. Errors as planFold.
[[nodiscard]] Result<PlanCheck> checkPlan(const trim::Profile& profile, const trim::FlatPattern& flat,
                                          const metal::Metal& metal, const metal::Sheet& sheet,
                                          const Machine& machine, const FoldPlan& plan, Length pieceLength,
                                          const Settings& settings);

/// A finished profile's legs and angles may be off by this: what a folded part is measured to.
inline constexpr Length legTolerance = Length::thousandths(1);
inline constexpr Angle angleTolerance = Angle::degrees(0.01);

} // namespace lapwright::fold
