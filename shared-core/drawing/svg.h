#pragma once

#include "drawing/display_list.h"

#include <string>

namespace lapwright::drawing {

/// The picture as an SVG 1.1 document, true to size: one user unit is one millimetre. The same list always
/// gives the same bytes. Text is escaped and made harmless (text.h); the font is DejaVu Sans with any
/// sans-serif as fallback; title and description come first, for screen readers.
[[nodiscard]] std::string toSvg(const DisplayList& list);

} // namespace lapwright::drawing
