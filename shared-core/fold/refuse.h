#pragma once

#include "fold/reach.h"
#include "metal/metal.h"
#include "trim/profile.h"

#include <optional>
#include <string>

namespace lapwright::fold {

/// The leg's name, or "leg 3" where it has none.
[[nodiscard]] std::string legName(const trim::Profile& profile, std::size_t leg);

/// What holds whatever the sequence and the beam face: bending length, capacity, and a profile that runs
/// through itself.
[[nodiscard]] std::optional<Refusal> refusedAlways(const trim::Profile& profile, const Blank& blank,
                                                   const metal::Metal& metal, const metal::Sheet& sheet,
                                                   const Machine& machine, Length pieceLength);

/// A bend that the machine cannot make even of the flat blank.
[[nodiscard]] std::optional<Refusal> refusedBend(StepChecker& steps, const Machine& machine);

/// The reason where no sequence makes every bend: of those that get furthest, the bend left that is nearest
/// to being possible, and what is in its way.
[[nodiscard]] Refusal refusalFrom(Reach& reach, const Machine& machine, std::size_t face);

} // namespace lapwright::fold
