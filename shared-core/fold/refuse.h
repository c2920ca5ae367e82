#pragma once

#include "fold/search.h"
#include "metal/metal.h"

#include <optional>

namespace lapwright::fold {

/// What holds for every sequence: bending length, capacity, and a bend that no placement allows.
[[nodiscard]] std::optional<Refusal> refusedAlways(const Blank& blank, const metal::Metal& metal,
                                                   const metal::Sheet& sheet, const Machine& machine,
                                                   Length pieceLength, const Settings& settings);

/// The reason after the whole search: of the sequence that got furthest, the bend left that is nearest to
/// being possible, and what is in its way.
[[nodiscard]] Refusal refusalFrom(StepChecker& steps, const Found& found, const Machine& machine,
                                  std::size_t face);

} // namespace lapwright::fold
