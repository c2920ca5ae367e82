#pragma once

#include "drawing/display_list.h"

namespace lapwright::drawing {

/// The two colours of a role.
struct Ink {
    Colour line;
    Colour fill;
};

/// Colours for paper: dark lines on white, and every pair of neighbours differs in grey as well.
[[nodiscard]] Ink paperInk(Role role);

/// Contrast of two colours, 1 to 21, as WCAG 2.1 defines it.
[[nodiscard]] double contrastOf(Colour one, Colour other);

/// Black or white, whichever stands out more on `ground` (relative luminance as WCAG 2.1 defines it).
[[nodiscard]] Colour contrasting(Colour ground);

} // namespace lapwright::drawing
