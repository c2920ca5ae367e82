#pragma once

#include "fold/section.h"

#include <limits>
#include <optional>
#include <vector>

/// What turns about the origin, and what it meets first. Millimetres and radians; `sign` is the sense of the
/// turn, +1 or −1.
namespace lapwright::fold {

/// The smallest turn found so far, under a most that is less than half a turn.
class FirstContact {
public:
    explicit FirstContact(double most) : most_(most), cosine_(std::cos(most)) {}

    /// Takes the turn from direction `from` to direction `to`, two vectors of one length.
    void consider(Vector from, Vector to, double sign)
    {
        // Most are out of reach, which their products tell without an angle.
        if (sign * cross(from, to) >= 0.0 && dot(from, to) >= cosine_ * dot(from, from))
            consider(std::abs(std::atan2(cross(from, to), dot(from, to))));
    }
    void consider(double turn)
    {
        if (turn > most_)
            return;
        most_ = turn;
        cosine_ = std::cos(turn);
        found_ = true;
    }
    [[nodiscard]] std::optional<double> turn() const { return found_ ? std::optional(most_) : std::nullopt; }

private:
    double most_;
    double cosine_;
    bool found_ = false;
};

/// `corner` turning onto the segment from a to b.
void cornerOntoEdge(Vector corner, Vector a, Vector b, double sign, FirstContact& first);
/// `corner` turning onto the circle of `radius` about `centre`, from outside of it.
void cornerOntoCircle(Vector corner, Vector centre, double radius, double sign, FirstContact& first);

/// Squared distance from the origin to the segment.
[[nodiscard]] double squaredDistanceTo(Vector a, Vector b);

/// Quick answers by angles are not for what is nearer to the pole than this.
inline constexpr double closeToPole = 4.0;
/// The largest angle about the pole of any point that is not close to it, from +x towards +y, in (−π/2, π];
/// `sense` −1 measures towards −y. Infinity if one lies straight below the pole or behind that.
[[nodiscard]] double largestAngle(const std::vector<Vector>& points, Vector pole, double sense);

} // namespace lapwright::fold
