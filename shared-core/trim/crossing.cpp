#include "measure/rounding.h"
#include "trim/section.h"
#include "trim/unfolded.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::trim {

namespace {

struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// A straight stretch or chord of the middle plane, with how far along the path it lies.
struct Stretch {
    Point from;
    Point to;
    double start = 0.0;
    double end = 0.0;
};

constexpr Angle checkedChord = Angle::degrees(30.0);

double distanceToStretch(Point point, const Stretch& stretch)
{
    const double dx = stretch.to.x - stretch.from.x, dy = stretch.to.y - stretch.from.y;
    const double squared = dx * dx + dy * dy;
    double share = 0.0;
    if (squared > 0.0)
        share = std::clamp(((point.x - stretch.from.x) * dx + (point.y - stretch.from.y) * dy) / squared, 0.0,
                           1.0);
    return std::hypot(point.x - stretch.from.x - share * dx, point.y - stretch.from.y - share * dy);
}

/// Twice the signed area of a, b, c: which side of ab the point c lies on.
double turnOf(Point a, Point b, Point c)
{
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool intersect(const Stretch& a, const Stretch& b)
{
    return turnOf(a.from, a.to, b.from) * turnOf(a.from, a.to, b.to) < 0.0 &&
           turnOf(b.from, b.to, a.from) * turnOf(b.from, b.to, a.to) < 0.0;
}

bool closerThan(double limit, const Stretch& a, const Stretch& b)
{
    const auto apart = [limit](double a1, double a2, double b1, double b2) {
        return std::min(a1, a2) > std::max(b1, b2) + limit || std::min(b1, b2) > std::max(a1, a2) + limit;
    };
    if (apart(a.from.x, a.to.x, b.from.x, b.to.x) || apart(a.from.y, a.to.y, b.from.y, b.to.y))
        return false;
    return intersect(a, b) || distanceToStretch(a.from, b) < limit || distanceToStretch(a.to, b) < limit ||
           distanceToStretch(b.from, a) < limit || distanceToStretch(b.to, a) < limit;
}

/// `stretch` without `cut` millimetres at its end, or at its start.
Stretch shortened(const Stretch& stretch, double cut, bool atEnd)
{
    const double share = cut / (stretch.end - stretch.start);
    Stretch rest = stretch;
    Point& moved = atEnd ? rest.to : rest.from;
    const Point& other = atEnd ? stretch.from : stretch.to;
    moved.x += share * (other.x - moved.x);
    moved.y += share * (other.y - moved.y);
    return rest;
}

/// Round a bend of any inside radius the middle plane has a radius of at least half the thickness. Points
/// that are no further apart along the path than half the circumference of the circle as wide as the sheet is
/// thick cannot overlap, whatever their distance; points further apart overlap when closer than the
/// thickness.
bool overlap(const Stretch& first, const Stretch& second, double thickness)
{
    const double limit = 0.9 * thickness;
    const double lacking = std::numbers::pi / 2.0 * thickness - (second.start - first.end);
    if (lacking <= 0.0)
        return closerThan(limit, first, second);
    const double cut = lacking / 2.0;
    if (cut >= first.end - first.start || cut >= second.end - second.start)
        return false;
    return closerThan(limit, shortened(first, cut, true), shortened(second, cut, false));
}

std::vector<Stretch> stretchesOf(const Section& section)
{
    std::vector<Stretch> stretches;
    double reached = 0.0;
    for (std::size_t i = 0; i + 1 < section.middle.size(); ++i) {
        const Point from{inMillimetres(section.middle[i].x), inMillimetres(section.middle[i].y)};
        const Point to{inMillimetres(section.middle[i + 1].x), inMillimetres(section.middle[i + 1].y)};
        const double end = reached + std::hypot(to.x - from.x, to.y - from.y);
        stretches.push_back({from, to, reached, end});
        reached = end;
    }
    return stretches;
}

/// The flat that a stretch is, or that its arc follows.
std::vector<std::string> ownersOf(const Section& section, const Unfolded& unfolded)
{
    std::vector<std::string> owners;
    std::size_t flat = 0;
    for (std::size_t i = 0; i + 1 < section.middle.size(); ++i) {
        if (flat + 1 < section.flats.size() && section.middle[i] == section.flats[flat + 1].from)
            ++flat;
        owners.push_back(unfolded.parts[flat].name);
    }
    return owners;
}

} // namespace

Result<std::optional<Crossing>> findCrossing(const Profile& profile, Length thickness)
{
    const Result<Unfolded> unfolded = unfold(profile, thickness);
    if (!unfolded)
        return unfolded.errors();
    const Result<Section> section = sectionOf(profile, thickness, checkedChord);
    if (!section)
        return section.errors();
    const std::vector<Stretch> stretches = stretchesOf(*section);
    for (std::size_t first = 0; first < stretches.size(); ++first)
        for (std::size_t second = first + 2; second < stretches.size(); ++second)
            if (overlap(stretches[first], stretches[second], inMillimetres(thickness))) {
                const std::vector<std::string> owners = ownersOf(*section, *unfolded);
                return std::optional(Crossing{owners[first], owners[second]});
            }
    return std::optional<Crossing>();
}

} // namespace lapwright::trim
