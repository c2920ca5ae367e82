#include "drawing/section.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::drawing {

namespace {

/// A turn of the middle plane. Straight parts join one arc to the next.
struct Turn {
    Point centre;
    double radius = 0.0;
    Point heading;      ///< path direction before the turn
    double sweep = 0.0; ///< radians, + counter-clockwise (y up)
};

struct MiddlePlane {
    Point start;
    std::vector<Turn> turns;
    Point end;
    Point startHeading;
    Point endHeading;
};

Point turned(Point value, double radians)
{
    return {value.x * std::cos(radians) - value.y * std::sin(radians),
            value.x * std::sin(radians) + value.y * std::cos(radians)};
}

void addArc(const Turn& turn, double radius, std::vector<Point>& line)
{
    const double side = turn.sweep > 0.0 ? 1.0 : -1.0;
    const Point towardsStart = -side * quarter(turn.heading);
    if (radius <= 0.0) {
        // The offset lines cross before the bend: one sharp corner, where they meet.
        const double half = std::min(std::abs(turn.sweep) / 2.0, 1.4);
        line.push_back(turn.centre + (radius / std::cos(half)) * turned(towardsStart, turn.sweep / 2.0));
        return;
    }
    const int steps = std::max(2, static_cast<int>(std::ceil(std::abs(turn.sweep) / 0.2)));
    for (int i = 0; i <= steps; ++i)
        line.push_back(turn.centre + radius * turned(towardsStart, turn.sweep * i / steps));
}

/// The line at `distance` to the left of the middle plane.
std::vector<Point> offset(const MiddlePlane& plane, double distance)
{
    std::vector<Point> line{plane.start + distance * quarter(plane.startHeading)};
    for (const Turn& turn : plane.turns)
        addArc(turn, turn.sweep > 0.0 ? turn.radius - distance : turn.radius + distance, line);
    line.push_back(plane.end + distance * quarter(plane.endHeading));
    return line;
}

std::vector<Point> band(const MiddlePlane& plane, double from, double to)
{
    std::vector<Point> outline = offset(plane, from);
    const std::vector<Point> back = offset(plane, to);
    outline.insert(outline.end(), back.rbegin(), back.rend());
    return outline;
}

double setback(double radius, double turn)
{
    return radius * std::tan(std::min(std::abs(turn) / 2.0, 1.45));
}

/// Everything on paper: what the middle plane of a leg loses to its bends and hems.
class SectionBuilder {
public:
    SectionBuilder(const trim::Profile& profile, const SectionStyle& style)
        : profile_(profile), style_(style),
          thickness_(std::max(style.thickness * style.scale, style.leastThickness))
    {
    }

    Section build()
    {
        section_.drawnThickness = thickness_;
        measureLegs();
        chooseRadii();
        walk();
        const double half = thickness_ / 2.0;
        const double side = profile_.colourFace == trim::Side::Left ? 1.0 : -1.0;
        section_.sheet = band(plane_, half, -half);
        section_.colour = band(plane_, side * half, side * (half + style_.bandWidth));
        section_.colourMiddle = offset(plane_, side * (half + style_.bandWidth / 2.0));
        section_.firstEdge = plane_.start;
        section_.lastEdge = plane_.end;
        return std::move(section_);
    }

private:
    [[nodiscard]] double hemRadius(const trim::Hem& hem) const
    {
        const double gap = style_.hemGap + (hem.side == profile_.colourFace ? 2.0 * style_.bandWidth : 0.0);
        const double own = inMillimetres(hem.insideRadius) * style_.scale;
        return std::max(own, gap / 2.0) + thickness_ / 2.0;
    }

    double atLeast(double length, double least)
    {
        if (length < least)
            section_.trueToScale = false;
        return std::max(length, least);
    }

    /// Middle-plane length of each leg: apex to apex, to the free edge, or to where a hem's arc begins.
    void measureLegs()
    {
        for (std::size_t i = 0; i < profile_.legs.size(); ++i) {
            double length = inMillimetres(profile_.legs[i].length) * style_.scale;
            if (i > 0)
                length -= setback(thickness_ / 2.0, profile_.bends[i - 1].turn.inRadians());
            if (i < profile_.bends.size())
                length -= setback(thickness_ / 2.0, profile_.bends[i].turn.inRadians());
            if (i == 0 && profile_.startHem)
                length -= hemRadius(*profile_.startHem) + thickness_ / 2.0;
            if (i + 1 == profile_.legs.size() && profile_.endHem)
                length -= hemRadius(*profile_.endHem) + thickness_ / 2.0;
            legs_.push_back(atLeast(length, 0.4));
        }
    }

    /// Bends are drawn wide enough for the band to go round inside, where the legs leave room.
    void chooseRadii()
    {
        for (std::size_t i = 0; i < profile_.bends.size(); ++i) {
            const double turn = profile_.bends[i].turn.inRadians();
            const bool bandInside = (turn > 0.0) == (profile_.colourFace == trim::Side::Left);
            const double own = inMillimetres(profile_.bends[i].insideRadius) * style_.scale;
            const double wanted = std::max(own, bandInside ? style_.bandWidth + 0.1 : 0.1) + thickness_ / 2.0;
            const double room = 0.48 * std::min(legs_[i], legs_[i + 1]);
            const double wantedSetback = setback(wanted, turn);
            radii_.push_back(wantedSetback > room ? wanted * room / wantedSetback : wanted);
        }
    }

