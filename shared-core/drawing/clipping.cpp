#include "drawing/clipping.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::drawing {

namespace {

/// The half plane inside · normal <= limit.
struct HalfPlane {
    Point normal;
    double limit;

    [[nodiscard]] double outside(Point point) const { return dot(point, normal) - limit; }
};

std::array<HalfPlane, 4> sidesOf(const Rectangle& window)
{
    return {HalfPlane{{-1.0, 0.0}, -window.left}, HalfPlane{{1.0, 0.0}, window.right},
            HalfPlane{{0.0, -1.0}, -window.top}, HalfPlane{{0.0, 1.0}, window.bottom}};
}

/// The line with no two points further apart than half a millimetre, nor in one place: what is left out
/// inside a narrow bend is then no more than has no room there.
std::vector<Point> closeSpaced(const std::vector<Point>& line)
{
    constexpr double step = 0.5;
    std::vector<Point> points;
    for (const Point& point : line) {
        const double length = points.empty() ? 1.0 : norm(point - points.back());
        if (length < 1e-6)
            continue;
        const Point from = points.empty() ? point : points.back();
        const int parts = std::max(1, static_cast<int>(std::ceil(length / step)));
        for (int i = 1; i < parts && !points.empty(); ++i)
            points.push_back(between(from, point, static_cast<double>(i) / parts));
        points.push_back(point);
    }
    return points;
}

} // namespace

std::vector<Point> clipped(const std::vector<Point>& polygon, const Rectangle& window)
{
    std::vector<Point> kept = polygon;
    for (const HalfPlane& side : sidesOf(window)) {
        std::vector<Point> next;
        for (std::size_t i = 0; i < kept.size(); ++i) {
            const Point from = kept[i], to = kept[(i + 1) % kept.size()];
            const double before = side.outside(from), after = side.outside(to);
            if (before <= 0.0)
                next.push_back(from);
            if ((before < 0.0 && after > 0.0) || (before > 0.0 && after < 0.0))
                next.push_back(between(from, to, before / (before - after)));
        }
        kept = std::move(next);
    }
    return kept;
}

std::optional<Segment> clipped(const Segment& segment, const Rectangle& window)
{
    Segment kept = segment;
    for (const HalfPlane& side : sidesOf(window)) {
        const double before = side.outside(kept.from), after = side.outside(kept.to);
        if (before > 0.0 && after > 0.0)
            return std::nullopt;
        if (before > 0.0)
            kept.from = between(kept.from, kept.to, before / (before - after));
        else if (after > 0.0)
            kept.to = between(kept.from, kept.to, before / (before - after));
    }
    return kept;
}

std::vector<Point> beside(const std::vector<Point>& line, double distance)
{
    const std::vector<Point> points = closeSpaced(line);
    std::vector<Point> made;
    for (std::size_t i = 0; i < points.size() && points.size() > 1; ++i) {
        const Point before =
            unit(points[i] - points[i == 0 ? 0 : i - 1] + (i == 0 ? points[1] - points[0] : Point()));
        const Point after = i + 1 < points.size() ? unit(points[i + 1] - points[i]) : before;
        const Point middle = quarter(before) + quarter(after);
        if (norm(middle) < 0.2)
            continue;
        const Point at = points[i] + (distance * 2.0 / dot(middle, middle)) * middle;
        const bool clear = [&] {
            for (std::size_t k = 0; k + 1 < points.size(); ++k)
                if (drawing::distance(at, {points[k], points[k + 1]}) < 0.97 * std::abs(distance))
                    return false;
            return true;
        }();
        if (clear)
            made.push_back(at);
    }
    return made;
}

} // namespace lapwright::drawing
