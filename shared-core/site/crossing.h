#pragma once

#include "site/bearing.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lapwright::site {

/// Two runs of a chain that meet elsewhere than at their corner.
struct SelfCrossing {
    std::size_t first = 0;
    std::size_t second = 0; ///< first < second

    friend bool operator==(const SelfCrossing&, const SelfCrossing&) = default;
};

/// Runs closer than this touch.
inline constexpr Length touching = Length::micrometres(1);

/// A pair of runs that cross or touch without being neighbours on the chain, or neighbours of which one
/// doubles back on the other, if there is such a pair; which one of several is not promised. `points` as in
/// Plan: run i from points[i] to points[i + 1]. Runs without extent in plan do not count, and their
/// neighbours are neighbours of one another. In a closed chain the last run and the first are neighbours.
/// Sweep along a line (Shamos and Hoey 1976): n log n.
[[nodiscard]] std::optional<SelfCrossing> findSelfCrossing(const std::vector<PlanVector>& points,
                                                           bool closed);

} // namespace lapwright::site
