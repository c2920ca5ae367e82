#pragma once

#include "drawing/display_list.h"
#include "print/sheet.h"

/// Sizes and inks of type on paper.
namespace lapwright::print {

/// Em sizes in millimetres: what is read at arm's length, and what stands beside it.
inline constexpr double titleSize = 6.0;
inline constexpr double headingSize = 4.4;
inline constexpr double bodySize = 3.4;
inline constexpr double smallSize = 2.7;

/// From the top of a line's room to its base.
inline constexpr double firstBaseInEm = 0.98;

[[nodiscard]] constexpr drawing::Role roleOf(Tone tone)
{
    switch (tone) {
    case Tone::Faint:
        return drawing::Role::Note;
    case Tone::Caution:
        return drawing::Role::Caution;
    case Tone::Plain:
    case Tone::Strong:
        break;
    }
    return drawing::Role::Label;
}

} // namespace lapwright::print
