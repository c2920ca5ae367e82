#pragma once

#include "drawing/geometry.h"

#include <optional>
#include <vector>

/// Lines and polygons cut to a window.
namespace lapwright::drawing {

/// The part of a closed polygon inside the window; empty if there is none. Of a polygon that is not convex
/// the parts may hang together by edges on the window's rim.
[[nodiscard]] std::vector<Point> clipped(const std::vector<Point>& polygon, const Rectangle& window);
/// The part of a segment inside the window.
[[nodiscard]] std::optional<Segment> clipped(const Segment& segment, const Rectangle& window);

/// A line beside another at `distance` to the left as the axes lie (towards `quarter` of its direction), its
/// corners mitred. Where it would run closer to the line than that (inside of a narrow bend) it is left out.
[[nodiscard]] std::vector<Point> beside(const std::vector<Point>& line, double distance);

} // namespace lapwright::drawing
