#pragma once

#include "fold/section.h"

/// What a point meets that turns about the origin.
namespace lapwright::fold {

/// Squared distance from the origin to the segment.
[[nodiscard]] double squaredDistanceTo(Vector a, Vector b);

/// Smallest turn of `corner` about the origin, in the sense of `sign` (+1, −1) and at most `most`, that takes
/// it onto the segment from a to b; infinity if there is none.
[[nodiscard]] double cornerOntoEdge(Vector corner, Vector a, Vector b, double sign, double most);

/// The same onto the circle of `radius` about `centre`, from outside of it.
[[nodiscard]] double cornerOntoCircle(Vector corner, Vector centre, double radius, double sign, double most);

} // namespace lapwright::fold
