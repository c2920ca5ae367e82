#include "fold/retrace.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

constexpr double pointEvery = 1.0;
/// Turn of one chord of an arc.
constexpr double chordTurn = std::numbers::pi / 36.0;

/// Pen that draws the path and remembers it.
struct Pen {
    std::vector<Trace> path;
    Place at{0.0, 0.0};
    double heading = 0.0;
    double fromStart = 0.0;

    void mark(Place along) { path.push_back({at, along, fromStart}); }
    void straight(double length)
    {
        const int pieces = std::max(1, static_cast<int>(std::ceil(length / pointEvery)));
        const Place along = std::polar(1.0, heading);
        for (int piece = 0; piece < pieces; ++piece) {
            at += length / pieces * along;
            fromStart += length / pieces;
            mark(along);
        }
    }
    void arc(double flatLength, double radius, double turn)
    {
        if (std::abs(turn) < 1e-9)
            return straight(flatLength);
        const int pieces = std::max(1, static_cast<int>(std::ceil(std::abs(turn) / chordTurn)));
        const double chord = 2.0 * radius * std::sin(std::abs(turn) / pieces / 2.0);
        for (int piece = 0; piece < pieces; ++piece) {
            heading += turn / pieces / 2.0;
            at += std::polar(chord, heading);
            heading += turn / pieces / 2.0;
            fromStart += flatLength / pieces;
            mark(std::polar(1.0, heading));
        }
    }
};

double cross(Place a, Place b)
{
    return a.real() * b.imag() - a.imag() * b.real();
}

double distanceTo(Place point, Place from, Place to)
{
    const Place side = to - from;
    const double along =
        std::clamp((std::conj(side) * (point - from)).real() / std::max(std::norm(side), 1e-18), 0.0, 1.0);
    return std::abs(point - (from + along * side));
}

struct Stretch {
    Place from;
    Place to;
};

double distanceBetween(const Stretch& a, const Stretch& b)
{
    const Place along = a.to - a.from, other = b.to - b.from;
    const double first = cross(along, b.from - a.from), second = cross(along, b.to - a.from);
    const double third = cross(other, a.from - b.from), fourth = cross(other, a.to - b.from);
    if (first * second < 0.0 && third * fourth < 0.0)
        return 0.0;
    return std::min({distanceTo(a.from, b.from, b.to), distanceTo(a.to, b.from, b.to),
                     distanceTo(b.from, a.from, a.to), distanceTo(b.to, a.from, a.to)});
}

/// Straight stretches of a part of the path, from the end nearest to the line outwards.
std::vector<Stretch> stretches(const std::vector<const Trace*>& part)
{
    std::vector<Stretch> made;
    for (std::size_t i = 0; i + 1 < part.size(); ++i) {
        const Place from = part[i]->at, to = part[i + 1]->at;
        const Place last = made.empty() ? Place() : made.back().to - made.back().from;
        const double size = std::abs(last) * std::abs(to - from);
        if (!made.empty() && std::abs(cross(last, to - from)) < 1e-9 * size)
            made.back().to = to;
        else
            made.push_back({from, to});
    }
    return made;
}

} // namespace

std::vector<Trace> retrace(const Standing& standing, std::size_t line, End endToGauge, trim::Side faceUp)
{
    Pen pen;
    pen.path.reserve(static_cast<std::size_t>(standing.girth / pointEvery) + 64 * standing.positions.size() +
                     16);
    pen.mark(1.0);
    Trace rearTangent;
    for (std::size_t i = 0; i < standing.positions.size(); ++i) {
        const double half = standing.allowances[i] / 2.0;
        pen.straight(standing.positions[i] - half - pen.fromStart);
        if (i == line && endToGauge == End::Start)
            rearTangent = pen.path.back();
        pen.arc(2.0 * half, standing.radii[i], standing.angles[i]);
        if (i == line && endToGauge == End::End)
            rearTangent = pen.path.back();
    }
    pen.straight(standing.girth - pen.fromStart);
    const bool forwards = endToGauge == End::Start;
    const bool mirrored = (faceUp == trim::Side::Left) != forwards;
    const Place turn = (forwards ? 1.0 : -1.0) * std::conj(rearTangent.along);
    const Place seat(-standing.allowances[line] / 2.0, 0.0);
    for (Trace& trace : pen.path) {
        const Place offset = (trace.at - rearTangent.at) * turn, along = trace.along * turn;
        trace.at = seat + (mirrored ? std::conj(offset) : offset);
        trace.along = mirrored ? std::conj(along) : along;
    }
    return pen.path;
}

bool meetsItself(const std::vector<Trace>& path, double line, double gap)
{
    std::vector<const Trace*> before, after;
    for (const Trace& trace : path)
        (trace.fromStart < line ? before : after).push_back(&trace);
    std::reverse(before.begin(), before.end());
    const std::vector<Stretch> one = stretches(before), other = stretches(after);
    // The bend itself is round: its chords and the flats next to them adjoin.
    const auto far = [gap](const std::vector<Stretch>& part, std::size_t index) {
        double reached = 0.0;
        for (std::size_t i = 0; i < index; ++i)
            reached += std::abs(part[i].to - part[i].from);
        return reached > 4.0 * gap;
    };
    for (std::size_t i = 0; i < one.size(); ++i)
        for (std::size_t k = 0; k < other.size(); ++k)
            if ((far(one, i) || far(other, k)) && distanceBetween(one[i], other[k]) < gap)
                return true;
    return false;
}

Solid::Solid(const Outline& outline)
{
    left_ = bottom_ = std::numeric_limits<double>::infinity();
    right_ = top_ = -std::numeric_limits<double>::infinity();
    for (const Point& point : outline) {
        const double x = inMillimetres(point.x), y = inMillimetres(point.y);
        corners_.emplace_back(x, y);
        left_ = std::min(left_, x);
        right_ = std::max(right_, x);
        bottom_ = std::min(bottom_, y);
        top_ = std::max(top_, y);
    }
}

bool Solid::holds(Place point, double depth) const
{
    const double x = point.real(), y = point.imag();
    if (x < left_ + depth || x > right_ - depth || y < bottom_ + depth || y > top_ - depth)
        return false;
    bool in = false;
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < corners_.size(); ++i) {
        const Place from = corners_[i], to = corners_[(i + 1) % corners_.size()];
        nearest = std::min(nearest, distanceTo(point, from, to));
        if ((from.imag() > y) != (to.imag() > y) &&
            x < from.real() + (to.real() - from.real()) * (y - from.imag()) / (to.imag() - from.imag()))
            in = !in;
    }
    return in && nearest > depth;
}

} // namespace lapwright::fold