    void walk()
    {
        Point heading = direction(profile_.firstDirection.inRadians());
        Point at{inMillimetres(profile_.startX) * style_.scale,
                 inMillimetres(profile_.startY) * style_.scale};
        if (profile_.startHem) {
            startHem(*profile_.startHem, at, heading);
        } else {
            plane_.start = at;
            plane_.startHeading = heading;
        }
        for (std::size_t i = 0; i < legs_.size(); ++i) {
            const Point from = at;
            at = at + legs_[i] * heading;
            section_.legs.push_back({measuredLine(i, from, at, heading)});
            if (i < profile_.bends.size())
                heading = bendAt(i, at, heading);
        }
        if (profile_.endHem) {
            endHem(*profile_.endHem, at, heading);
        } else {
            plane_.end = at;
            plane_.endHeading = heading;
        }
    }

    /// The leg's outside length, laid on the face that is outside at its bends where both agree.
    [[nodiscard]] Segment measuredLine(std::size_t leg, Point from, Point to, Point heading) const
    {
        const double half = thickness_ / 2.0;
        const std::optional<double> before =
            leg > 0 ? std::optional(profile_.bends[leg - 1].turn.inRadians()) : std::nullopt;
        const std::optional<double> after =
            leg < profile_.bends.size() ? std::optional(profile_.bends[leg].turn.inRadians()) : std::nullopt;
        Point start = from, end = to;
        if (before)
            start = start - setback(half, *before) * heading;
        if (after)
            end = end + setback(half, *after) * heading;
        if (leg == 0 && profile_.startHem)
            start = start - (hemRadius(*profile_.startHem) + half) * heading;
        if (leg + 1 == legs_.size() && profile_.endHem)
            end = end + (hemRadius(*profile_.endHem) + half) * heading;
        return {start, end};
    }

    Point bendAt(std::size_t index, Point apex, Point heading)
    {
        const double turn = profile_.bends[index].turn.inRadians();
        const Point after = turned(heading, turn);
        const double side = turn > 0.0 ? 1.0 : -1.0;
        const Point bisector = turned(-side * quarter(heading), turn / 2.0);
        const double half = std::min(std::abs(turn) / 2.0, 1.45);
        section_.bends.push_back(
            {apex, apex + (thickness_ / 2.0 / std::cos(half)) * bisector, heading, after});
        const double radius = radii_[index];
        plane_.turns.push_back({apex - setback(radius, turn) * heading + radius * side * quarter(heading),
                                radius, heading, turn});
        return after;
    }

    /// How far past a half turn a hem goes so that a teardrop's edge comes back to the leg; 0 for the others.
    [[nodiscard]] double excess(const trim::Hem& hem, double radius, double flat) const
    {
        if (hem.kind != trim::HemKind::Teardrop)
            return 0.0;
        const double band = hem.side == profile_.colourFace ? 2.0 * style_.bandWidth : 0.0;
        double low = 0.0, high = 0.7;
        for (int i = 0; i < 40; ++i) {
            const double angle = (low + high) / 2.0;
            const double edge = radius * (1.0 + std::cos(angle)) - flat * std::sin(angle);
            (edge > thickness_ + band + 0.3 ? low : high) = angle;
        }
        return low;
    }

    void endHem(const trim::Hem& hem, Point at, Point heading)
    {
        const double side = hem.side == trim::Side::Left ? 1.0 : -1.0;
        const double radius = hemRadius(hem);
        const double flat = std::max(inMillimetres(hem.flat) * style_.scale - radius - thickness_ / 2.0, 0.8);
        const double sweep = side * (std::numbers::pi + excess(hem, radius, flat));
        const Point centre = at + radius * side * quarter(heading);
        plane_.turns.push_back({centre, radius, heading, sweep});
        const Point back = turned(heading, sweep);
        const Point arcEnd = centre - radius * side * quarter(back);
        plane_.end = arcEnd + flat * back;
        plane_.endHeading = back;
        section_.hems.push_back(
            {between(arcEnd, plane_.end, 0.5), centre + (radius + thickness_ / 2.0) * heading});
    }

    /// `at` becomes where the first leg's straight part begins; the path's start edge is the hem's outer
    /// edge.
    void startHem(const trim::Hem& hem, Point& at, Point heading)
    {
        const double side = hem.side == trim::Side::Left ? 1.0 : -1.0;
        const double radius = hemRadius(hem);
        at = at + (radius + thickness_ / 2.0) * heading;
        const double flat = std::max(inMillimetres(hem.flat) * style_.scale - radius - thickness_ / 2.0, 0.8);
        const double sweep = side * (std::numbers::pi + excess(hem, radius, flat));
        const Point centre = at + radius * side * quarter(heading);
        const Point first = turned(heading, -sweep);
        const Point arcStart = centre - radius * side * quarter(first);
        plane_.start = arcStart - flat * first;
        plane_.startHeading = first;
        plane_.turns.push_back({centre, radius, first, sweep});
        section_.hems.push_back(
            {between(arcStart, plane_.start, 0.5), centre - (radius + thickness_ / 2.0) * heading});
    }

    const trim::Profile& profile_;
    const SectionStyle& style_;
    double thickness_;
    std::vector<double> legs_;
    std::vector<double> radii_;
    MiddlePlane plane_;
    Section section_;
};

} // namespace

Section drawSection(const trim::Profile& profile, const SectionStyle& style)
{
    return SectionBuilder(profile, style).build();
}

} // namespace lapwright::drawing
