#pragma once

#include "fold/section.h"
#include "fold/turning.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

/// Exact contact of a moving polyline with fixed edges. Millimetres and radians.
namespace lapwright::fold {

struct Edge {
    Vector a;
    Vector b;
};
using Edges = std::vector<Edge>;

/// Whether a to b and c to d cross, more than by touching.
[[nodiscard]] bool properlyCross(Vector a, Vector b, Vector c, Vector d);

/// Upright box about what has been taken in.
struct Bounds {
    Vector least{1e300, 1e300};
    Vector most{-1e300, -1e300};

    void take(Vector point)
    {
        least = {std::min(least.x, point.x), std::min(least.y, point.y)};
        most = {std::max(most.x, point.x), std::max(most.y, point.y)};
    }
    [[nodiscard]] bool meets(const Bounds& other) const
    {
        return least.x <= other.most.x && other.least.x <= most.x && least.y <= other.most.y &&
               other.least.y <= most.y;
    }
};
[[nodiscard]] Bounds boundsOf(const std::vector<Vector>& points, std::size_t first);

/// A closed outline that the middle of the sheet may not enter.
struct Barrier {
    Edges edges;
    Bounds bounds;
};

/// The outline's edges moved outwards by `clearance`. Edges on y = 0, which the sheet lies on, are moved
/// inwards by `give` instead.
[[nodiscard]] Barrier keepOut(const Outline& outline, double clearance, double give);

[[nodiscard]] Barrier moved(Barrier barrier, Vector by);

/// A barrier seen from the point that something turns about, with what each edge reaches from it.
class TurningBarrier {
public:
    /// `sense` +1 for what turns up, −1 for what turns down.
    TurningBarrier(const Barrier& barrier, Vector pole, double sense);

    /// Whether nothing of it can be met by what is no nearer to the pole than `nearest` and nowhere further
    /// round than `largestAngle` (largestAngle()), turning by `turn`. A quick answer: no says nothing.
    [[nodiscard]] bool outOfReach(double nearest, double largestAngle, double turn) const;

    /// Smallest turn (in the direction and up to the size of `radians`) at which the polyline from
    /// points[first] on meets an edge; less than half a turn. Both ways in which two segments can first meet
    /// are solved in closed form: a corner of the one runs on an arc into the other. Precondition: no contact
    /// at the start.
    [[nodiscard]] std::optional<double> contact(const std::vector<Vector>& points, std::size_t first,
                                                double radians) const;

private:
    struct Side {
        Vector a;
        Vector b;
        double nearest = 0.0; ///< squared distances from the pole
        double farthest = 0.0;
    };

    [[nodiscard]] double leastAngleBeyond(double radius) const;
    static double ringRadius(std::size_t ring)
    {
        return closeToPole * static_cast<double>(std::size_t{1} << ring);
    }

    Vector pole_;
    double sense_;
    std::array<double, 7> leastAngles_{}; ///< beyond each ring's radius
    std::vector<Side> sides_;
    double nearest_ = 0.0;
    double farthest_ = 0.0;
};

/// Whether the polyline, moved along `by` in a straight line, meets an edge anywhere on the way.
/// Precondition: no contact at the end of the way. `bounds` are boundsOf(points, first), here and below.
[[nodiscard]] bool slidingContact(const std::vector<Vector>& points, std::size_t first, const Bounds& bounds,
                                  const Barrier& barrier, Vector by);

/// Whether any of the polyline is inside or on the barrier.
[[nodiscard]] bool standsIn(const std::vector<Vector>& points, std::size_t first, const Bounds& bounds,
                            const Barrier& barrier);

/// How deep the polyline's parts stand inside the closed outline: the largest distance from a point of it
/// inside to the nearest edge; points are taken every `spacing`. 0 if none is inside.
[[nodiscard]] double depthInside(const std::vector<Vector>& points, std::size_t first, const Barrier& barrier,
                                 double spacing);

/// Smallest turn of a part in front about `pole` at which its middle comes closer than `gap` to the middle of
/// the part behind; exact, the standing and the turning corners against each other's segments. The segments
/// at index 0 adjoin the bend and are not held against each other.
[[nodiscard]] std::optional<double> sheetContact(const std::vector<Vector>& turning,
                                                 const std::vector<Vector>& standing, Vector pole,
                                                 double radians, double gap);

} // namespace lapwright::fold
