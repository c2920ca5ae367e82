#include "fold/section.h"

#include <algorithm>
#include <numbers>

namespace lapwright::fold {

namespace {

/// Follows the sheet outwards from one bend line.
class Walk {
public:
    Walk(Half& half, double start) : half_(half), at_{start, 0.0} { half_.points.push_back(at_); }

    void straight(double distance) { at_ = at_ + distance * heading_; }
    void bend(const FoldLine& line, double sign)
    {
        half_.points.push_back(at_);
        half_.isFlat.push_back(1);
        const double radius = line.middleRadius;
        const Vector centre = at_ + (sign * radius) * Vector{-heading_.y, heading_.x};
        half_.arcs.push_back({centre, angle_ - sign * std::numbers::pi / 2.0, sign * line.angle, radius});
        angle_ += sign * line.angle;
        for (int chord = 0; chord < line.chords; ++chord) {
            at_ = centre + stepped(at_ - centre, line, sign);
            heading_ = stepped(heading_, line, sign);
            half_.points.push_back(at_);
            half_.isFlat.push_back(0);
        }
    }
    void finish()
    {
        half_.points.push_back(at_);
        half_.isFlat.push_back(1);
    }

private:
    [[nodiscard]] static Vector stepped(Vector a, const FoldLine& line, double sign)
    {
        const double c = line.chordCosine, s = sign * line.chordSine;
        return {c * a.x - s * a.y, s * a.x + c * a.y};
    }

    Half& half_;
    Vector at_;
    Vector heading_{1.0, 0.0};
    double angle_ = 0.0; ///< of the heading
};

} // namespace

void followArc(FoldLine& line)
{
    const double cosine = 1.0 - chordRise / line.middleRadius;
    const double widest = 2.0 * std::acos(std::max(cosine, 0.0));
    line.chords = std::max(1, static_cast<int>(std::ceil(line.angle / widest)));
    line.chordCosine = std::cos(line.angle / line.chords);
    line.chordSine = std::sin(line.angle / line.chords);
}

FoldLine bentTo(const FoldLine& line, double angle, double angleToSet)
{
    FoldLine partly = line;
    const double share = angle / line.angle;
    partly.angle = angle;
    partly.angleToSet = angleToSet;
    partly.middleRadius = share * line.middleRadius + (1.0 - share) * 2.0 * line.halfAllowance / angle;
    followArc(partly);
    return partly;
}

Blank withLine(Blank blank, std::size_t line, FoldLine partly)
{
    blank.lines[line] = std::move(partly);
    return blank;
}

Half halfSection(const Blank& blank, std::size_t line, End towards, Made made, trim::Side up)
{
    Half half;
    halfSection(blank, line, towards, made, up, half);
    return half;
}

void halfSection(const Blank& blank, std::size_t line, End towards, Made made, trim::Side up, Half& half)
{
    half.points.clear();
    half.isFlat.clear();
    half.arcs.clear();
    half.points.reserve(4 * blank.lines.size() + 2);
    half.isFlat.reserve(4 * blank.lines.size() + 2);
    half.arcs.reserve(blank.lines.size());
    const FoldLine& from = blank.lines[line];
    Walk walk(half, from.halfAllowance);
    const bool forwards = towards == End::End;
    double reached = from.halfAllowance; // along the flat, from the bend line outwards
    const std::size_t count = forwards ? blank.lines.size() - 1 - line : line;
    for (std::size_t step = 1; step <= count; ++step) {
        const std::size_t index = forwards ? line + step : line - step;
        if ((made >> index & 1U) == 0U)
            continue;
        const FoldLine& next = blank.lines[index];
        const double distance = std::abs(next.position - from.position);
        walk.straight(distance - next.halfAllowance - reached);
        walk.bend(next, next.side == up ? 1.0 : -1.0);
        reached = distance + next.halfAllowance;
    }
    walk.straight((forwards ? blank.girth - from.position : from.position) - reached);
    walk.finish();
}

std::vector<Vector> behind(std::vector<Vector> points)
{
    for (Vector& point : points)
        point.x = -point.x;
    return points;
}

Half behind(Half half)
{
    half.points = behind(std::move(half.points));
    for (Arc& arc : half.arcs) {
        arc.centre.x = -arc.centre.x;
        arc.from = std::numbers::pi - arc.from;
        arc.sweep = -arc.sweep;
    }
    return half;
}

Vector poleOf(const FoldLine& line, double radians)
{
    const double angle = std::abs(radians), sign = radians < 0.0 ? -1.0 : 1.0;
    const Vector flat{line.halfAllowance, 0.0};
    const Vector folded{-line.halfAllowance + line.middleRadius * std::sin(angle),
                        sign * line.middleRadius * (1.0 - std::cos(angle))};
    const Vector between = folded - flat;
    const Vector across{-between.y, between.x};
    return 0.5 * (flat + folded) + (0.5 * sign / std::tan(angle / 2.0)) * across;
}

std::vector<Vector> folded(const std::vector<Vector>& front, const FoldLine& line, double radians)
{
    const Vector pole = poleOf(line, radians);
    const double c = std::cos(radians), s = std::sin(radians);
    std::vector<Vector> points;
    points.reserve(front.size());
    for (const Vector point : front) {
        const Vector at = point - pole;
        points.push_back(pole + Vector{c * at.x - s * at.y, s * at.x + c * at.y});
    }
    return points;
}

Direction directionOf(const FoldLine& line, trim::Side up)
{
    return line.side == up ? Direction::Up : Direction::Down;
}

} // namespace lapwright::fold
