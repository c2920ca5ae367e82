#include "drawing/geometry.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

double norm(Point value)
{
    return std::hypot(value.x, value.y);
}

Point unit(Point value)
{
    return value * (1.0 / norm(value));
}

Point direction(double radians)
{
    return {std::cos(radians), std::sin(radians)};
}

Rectangle bounds(const std::vector<Point>& points)
{
    Rectangle box{points.front().x, points.front().y, points.front().x, points.front().y};
    for (const Point& point : points) {
        box.left = std::min(box.left, point.x);
        box.right = std::max(box.right, point.x);
        box.top = std::min(box.top, point.y);
        box.bottom = std::max(box.bottom, point.y);
    }
    return box;
}

namespace {

/// Unit vector along the box. Nearly all boxes are level: no trigonometry for them.
Point axisOf(const Box& box)
{
    return box.rotation == 0.0 ? Point{1.0, 0.0} : direction(box.rotation);
}

} // namespace

std::array<Point, 4> Box::corners() const
{
    const Point along = axisOf(*this) * halfWidth;
    const Point up = quarter(axisOf(*this)) * halfHeight;
    return {centre - along - up, centre + along - up, centre + along + up, centre - along + up};
}

Rectangle Box::bounds() const
{
    const Point along = axisOf(*this);
    const double halfX = halfWidth * std::abs(along.x) + halfHeight * std::abs(along.y);
    const double halfY = halfWidth * std::abs(along.y) + halfHeight * std::abs(along.x);
    return {centre.x - halfX, centre.y - halfY, centre.x + halfX, centre.y + halfY};
}

Box Box::grown(double by) const
{
    return {centre, halfWidth + by, halfHeight + by, rotation};
}

namespace {

/// Half the extent of the box along a unit vector.
double reach(const Box& box, Point axis)
{
    const Point along = axisOf(box);
    return box.halfWidth * std::abs(dot(along, axis)) + box.halfHeight * std::abs(dot(quarter(along), axis));
}

bool apart(const Box& left, const Box& right, Point axis)
{
    return std::abs(dot(right.centre - left.centre, axis)) >= reach(left, axis) + reach(right, axis);
}

} // namespace

bool overlap(const Box& left, const Box& right)
{
    for (const Point axis : {axisOf(left), axisOf(right)}) {
        if (apart(left, right, axis) || apart(left, right, quarter(axis)))
            return false;
    }
    return true;
}

bool overlap(const Segment& segment, const Box& box)
{
    const Point half = 0.5 * (segment.to - segment.from);
    const Point off = between(segment.from, segment.to, 0.5) - box.centre;
    const Point along = axisOf(box);
    for (const Point axis : {along, quarter(along), quarter(half)})
        if (std::abs(dot(off, axis)) >= reach(box, axis) + std::abs(dot(half, axis)) && axis != Point())
            return false;
    return true;
}

bool intersect(const Segment& left, const Segment& right)
{
    const Point along = left.to - left.from, across = right.to - right.from;
    const double before = cross(along, right.from - left.from), after = cross(along, right.to - left.from);
    const double start = cross(across, left.from - right.from), end = cross(across, left.to - right.from);
    return before * after <= 0.0 && start * end <= 0.0 &&
           !(before == 0.0 && after == 0.0 && start == 0.0 && end == 0.0);
}

double distance(Point point, const Segment& segment)
{
    const Point step = segment.to - segment.from;
    const double square = dot(step, step);
    const double share = square > 0.0 ? std::clamp(dot(point - segment.from, step) / square, 0.0, 1.0) : 0.0;
    return norm(point - between(segment.from, segment.to, share));
}

} // namespace lapwright::drawing
