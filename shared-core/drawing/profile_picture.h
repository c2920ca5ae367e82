#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "trim/profile.h"

#include <optional>
#include <string>

namespace lapwright::drawing {

/// Which of a bend's two angles is written beside it.
enum class AngleShown {
    Fold,    ///< how far the bend turns from flat
    Included ///< the angle between its legs
};

/// What a picture of a profile shows beside the profile itself.
struct ProfilePicture {
    Length thickness;
    std::string metal; ///< "Galvanised steel, 26 ga"; may be empty
    Colour colour;
    std::string colourName; ///< may be empty
    std::optional<Length> girth;
    Style style;
    AngleShown angles = AngleShown::Fold;
    /// With title, facts, scale and notes around the section. A screen that says them beside the picture
    /// leaves them out: then the section is as large as its labels leave room for.
    bool framed = true;
    Length width = Length::millimetres(150);
    Length height = Length::millimetres(115);
    /// Paper per metal; the largest that fits if not given, one that is usual on paper where framed.
    std::optional<double> scale;
};

/// The profile in section, true to scale: the sheet (drawn thicker than it is where it would be a hair line,
/// and then the picture says so), the coloured face as a dotted band in its own colour, every leg's outside
/// length, every bend's angle with the angle itself, the hems drawn open, both edges named, girth and scale.
/// No label stands on a line or another label. Precondition: bends.size() + 1 == legs.size(), legs not empty.
[[nodiscard]] DisplayList profilePicture(const trim::Profile& profile, const ProfilePicture& picture);

} // namespace lapwright::drawing
