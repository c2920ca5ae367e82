#pragma once

#include "site/run.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lapwright::site {

/// A square corner that turns left, walking with the building on the left: interior angle 90°.
struct SquareOutside {
    friend bool operator==(SquareOutside, SquareOutside) = default;
};
/// A square corner that turns right: interior angle 270°.
struct SquareInside {
    friend bool operator==(SquareInside, SquareInside) = default;
};
/// An interior angle read off an instrument or a drawing. 180° where two runs go on in one line.
struct InteriorAngle {
    Angle angle;
    std::string entered;

    friend bool operator==(const InteriorAngle&, const InteriorAngle&) = default;
};
/// Two sides from the corner and the diagonal between their ends, all by tape. The triangle gives an angle
/// under 180°; `inside` says that the building takes the rest of the full turn.
struct TapedTriangle {
    Measured before;
    Measured after;
    Measured diagonal;
    bool inside = false;

    friend bool operator==(const TapedTriangle&, const TapedTriangle&) = default;
};

/// A corner as the person gave it.
using Corner = std::variant<SquareOutside, SquareInside, InteriorAngle, TapedTriangle>;

/// A chimney or other thing standing in a roof plane.
struct Obstacle {
    /// Parallel to the ridge; the length of the chain's headwall if not given.
    std::optional<Measured> width;
    /// A cricket (saddle) stands on its upper side; nothing if nobody said.
    std::optional<bool> cricket;

    friend bool operator==(const Obstacle&, const Obstacle&) = default;
};

/// Runs met end to end, walked with the building on the left: counter-clockwise seen from above.
struct Chain {
    /// Unique in the job.
    std::string id;
    std::string name;
    bool closed = false;
    std::vector<Run> runs;
    /// corners[i] stands between runs[i] and runs[i + 1]; a closed chain has one more, back to runs[0].
    /// Size: runs.size() - 1 if open, runs.size() if closed.
    std::vector<Corner> corners;
    /// Bearing of the first run, counter-clockwise from east.
    Angle firstBearing;
    /// What the chain goes round, where that is no house.
    std::optional<Obstacle> obstacle;

    friend bool operator==(const Chain&, const Chain&) = default;
};

} // namespace lapwright::site
