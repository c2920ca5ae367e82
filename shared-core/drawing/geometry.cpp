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

std::array<Point, 4> Box::corners() const
{
    const Point along = direction(rotation) * halfWidth;
    const Point up = quarter(direction(rotation)) * halfHeight;
    return {centre - along - up, centre + along - up, centre + along + up, centre - along + up};
}

Rectangle Box::bounds() const
{
    const std::array<Point, 4> all = corners();
    return drawing::bounds({all.begin(), all.end()});
}

Box Box::grown(double by) const
{
    return {centre, halfWidth + by, halfHeight + by, rotation};
}

namespace {

/// Half the extent of the box along a unit vector.
double reach(const Box& box, Point axis)
{
    const Point along = direction(box.rotation);
    return box.halfWidth * std::abs(dot(along, axis)) + box.halfHeight * std::abs(dot(quarter(along), axis));
}

bool apart(const Box& left, const Box& right, Point axis)
{
    return std::abs(dot(right.centre - left.centre, axis)) >= reach(left, axis) + reach(right, axis);
}

} // namespace

bool overlap(const Box& left, const Box& right)
{
    for (const double rotation : {left.rotation, right.rotation}) {
        const Point axis = direction(rotation);
        if (apart(left, right, axis) || apart(left, right, quarter(axis)))
            return false;
    }
    return true;
}

bool overlap(const Segment& segment, const Box& box)
{
    const Point step = segment.to - segment.from;
    const Box thin{between(segment.from, segment.to, 0.5), norm(step) / 2.0, 0.0, std::atan2(step.y, step.x)};
    return overlap(thin, box);
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
