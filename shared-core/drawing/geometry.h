#pragma once

#include <array>
#include <vector>

/// Plane geometry on the page; doubles are millimetres on paper.
namespace lapwright::drawing {

struct Point {
    double x = 0.0;
    double y = 0.0;

    friend bool operator==(const Point&, const Point&) = default;
    friend constexpr Point operator+(Point left, Point right) { return {left.x + right.x, left.y + right.y}; }
    friend constexpr Point operator-(Point left, Point right) { return {left.x - right.x, left.y - right.y}; }
    friend constexpr Point operator*(Point value, double factor)
    {
        return {value.x * factor, value.y * factor};
    }
    friend constexpr Point operator*(double factor, Point value) { return value * factor; }
};

[[nodiscard]] constexpr double dot(Point left, Point right)
{
    return left.x * right.x + left.y * right.y;
}
[[nodiscard]] constexpr double cross(Point left, Point right)
{
    return left.x * right.y - left.y * right.x;
}
[[nodiscard]] double norm(Point value);
/// Precondition: not the zero vector.
[[nodiscard]] Point unit(Point value);
/// A quarter turn from +x towards +y.
[[nodiscard]] constexpr Point quarter(Point value)
{
    return {-value.y, value.x};
}
[[nodiscard]] Point direction(double radians);
[[nodiscard]] constexpr Point between(Point from, Point to, double share)
{
    return from + share * (to - from);
}

struct Segment {
    Point from;
    Point to;
};

/// Axis-parallel rectangle.
struct Rectangle {
    double left = 0.0;
    double top = 0.0;
    double right = 0.0;
    double bottom = 0.0;

    [[nodiscard]] constexpr double width() const { return right - left; }
    [[nodiscard]] constexpr double height() const { return bottom - top; }
    [[nodiscard]] constexpr Point centre() const { return {(left + right) / 2.0, (top + bottom) / 2.0}; }
    [[nodiscard]] constexpr Rectangle grown(double by) const
    {
        return {left - by, top - by, right + by, bottom + by};
    }
    [[nodiscard]] constexpr bool contains(Rectangle inner) const
    {
        return inner.left >= left && inner.right <= right && inner.top >= top && inner.bottom <= bottom;
    }
};

/// Smallest rectangle about the points. Precondition: at least one point.
[[nodiscard]] Rectangle bounds(const std::vector<Point>& points);

/// A rectangle that may be turned: what a line of text covers.
struct Box {
    Point centre;
    double halfWidth = 0.0;
    double halfHeight = 0.0;
    double rotation = 0.0; ///< radians from +x towards +y of the page

    [[nodiscard]] std::array<Point, 4> corners() const;
    [[nodiscard]] Rectangle bounds() const;
    [[nodiscard]] Box grown(double by) const;
};

/// Boxes that share more than an edge, by the separating axes of both.
[[nodiscard]] bool overlap(const Box& left, const Box& right);
/// The segment runs through the inside of the box or ends there.
[[nodiscard]] bool overlap(const Segment& segment, const Box& box);
[[nodiscard]] bool intersect(const Segment& left, const Segment& right);
[[nodiscard]] double distance(Point point, const Segment& segment);

} // namespace lapwright::drawing
