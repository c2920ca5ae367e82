#pragma once

#include "drawing/display_list.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::field {

/// A colour people order trim in, by a plain name.
struct NamedColour {
    std::string_view name;
    drawing::Colour colour;
};

/// The colours offered; a shop's own name may be typed instead. The shades are ours: a sample of the coil
/// decides.
[[nodiscard]] const std::vector<NamedColour>& offeredColours();

/// The colour of that name in any case; a mid grey if it is not known.
[[nodiscard]] drawing::Colour colourNamed(const std::string& name);

} // namespace lapwright::field
