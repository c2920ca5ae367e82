#pragma once

#include "drawing/palette.h"

namespace lapwright::paint {

/// What a picture lies on.
enum class Ground {
    Paper,       ///< as drawing::paperInk() has it
    Dark,        ///< light lines on a dark screen
    HighContrast ///< for sunlight: every line at least 7:1 on white (WCAG 2.1, 1.4.6)
};

/// The colour of the page itself.
[[nodiscard]] drawing::Colour pageColour(Ground ground);

/// The colours of a role on that ground. Real colours (of paint, of metal) that a shape names itself are
/// never changed.
[[nodiscard]] drawing::Ink inkOn(Ground ground, drawing::Role role);

} // namespace lapwright::paint
