#include "fold/contact.h"
#include "fold/turning.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

namespace {

/// Sheets that lie on each other at the start, as far as numbers go.
constexpr double alreadyTouching = 1e-6;

/// What reaches how far from the pole.
struct Ring {
    double nearest = 0.0;
    double farthest = 0.0;

    [[nodiscard]] bool meets(const Ring& other, double gap) const
    {
        return nearest <= other.farthest + gap && other.nearest <= farthest + gap;
    }
};

struct Line {
    std::vector<Vector> corners;
    std::vector<Ring> segments;
};

Line about(Vector pole, const std::vector<Vector>& points)
{
    Line line;
    for (const Vector point : points)
        line.corners.push_back(point - pole);
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        line.segments.push_back({std::sqrt(squaredDistanceTo(line.corners[i], line.corners[i + 1])),
                                 std::max(lengthOf(line.corners[i]), lengthOf(line.corners[i + 1]))});
    return line;
}

/// Brings the corner to `gap` from the segment: onto either of its sides or round its ends.
void cornerNearEdge(Vector corner, Vector a, Vector b, double gap, double sign, FirstContact& first)
{
    const Vector along = b - a;
    const double length = lengthOf(along);
    if (length <= 0.0)
        return cornerOntoCircle(corner, a, gap, sign, first);
    if (squaredDistanceTo(a - corner, b - corner) < (gap - alreadyTouching) * (gap - alreadyTouching))
        return first.consider(0.0);
    const Vector out = (gap / length) * Vector{-along.y, along.x};
    cornerOntoEdge(corner, a + out, b + out, sign, first);
    cornerOntoEdge(corner, a - out, b - out, sign, first);
    cornerOntoCircle(corner, a, gap, sign, first);
    cornerOntoCircle(corner, b, gap, sign, first);
}

} // namespace

std::optional<double> sheetContact(const std::vector<Vector>& turning, const std::vector<Vector>& standing,
                                   Vector pole, double radians, double gap)
{
    const double sign = radians < 0.0 ? -1.0 : 1.0;
    FirstContact first(std::abs(radians));
    const Line moving = about(pole, turning), fixed = about(pole, standing);
    for (std::size_t i = 0; i < moving.segments.size(); ++i)
        for (std::size_t k = 0; k < fixed.segments.size(); ++k) {
            if ((i == 0 && k == 0) || !moving.segments[i].meets(fixed.segments[k], gap))
                continue;
            for (const std::size_t corner : {i, i + 1})
                cornerNearEdge(moving.corners[corner], fixed.corners[k], fixed.corners[k + 1], gap, sign,
                               first);
            for (const std::size_t corner : {k, k + 1})
                cornerNearEdge(fixed.corners[corner], moving.corners[i], moving.corners[i + 1], gap, -sign,
                               first);
        }
    return first.turn();
}

} // namespace lapwright::fold
