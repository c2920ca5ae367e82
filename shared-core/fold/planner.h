#pragma once

#include "fold/machine.h"
#include "fold/plan.h"
#include "fold/settings.h"
#include "metal/metal.h"
#include "trim/girth.h"
#include "trim/profile.h"

#include <vector>

namespace lapwright::fold {

/// The fold steps of least handling time that `machine` can make `profile` with, or why there are none.
/// A* over (bends made, last bend, end to the gauge, face up); ties go to hems first and outside in.
/// `flat` is trim::flatPattern of the same profile, metal and sheet. Errors: a flat that does not belong to
/// the profile, a metal without modulus or strength, a length that is not positive, settings out of
/// their limits.
[[nodiscard]] Result<Outcome> planFold(const trim::Profile& profile, const trim::FlatPattern& flat,
                                       const metal::Metal& metal, const metal::Sheet& sheet,
                                       const Machine& machine, Length pieceLength, const Settings& settings);

/// Whether planFold finds a plan with every bend in one go; false for what it has errors for. Much quicker:
/// neither the cheapest plan nor a reason is looked for.
[[nodiscard]] bool canBeFolded(const trim::Profile& profile, const trim::FlatPattern& flat,
                               const metal::Metal& metal, const metal::Sheet& sheet, const Machine& machine,
                               Length pieceLength, const Settings& settings);

/// The outcome on one machine; `machine` is an index in the list given.
struct MachineOutcome {
    std::size_t machine = 0;
    Outcome outcome;
};

/// Plans the profile on every machine: those that can make it first, least handling time first (ties: order
/// of the list), then the refusals in the order of the list, each saying which machine can.
[[nodiscard]] Result<std::vector<MachineOutcome>>
chooseMachine(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Metal& metal,
              const metal::Sheet& sheet, const std::vector<Machine>& machines, Length pieceLength,
              const Settings& settings);

} // namespace lapwright::fold
