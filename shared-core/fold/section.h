#pragma once

#include "fold/machine.h"
#include "fold/plan.h"
#include "fold/settings.h"
#include "metal/metal.h"
#include "trim/girth.h"

#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

/// The sheet's section in the machine, at mid thickness, in millimetres.
namespace lapwright::fold {

struct Vector {
    double x = 0.0;
    double y = 0.0;

    friend Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y}; }
    friend Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
    friend Vector operator*(double k, Vector a) { return {k * a.x, k * a.y}; }
};

[[nodiscard]] inline double dot(Vector a, Vector b)
{
    return a.x * b.x + a.y * b.y;
}
[[nodiscard]] inline double cross(Vector a, Vector b)
{
    return a.x * b.y - a.y * b.x;
}
[[nodiscard]] inline double lengthOf(Vector a)
{
    return std::sqrt(dot(a, a));
}
[[nodiscard]] inline Vector turned(Vector a, double radians)
{
    const double c = std::cos(radians), s = std::sin(radians);
    return {c * a.x - s * a.y, s * a.x + c * a.y};
}

/// A bend line with what its arc needs.
struct FoldLine {
    double position = 0.0;              ///< from the start edge, on the flat
    double halfAllowance = 0.0;         ///< half the flat length that becomes the arc
    double middleRadius = 0.0;          ///< inside radius + half the thickness
    double angle = 0.0;                 ///< radians, > 0; π for a hem edge
    double angleToSet = 0.0;            ///< with springback; the pre-bend for a hem edge
    trim::Side side = trim::Side::Left; ///< the face that comes to lie inside the bend
    bool hem = false;
    End flap = End::Start; ///< of a hem: the end it folds
    std::string between;   ///< of a plain bend: the names of its legs; empty if they have none
    /// The arc is followed with so many chords, each turning by the angle of this cosine and sine.
    int chords = 1;
    double chordCosine = 1.0;
    double chordSine = 0.0;
};

/// Sets the chords for the line's angle and radius; they stay within `chordRise` of its arc.
void followArc(FoldLine& line);
inline constexpr double chordRise = 0.25;

/// The line as a first go leaves it: bent to `angle` only, its flat length in a wider arc that narrows to the
/// whole bend's as it is finished.
[[nodiscard]] FoldLine bentTo(const FoldLine& line, double angle, double angleToSet);

/// Which lines are made: bit i is line i.
using Made = std::uint32_t;

/// The blank with its bend lines, as the planner sees it.
struct Blank {
    double girth = 0.0;
    double thickness = 0.0;
    Length exactGirth;
    std::vector<Length> exactPositions;
    std::vector<FoldLine> lines;
    /// The piece is short enough to be slid in and out past the end of the clamp.
    bool slidesEndways = false;
};

/// The blank with one line as a first go leaves it.
[[nodiscard]] Blank withLine(Blank blank, std::size_t line, FoldLine partly);

/// An arc of the section: for the outermost face of a formed edge.
struct Arc {
    Vector centre;
    double from = 0.0;  ///< direction from the centre to the arc's first point
    double sweep = 0.0; ///< signed
    double middleRadius = 0.0;
};

/// The part of the sheet on one side of a bend line, from the end of that bend's arc outwards: the middle of
/// the sheet as a polyline. `points[0]` to `points[1]` is the flat that adjoins the bend.
struct Half {
    std::vector<Vector> points;
    std::vector<Arc> arcs;
    /// Whether points[i] to points[i + 1] is a flat part, not the chord of an arc.
    std::vector<char> isFlat;
};

/// The part of the blank from line `line` towards `towards`, lines in `made` folded, others flat, laid along
/// +x from the bend line with the face `up` upwards.
[[nodiscard]] Half halfSection(const Blank& blank, std::size_t line, End towards, Made made, trim::Side up);

/// The same into a half that is used again.
void halfSection(const Blank& blank, std::size_t line, End towards, Made made, trim::Side up, Half& into);

/// The same mirrored in x: behind the bend line.
[[nodiscard]] Half behind(Half half);
[[nodiscard]] std::vector<Vector> behind(std::vector<Vector> points);

/// The part in front turned with the fold at its line, `radians` signed, + up.
[[nodiscard]] std::vector<Vector> folded(const std::vector<Vector>& front, const FoldLine& line,
                                         double radians);

/// The pole a fold turns about: the one point whose rotation by `radians` (signed, + up) carries the front
/// part from flat to the place it has at the end of the bend's arc.
[[nodiscard]] Vector poleOf(const FoldLine& line, double radians);

/// Direction line `line` folds in with face `up` upwards.
[[nodiscard]] Direction directionOf(const FoldLine& line, trim::Side up);

} // namespace lapwright::fold
