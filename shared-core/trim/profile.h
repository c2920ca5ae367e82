#pragma once

#include "measure/angle.h"
#include "measure/length.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::trim {

/// A side of the profile's path, looking along it.
enum class Side { Left, Right };

[[nodiscard]] constexpr Side opposite(Side side)
{
    return side == Side::Left ? Side::Right : Side::Left;
}

/// A flat part. `length` is outside length: to the mould-line apex on the outside of each adjoining bend, or
/// to the outer edge of a hem.
struct Leg {
    std::string name;
    Length length;

    friend bool operator==(const Leg&, const Leg&) = default;
};

/// The line between two legs. `turn` is signed: + counter-clockwise (to the left of the path), − clockwise;
/// |turn| < 180°.
struct Bend {
    Angle turn;
    Length insideRadius;

    friend bool operator==(const Bend&, const Bend&) = default;
};

enum class HemKind { Closed, Open, Teardrop };

/// An edge folded back on itself. `flat` is the width of the part folded back, outside length; it comes to
/// lie on `side` of the path. `insideRadius` is that of the 180° bend: 0 closed, half the gap open, its own
/// teardrop.
struct Hem {
    HemKind kind = HemKind::Closed;
    Length flat;
    Side side = Side::Left;
    Length insideRadius;

    friend bool operator==(const Hem&, const Hem&) = default;
};

/// A resolved cross-section: a path through the section (x out of the building, y up) from its inner or upper
/// edge to its outer or lower edge. bends[i] stands between legs[i] and legs[i + 1]; bends.size() + 1 ==
/// legs.size().
struct Profile {
    std::string trim; ///< id of the template, or "free"
    std::string name;
    std::vector<Leg> legs;
    std::vector<Bend> bends;
    std::optional<Hem> startHem;
    std::optional<Hem> endHem;
    Side colourFace = Side::Left;
    /// Direction of the first leg in the section, counter-clockwise from x.
    Angle firstDirection;
    /// Where the path starts, from the measured line (section axes).
    Length startX;
    Length startY;

    friend bool operator==(const Profile&, const Profile&) = default;
};

} // namespace lapwright::trim
