#include "fold/retrace.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

constexpr double pointEvery = 1.0;

/// Pen that draws the path and remembers it.
struct Pen {
    std::vector<Trace> path;
    Place at{0.0, 0.0};
    double heading = 0.0;
    double fromStart = 0.0;

    void mark() { path.push_back({at, std::polar(1.0, heading), fromStart}); }
    void draw(double flatLength, double length, double turn, int pieces)
    {
        for (int piece = 0; piece < pieces; ++piece) {
            heading += turn / pieces / 2.0;
            at += std::polar(length / pieces, heading);
            heading += turn / pieces / 2.0;
            fromStart += flatLength / pieces;
            mark();
        }
    }
};

} // namespace

std::vector<Trace> retrace(const Standing& standing, std::size_t line, End endToGauge, trim::Side faceUp)
{
    Pen pen;
    pen.mark();
    Trace rearTangent;
    const auto straightTo = [&pen](double position) {
        const double length = position - pen.fromStart;
        pen.draw(length, length, 0.0, std::max(1, static_cast<int>(std::ceil(length / pointEvery))));
    };
    for (std::size_t i = 0; i < standing.positions.size(); ++i) {
        const double half = standing.allowances[i] / 2.0;
        straightTo(standing.positions[i] - half);
        if (i == line && endToGauge == End::Start)
            rearTangent = pen.path.back();
        const double turn = standing.angles[i];
        const int pieces =
            std::max(1, static_cast<int>(std::ceil(std::abs(turn) * 180.0 / std::numbers::pi)));
        // Chords of an arc of this radius: 2 r sin(half of each piece's turn).
        const double length = std::abs(turn) < 1e-9 ? 2.0 * half
                                                    : 2.0 * standing.radii[i] * pieces *
                                                          std::sin(std::abs(turn) / pieces / 2.0);
        pen.draw(2.0 * half, length, turn, pieces);
        if (i == line && endToGauge == End::End)
            rearTangent = pen.path.back();
    }
    straightTo(standing.girth);
    const bool forwards = endToGauge == End::Start;
    const bool mirrored = (faceUp == trim::Side::Left) != forwards;
    const Place wanted = forwards ? Place(1.0, 0.0) : Place(-1.0, 0.0);
    const Place seat(-standing.allowances[line] / 2.0, 0.0);
    for (Trace& trace : pen.path) {
        Place offset = (trace.at - rearTangent.at) / rearTangent.along;
        Place along = trace.along / rearTangent.along;
        if (mirrored) {
            offset = std::conj(offset);
            along = std::conj(along);
        }
        trace.at = seat + offset * wanted;
        trace.along = along * wanted;
    }
    return pen.path;
}

bool deepInside(Place point, const Outline& outline, double depth)
{
    const double x = point.real(), y = point.imag();
    bool in = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& from = outline[i];
        const Point& to = outline[(i + 1) % outline.size()];
        const double low = inMillimetres(from.y), high = inMillimetres(to.y);
        if ((low > y) == (high > y))
            continue;
        const double left = inMillimetres(from.x), right = inMillimetres(to.x);
        if (x < left + (right - left) * (y - low) / (high - low))
            in = !in;
    }
    if (!in)
        return false;
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point& from = outline[i];
        const Point& to = outline[(i + 1) % outline.size()];
        const Place a(inMillimetres(from.x), inMillimetres(from.y));
        const Place side = Place(inMillimetres(to.x), inMillimetres(to.y)) - a;
        const double along = std::clamp((std::conj(side) * (point - a)).real() / std::norm(side), 0.0, 1.0);
        nearest = std::min(nearest, std::abs(point - (a + along * side)));
    }
    return nearest > depth;
}

} // namespace lapwright::fold
