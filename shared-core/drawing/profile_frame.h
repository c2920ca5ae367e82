#pragma once

#include "drawing/geometry.h"
#include "drawing/profile_picture.h"

#include <string>
#include <vector>

/// What stands around a section on its page: title, facts and colour above it, scale and notes below.
namespace lapwright::drawing {

struct ProfileFrame {
    const std::string& name;
    const ProfilePicture& picture;
    Rectangle page;
    double scale = 1.0;
    bool drawnThicker = false;        ///< than the metal is at this scale
    bool drawnLonger = false;         ///< the shortest parts are
    std::vector<std::string> leftOut; ///< labels that found no room
};

/// The part of the page that is left for the section and its labels.
[[nodiscard]] Rectangle fieldOf(const Rectangle& page, bool framed);

/// Nothing but the notes that have to be said where the picture is not framed.
void addProfileFrame(const ProfileFrame& frame, std::vector<Shape>& onto);

} // namespace lapwright::drawing
