#pragma once

#include "fold/planner.h"

namespace lapwright::fold {

/// Adds to a refusal what would help on the same machine, each found by planning it: another beam face, open
/// or closed hems or none, a thinner gauge, shorter pieces, two pieces joined in a leg.
void suggest(Refusal& refusal, const trim::Profile& profile, const metal::Metal& metal,
             const metal::Sheet& sheet, const Machine& machine, Length pieceLength, const Settings& settings);

/// Adds to each refusal the machine that makes the profile with the least handling, if one does.
void suggestMachines(std::vector<MachineOutcome>& outcomes, const std::vector<Machine>& machines);

} // namespace lapwright::fold
