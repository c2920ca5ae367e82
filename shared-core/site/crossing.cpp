#include "site/crossing.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace lapwright::site {

namespace {

struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// A run in the turned coordinates of the sweep, left end first.
struct Segment {
    Point left;
    Point right;
    std::size_t run = 0;
};

/// Seen from this direction, runs along the axes or the diagonals are neither upright nor level.
Point turned(const PlanVector& point)
{
    constexpr double cosine = 0.74, sine = 0.672606868832; // of about 42.27°
    const double east = inMetres(point.east), north = inMetres(point.north);
    return {cosine * east - sine * north, sine * east + cosine * north};
}

std::vector<Segment> segmentsOf(const std::vector<PlanVector>& points)
{
    std::vector<Segment> segments;
    for (std::size_t run = 0; run + 1 < points.size(); ++run) {
        if (points[run] == points[run + 1])
            continue;
        Segment segment{turned(points[run]), turned(points[run + 1]), run};
        const Point &start = segment.left, &end = segment.right;
        if (end.x < start.x || (end.x == start.x && end.y < start.y))
            std::swap(segment.left, segment.right);
        segments.push_back(segment);
    }
    return segments;
}

double heightAt(const Segment& segment, double x)
{
    if (x <= segment.left.x)
        return segment.left.y;
    if (x >= segment.right.x)
        return segment.right.y;
    const double share = (x - segment.left.x) / (segment.right.x - segment.left.x);
    return segment.left.y + share * (segment.right.y - segment.left.y);
}

double distanceToSegment(Point point, const Segment& segment)
{
    const double dx = segment.right.x - segment.left.x, dy = segment.right.y - segment.left.y;
    const double along =
        ((point.x - segment.left.x) * dx + (point.y - segment.left.y) * dy) / (dx * dx + dy * dy);
    const double share = std::clamp(along, 0.0, 1.0);
    return std::hypot(point.x - segment.left.x - share * dx, point.y - segment.left.y - share * dy);
}

double side(const Segment& segment, Point point)
{
    return (segment.right.x - segment.left.x) * (point.y - segment.left.y) -
           (segment.right.y - segment.left.y) * (point.x - segment.left.x);
}

bool meet(const Segment& first, const Segment& second)
{
    const bool straddles = side(first, second.left) * side(first, second.right) < 0.0 &&
                           side(second, first.left) * side(second, first.right) < 0.0;
    if (straddles)
        return true;
    const double limit = inMetres(touching);
    return distanceToSegment(first.left, second) <= limit ||
           distanceToSegment(first.right, second) <= limit ||
           distanceToSegment(second.left, first) <= limit || distanceToSegment(second.right, first) <= limit;
}

/// Which of two runs lies lower where both are under the sweep line. The same everywhere until two cross,
/// which is when the sweep stops.
struct Lower {
    const std::vector<Segment>* segments;

    bool operator()(std::size_t left, std::size_t right) const
    {
        const Segment &first = (*segments)[left], &second = (*segments)[right];
        for (const double x :
             {std::max(first.left.x, second.left.x), std::min(first.right.x, second.right.x)}) {
            const double one = heightAt(first, x), other = heightAt(second, x);
            if (one != other)
                return one < other;
        }
        return left < right;
    }
};

class Sweep {
public:
    Sweep(const std::vector<Segment>& segments, bool closed)
        : segments_(segments), closed_(closed), active_(Lower{&segments_}), places_(segments.size())
    {
    }

    /// Either adds a segment to those under the line or takes it away; true once two meet.
    bool add(std::size_t segment)
    {
        const auto [place, added] = active_.insert(segment);
        places_[segment] = place;
        return (place != active_.begin() && meets(*std::prev(place), segment)) ||
               (std::next(place) != active_.end() && meets(segment, *std::next(place)));
    }
    bool remove(std::size_t segment)
    {
        const auto place = places_[segment];
        const bool between = place != active_.begin() && std::next(place) != active_.end();
        const bool found = between && meets(*std::prev(place), *std::next(place));
        active_.erase(place);
        return found;
    }
    [[nodiscard]] const SelfCrossing& crossing() const { return crossing_; }

private:
    [[nodiscard]] bool neighbours(std::size_t left, std::size_t right) const
    {
        const auto [first, second] = std::minmax(left, right);
        return second - first == 1 || (closed_ && first == 0 && second + 1 == segments_.size());
    }
    bool meets(std::size_t left, std::size_t right)
    {
        if (neighbours(left, right) || !meet(segments_[left], segments_[right]))
            return false;
        const auto [first, second] = std::minmax(segments_[left].run, segments_[right].run);
        crossing_ = {first, second};
        return true;
    }

    const std::vector<Segment>& segments_;
    bool closed_;
    std::set<std::size_t, Lower> active_;
    std::vector<std::set<std::size_t, Lower>::iterator> places_;
    SelfCrossing crossing_;
};

struct Event {
    double x = 0.0;
    bool leaves = false;
    std::size_t segment = 0;
};

std::vector<Event> eventsOf(const std::vector<Segment>& segments)
{
    std::vector<Event> events;
    events.reserve(2 * segments.size());
    for (std::size_t index = 0; index < segments.size(); ++index) {
        events.push_back({segments[index].left.x, false, index});
        events.push_back({segments[index].right.x, true, index});
    }
    // Runs enter before others leave at the same place: those that only touch there are seen together.
    std::sort(events.begin(), events.end(), [](const Event& left, const Event& right) {
        if (left.x != right.x)
            return left.x < right.x;
        if (left.leaves != right.leaves)
            return right.leaves;
        return left.segment < right.segment;
    });
    return events;
}

/// Two neighbours of which one lies on the other: the far end of the shorter is on the longer.
bool doubledBack(const Segment& one, const Segment& other)
{
    const auto same = [](Point left, Point right) { return left.x == right.x && left.y == right.y; };
    const bool joinedLeft = same(one.left, other.left), joinedRight = same(one.right, other.right);
    if (!joinedLeft && !joinedRight)
        return false;
    if (joinedLeft && joinedRight)
        return true;
    const Point oneFar = joinedLeft ? one.right : one.left, otherFar = joinedLeft ? other.right : other.left;
    const double limit = inMetres(touching);
    return distanceToSegment(oneFar, other) <= limit || distanceToSegment(otherFar, one) <= limit;
}

std::optional<SelfCrossing> findDoubledBack(const std::vector<Segment>& segments, bool closed)
{
    for (std::size_t index = 0; index + 1 < segments.size(); ++index)
        if (doubledBack(segments[index], segments[index + 1]))
            return SelfCrossing{segments[index].run, segments[index + 1].run};
    if (closed && segments.size() > 2 && doubledBack(segments.back(), segments.front()))
        return SelfCrossing{segments.front().run, segments.back().run};
    return std::nullopt;
}

} // namespace

std::optional<SelfCrossing> findSelfCrossing(const std::vector<PlanVector>& points, bool closed)
{
    const std::vector<Segment> segments = segmentsOf(points);
    if (const auto doubled = findDoubledBack(segments, closed))
        return doubled;
    Sweep sweep(segments, closed);
    for (const Event& event : eventsOf(segments))
        if (event.leaves ? sweep.remove(event.segment) : sweep.add(event.segment))
            return sweep.crossing();
    return std::nullopt;
}

} // namespace lapwright::site
