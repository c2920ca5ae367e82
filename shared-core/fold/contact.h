#pragma once

#include "fold/section.h"

#include <optional>
#include <vector>

/// Exact contact of a moving polyline with fixed edges. Millimetres and radians.
namespace lapwright::fold {

struct Edge {
    Vector a;
    Vector b;
};
using Edges = std::vector<Edge>;

/// The outline's edges moved outwards by `clearance`. Edges on y = 0, which the sheet lies on, are moved
/// inwards by `give` instead.
[[nodiscard]] Edges keepOut(const Outline& outline, double clearance, double give);

[[nodiscard]] Edges moved(Edges edges, Vector by);

/// Smallest turn (in the direction and up to the size of `radians`) about `pole` at which the polyline from
/// points[first] on meets an edge. Both ways in which two segments can first meet are solved in closed form:
/// a corner of the one runs on an arc into the other. Precondition: no contact at the start.
[[nodiscard]] std::optional<double> turningContact(const std::vector<Vector>& points, std::size_t first,
                                                   const Edges& edges, Vector pole, double radians);

/// Whether the polyline, moved along `by` in a straight line, meets an edge anywhere on the way.
/// Precondition: no contact at the end of the way.
[[nodiscard]] bool slidingContact(const std::vector<Vector>& points, std::size_t first, const Edges& edges,
                                  Vector by);

/// How deep the polyline's parts stand inside the closed outline `edges`: the largest distance from a point
/// of it inside to the nearest edge; points are taken every `spacing`. 0 if none is inside.
[[nodiscard]] double depthInside(const std::vector<Vector>& points, std::size_t first, const Edges& edges,
                                 double spacing);

} // namespace lapwright::fold
