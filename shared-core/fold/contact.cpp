#include "fold/contact.h"

#include "fold/turning.h"
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

bool properlyCross(Vector a, Vector b, Vector c, Vector d)
{
    const double abc = cross(b - a, c - a), abd = cross(b - a, d - a);
    const double cda = cross(d - c, a - c), cdb = cross(d - c, b - c);
    return ((abc > 0.0 && abd < 0.0) || (abc < 0.0 && abd > 0.0)) &&
           ((cda > 0.0 && cdb < 0.0) || (cda < 0.0 && cdb > 0.0));
}

Bounds boundsOf(const std::vector<Vector>& points, std::size_t first)
{
    Bounds bounds;
    for (std::size_t i = first; i < points.size(); ++i)
        bounds.take(points[i]);
    return bounds;
}

Barrier keepOut(const Outline& outline, double clearance, double give)
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
    Barrier barrier;
    for (std::size_t i = 0; i < grown.size(); ++i) {
        barrier.edges.push_back({grown[i], grown[(i + 1) % grown.size()]});
        barrier.bounds.take(grown[i]);
    }
    return barrier;
}

Barrier moved(Barrier barrier, Vector by)
{
    for (Edge& edge : barrier.edges)
        edge = {edge.a + by, edge.b + by};
    barrier.bounds = {barrier.bounds.least + by, barrier.bounds.most + by};
    return barrier;
}

TurningBarrier::TurningBarrier(const Barrier& barrier, Vector pole, double sense) : pole_(pole), sense_(sense)
{
    nearest_ = std::numeric_limits<double>::infinity();
    for (const Edge& edge : barrier.edges) {
        Side side{edge.a - pole, edge.b - pole, 0.0, 0.0};
        side.nearest = squaredDistanceTo(side.a, side.b);
        side.farthest = std::max(dot(side.a, side.a), dot(side.b, side.b));
        nearest_ = std::min(nearest_, side.nearest);
        farthest_ = std::max(farthest_, side.farthest);
        sides_.push_back(side);
    }
    for (std::size_t ring = 0; ring < leastAngles_.size(); ++ring)
        leastAngles_[ring] = leastAngleBeyond(ringRadius(ring));
}

/// The least angle of what lies further from the pole than `radius`.
double TurningBarrier::leastAngleBeyond(double radius) const
{
    double least = std::numeric_limits<double>::infinity();
    const auto take = [&](Vector at) {
        if (dot(at, at) < radius * radius * (1.0 - 1e-9))
            return;
        const double angle = std::atan2(sense_ * at.y, at.x);
        least = std::min(least, angle < -std::numbers::pi / 3.0 ? angle + 2.0 * std::numbers::pi : angle);
    };
    for (const Side& side : sides_) {
        take(side.a);
        const Vector along = side.b - side.a;
        const double squared = dot(along, along), half = dot(side.a, along);
        const double root = half * half - squared * (dot(side.a, side.a) - radius * radius);
        for (const double branch : {-1.0, 1.0})
            if (const double at = (-half + branch * std::sqrt(std::max(root, 0.0))) / squared;
                root >= 0.0 && at >= 0.0 && at <= 1.0)
                take(side.a + at * along);
    }
    return least;
}

bool TurningBarrier::outOfReach(double nearest, double largestAngle, double turn) const
{
    std::size_t ring = leastAngles_.size();
    while (ring > 0 && ringRadius(ring - 1) > nearest)
        --ring;
    return ring > 0 && largestAngle + std::abs(turn) < leastAngles_[ring - 1];
}

std::optional<double> TurningBarrier::contact(const std::vector<Vector>& points, std::size_t first,
                                              double radians) const
{
    const double sign = radians < 0.0 ? -1.0 : 1.0;
    FirstContact contact(std::abs(radians));
    for (std::size_t i = first; i < points.size(); ++i) {
        const Vector corner = points[i] - pole_;
        const double squared = dot(corner, corner);
        const bool last = i + 1 == points.size();
        const Vector next = last ? corner : points[i + 1] - pole_;
        const double near = last ? squared : squaredDistanceTo(corner, next);
        const double far = last ? squared : std::max(squared, dot(next, next));
        if (near > farthest_ || far < nearest_)
            continue;
        for (const Side& side : sides_) {
            if (side.nearest <= squared && squared <= side.farthest)
                cornerOntoEdge(corner, side.a, side.b, sign, contact);
            const double standing = dot(side.a, side.a);
            if (near <= standing && standing <= far && !last)
                cornerOntoEdge(side.a, corner, next, -sign, contact);
        }
    }
    return contact.turn();
}

bool slidingContact(const std::vector<Vector>& points, std::size_t first, const Bounds& bounds,
                    const Barrier& barrier, Vector by)
{
    Bounds swept = bounds;
    swept.take(swept.least + by);
    swept.take(swept.most + by);
    if (!swept.meets(barrier.bounds))
        return false;
    for (std::size_t i = first; i < points.size(); ++i) {
        const bool last = i + 1 == points.size();
        const Vector from = points[i], to = last ? from : points[i + 1];
        Bounds part;
        for (const Vector corner : {from, to, from + by, to + by})
            part.take(corner);
        if (!part.meets(barrier.bounds))
            continue;
        for (const Edge& edge : barrier.edges) {
            if (std::max(edge.a.x, edge.b.x) < part.least.x || std::min(edge.a.x, edge.b.x) > part.most.x ||
                std::max(edge.a.y, edge.b.y) < part.least.y || std::min(edge.a.y, edge.b.y) > part.most.y)
                continue;
            if (properlyCross(from, from + by, edge.a, edge.b) ||
                (!last &&
                 (properlyCross(from, to, edge.a, edge.b) || properlyCross(edge.a, edge.a - by, from, to))))
                return true;
        }
    }
    return false;
}

bool standsIn(const std::vector<Vector>& points, std::size_t first, const Bounds& bounds,
              const Barrier& barrier)
{
    if (!bounds.meets(barrier.bounds))
        return false;
    for (std::size_t i = first; i < points.size(); ++i) {
        if (inside(points[i], barrier.edges))
            return true;
        if (i + 1 < points.size() &&
            std::any_of(barrier.edges.begin(), barrier.edges.end(), [&](const Edge& edge) {
                return properlyCross(points[i], points[i + 1], edge.a, edge.b);
            }))
            return true;
    }
    return false;
}

double depthInside(const std::vector<Vector>& points, std::size_t first, const Barrier& barrier,
                   double spacing)
{
    double deepest = 0.0;
    for (std::size_t i = first; i + 1 < points.size(); ++i) {
        Bounds part;
        part.take(points[i]);
        part.take(points[i + 1]);
        if (!part.meets(barrier.bounds))
            continue;
        const Vector along = points[i + 1] - points[i];
        const int pieces = std::max(1, static_cast<int>(std::ceil(lengthOf(along) / spacing)));
        for (int piece = 0; piece <= pieces; ++piece) {
            const Vector point = points[i] + (static_cast<double>(piece) / pieces) * along;
            if (!inside(point, barrier.edges))
                continue;
            double nearest = std::numeric_limits<double>::infinity();
            for (const Edge& edge : barrier.edges)
                nearest = std::min(nearest, distanceToEdge(point, edge));
            deepest = std::max(deepest, nearest);
        }
    }
    return deepest;
}

} // namespace lapwright::fold
