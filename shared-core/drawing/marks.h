#pragma once

#include "drawing/display_list.h"

#include <optional>
#include <string>
#include <vector>

/// Small things that several pictures share.
namespace lapwright::drawing {

[[nodiscard]] Path line(Role role, Point from, Point to, double width = 0.25, Dash dash = Dash::Solid);
/// A line with a filled head at `to`.
void addArrow(std::vector<Shape>& onto, Role role, Point from, Point to, double width, double head);
[[nodiscard]] Path box(Role role, const Rectangle& rectangle, std::optional<Stroke> stroke,
                       std::optional<Fill> fill);
[[nodiscard]] Text words(Role role, std::string text, Point at, double size, Anchor anchor = Anchor::Start,
                         bool bold = false);

/// The shape where another page takes it: made `scale` times as large, its page's corner at `corner`.
[[nodiscard]] Shape placed(Shape shape, Point corner, double scale = 1.0);

/// The largest scale (paper per real) of the usual ones, 5:1 to 1:10 000, at which `width` × `height` real
/// millimetres fit into `room`.
[[nodiscard]] double usualScale(double width, double height, const Rectangle& room);
/// All of them, largest first.
[[nodiscard]] const std::vector<double>& usualScales();
/// "1:2", "5:1".
[[nodiscard]] std::string scaleName(double scale);

/// A bar of a round length with that length beside it, at most `most` paper millimetres long, its left end at
/// `at`. Inches and feet or millimetres and metres.
void addScaleBar(std::vector<Shape>& onto, Point at, double scale, double most, bool metric);

} // namespace lapwright::drawing
