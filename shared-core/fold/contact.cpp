#include "fold/contact.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

constexpr double onThePlane = 1e-6;

struct Line {
    Vector point;
    Vector direction;
};

double signedArea(const std::vector<Vector>& corners)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < corners.size(); ++i)
        sum += cross(corners[i], corners[(i + 1) % corners.size()]);
    return sum;
}

/// The turn, in the sense of `sign`, from direction `from` to direction `to`, in [0, 2π).
double turnBetween(Vector from, Vector to, double sign)
{
    const double angle = sign * std::atan2(cross(from, to), dot(from, to));
    return angle < 0.0 ? angle + 2.0 * std::numbers::pi : angle;
}

/// Smallest turn of corner `corner` about the pole (in the sense of `sign`, at most `most`) onto the edge.
/// With `backwards`, it is the edge that turns and the corner that stands.
double cornerOntoEdge(Vector corner, Vector a, Vector b, double sign, double most)
{
    const Vector along = b - a;
    const double squared = dot(along, along);
    if (squared <= 0.0)
        return std::numeric_limits<double>::infinity();
    const double half = dot(a, along);
    const double root = half * half - squared * (dot(a, a) - dot(corner, corner));
    double least = std::numeric_limits<double>::infinity();
    if (root < 0.0)
        return least;
    for (const double branch : {-1.0, 1.0}) {
        const double at = (-half + branch * std::sqrt(root)) / squared;
        if (at < 0.0 || at > 1.0)
            continue;
        const double turn = turnBetween(corner, a + at * along, sign);
        if (turn <= most)
            least = std::min(least, turn);
    }
    return least;
}

bool properlyCross(Vector a, Vector b, Vector c, Vector d)
{
    const double abc = cross(b - a, c - a), abd = cross(b - a, d - a);
    const double cda = cross(d - c, a - c), cdb = cross(d - c, b - c);
    return ((abc > 0.0 && abd < 0.0) || (abc < 0.0 && abd > 0.0)) &&
           ((cda > 0.0 && cdb < 0.0) || (cda < 0.0 && cdb > 0.0));
}

double distanceToEdge(Vector point, const Edge& edge)
{
    const Vector along = edge.b - edge.a;
    const double squared = dot(along, along);
    const double at = squared > 0.0 ? std::clamp(dot(point - edge.a, along) / squared, 0.0, 1.0) : 0.0;
    return lengthOf(point - (edge.a + at * along));
}

bool inside(Vector point, const Edges& edges)
{
    bool in = false;
    for (const Edge& edge : edges)
        if ((edge.a.y > point.y) != (edge.b.y > point.y) &&
            point.x < edge.a.x + (edge.b.x - edge.a.x) * (point.y - edge.a.y) / (edge.b.y - edge.a.y))
            in = !in;
    return in;
}

} // namespace

Edges keepOut(const Outline& outline, double clearance, double give)
{
    std::vector<Vector> corners;
    for (const Point& point : outline)
        corners.push_back({inMillimetres(point.x), inMillimetres(point.y)});
    if (signedArea(corners) < 0.0)
        std::reverse(corners.begin(), corners.end());
    std::vector<Line> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vector a = corners[i], b = corners[(i + 1) % corners.size()];
        const Vector along = (1.0 / lengthOf(b - a)) * (b - a);
        const bool carriesSheet = std::abs(a.y) < onThePlane && std::abs(b.y) < onThePlane;
        const double out = carriesSheet ? -give : clearance;
        sides.push_back({a + out * Vector{along.y, -along.x}, along});
    }
    std::vector<Vector> grown;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const Line& before = sides[(i + sides.size() - 1) % sides.size()];
        const Line& after = sides[i];
        const double sine = cross(before.direction, after.direction);
        const Vector corner = corners[i];
        const auto foot = [corner](const Line& side) {
            return side.point + dot(corner - side.point, side.direction) * side.direction;
        };
        if (std::abs(sine) > 0.2) { // a sharper corner is cut square instead of running to a spike
            const double at = cross(after.point - before.point, after.direction) / sine;
            grown.push_back(before.point + at * before.direction);
        } else {
            grown.push_back(foot(before));
            grown.push_back(foot(after));
        }
    }
    Edges edges;
    for (std::size_t i = 0; i < grown.size(); ++i)
        edges.push_back({grown[i], grown[(i + 1) % grown.size()]});
    return edges;
}

Edges moved(Edges edges, Vector by)
{
    for (Edge& edge : edges)
        edge = {edge.a + by, edge.b + by};
    return edges;
}

std::optional<double> turningContact(const std::vector<Vector>& points, std::size_t first, const Edges& edges,
                                     Vector pole, double radians)
{
    const double sign = radians < 0.0 ? -1.0 : 1.0;
    double most = std::abs(radians);
    bool found = false;
    const auto keep = [&](double turn) {
        if (turn <= most) {
            most = turn;
            found = true;
        }
    };
    double reach = 0.0;
    for (std::size_t i = first; i < points.size(); ++i)
        reach = std::max(reach, lengthOf(points[i] - pole));
    for (const Edge& edge : edges) {
        const Vector a = edge.a - pole, b = edge.b - pole;
        if (distanceToEdge(pole, edge) > reach)
            continue;
        for (std::size_t i = first; i < points.size(); ++i) {
            const Vector corner = points[i] - pole;
            keep(cornerOntoEdge(corner, a, b, sign, most));
            if (i + 1 < points.size())
                keep(cornerOntoEdge(a, corner, points[i + 1] - pole, -sign, most));
        }
    }
    return found ? std::optional(most) : std::nullopt;
}

bool slidingContact(const std::vector<Vector>& points, std::size_t first, const Edges& edges, Vector by)
{
    for (const Edge& edge : edges) {
        for (std::size_t i = first; i < points.size(); ++i) {
            if (properlyCross(points[i], points[i] + by, edge.a, edge.b))
                return true;
            if (i + 1 < points.size() && (properlyCross(points[i], points[i + 1], edge.a, edge.b) ||
                                          properlyCross(edge.a, edge.a - by, points[i], points[i + 1])))
                return true;
        }
    }
    return false;
}

double depthInside(const std::vector<Vector>& points, std::size_t first, const Edges& edges, double spacing)
{
    double deepest = 0.0;
    for (std::size_t i = first; i + 1 < points.size(); ++i) {
        const Vector along = points[i + 1] - points[i];
        const int pieces = std::max(1, static_cast<int>(std::ceil(lengthOf(along) / spacing)));
        for (int piece = 0; piece <= pieces; ++piece) {
            const Vector point = points[i] + (static_cast<double>(piece) / pieces) * along;
            if (!inside(point, edges))
                continue;
            double nearest = std::numeric_limits<double>::infinity();
            for (const Edge& edge : edges)
                nearest = std::min(nearest, distanceToEdge(point, edge));
            deepest = std::max(deepest, nearest);
        }
    }
    return deepest;
}

} // namespace lapwright::fold
