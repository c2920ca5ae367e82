#pragma once

#include "site/derived.h"
#include "site/hip_valley.h"
#include "site/run.h"

#include <optional>

/// The length of a run that counts, and the level distance under it.
namespace lapwright::site {

/// The measure that counts. Nothing if the run was not measured or `counts` names no entry.
[[nodiscard]] std::optional<Length> measuredLength(const Run& run);

/// The length that the roof drawing gives, from `levelRun`: along the slope for rake and sidewall; along the
/// crease over the common run for hip and valley. Nothing for other kinds, or while a slope it needs is
/// missing.
[[nodiscard]] std::optional<Derived<Length>> derivedLength(const Run& run);

/// What is ordered: the measure that counts, else the derived length. Nothing while there is neither.
[[nodiscard]] std::optional<Derived<Length>> effectiveLength(const Run& run);

/// The crease of a hip or valley, square over the eaves where no plan corner is given. Nothing for other
/// kinds, or while a slope is missing or level.
[[nodiscard]] std::optional<Crease> creaseOf(const Run& run);

/// Plan length per unit of length: 1 for level runs, cos of its own slope for sloped ones, 0 for upright
/// ones. Nothing while a slope it needs is missing.
[[nodiscard]] std::optional<double> planRatio(const Run& run);

} // namespace lapwright::site
