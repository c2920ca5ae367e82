#include "fold/machine.h"

#include "measure/rounding.h"
#include "measure/writing.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

namespace {

constexpr Length farthest = Length::millimetres(100'000);
constexpr std::size_t mostPoints = 64;
/// What an outline may be off its line: drawings are read to a hundredth of a millimetre.
constexpr Length drawn = Length::micrometres(10);

class Checker {
public:
    void fail(std::string place, std::string found, std::string expected)
    {
        errors_.push_back({std::move(place), std::move(found), std::move(expected)});
    }
    void length(const char* place, Length value, Length least)
    {
        if (value < least || value > farthest)
            fail(place, write(value, millimetres()),
                 write(least, millimetres()) + " to " + write(farthest, millimetres()));
    }
    void angle(const char* place, Angle value)
    {
        if (!(value > Angle() && value < halfTurn)) // also catches what is not a number
            fail(place, write(value), "an angle over 0° and below 180°");
    }
    void outline(const std::string& place, const Outline& points);
    void face(const std::string& place, const BeamFace& face, int below);
    [[nodiscard]] std::vector<Error> take() { return std::move(errors_); }
    [[nodiscard]] bool clean() const { return errors_.empty(); }

private:
    static Style millimetres() { return {LengthUnit::Millimetres, 16, 1}; }

    std::vector<Error> errors_;
};

/// Twice the signed area of three points, in units that cannot overflow a double's whole numbers by much.
double area(const Point& a, const Point& b, const Point& c)
{
    return inMillimetres(b.x - a.x) * inMillimetres(c.y - a.y) -
           inMillimetres(b.y - a.y) * inMillimetres(c.x - a.x);
}

bool withinBox(const Point& a, const Point& b, const Point& p)
{
    return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
           p.y <= std::max(a.y, b.y);
}

bool meet(const Point& a, const Point& b, const Point& c, const Point& d)
{
    const double abc = area(a, b, c), abd = area(a, b, d), cda = area(c, d, a), cdb = area(c, d, b);
    if (((abc > 0.0) != (abd > 0.0)) && ((cda > 0.0) != (cdb > 0.0)) && abc != 0.0 && abd != 0.0 &&
        cda != 0.0 && cdb != 0.0)
        return true;
    return (abc == 0.0 && withinBox(a, b, c)) || (abd == 0.0 && withinBox(a, b, d)) ||
           (cda == 0.0 && withinBox(c, d, a)) || (cdb == 0.0 && withinBox(c, d, b));
}

void Checker::outline(const std::string& place, const Outline& points)
{
    const std::size_t count = points.size();
    if (count < 3 || count > mostPoints) {
        fail(place, std::to_string(count) + " points", "3 to " + std::to_string(mostPoints) + " points");
        return;
    }
    for (const Point& point : points)
        if (magnitude(point.x) > farthest || magnitude(point.y) > farthest) {
            fail(place, "a point beyond 100 m", "points near the machine");
            return;
        }
    for (std::size_t i = 0; i < count; ++i) {
        if (points[i] == points[(i + 1) % count]) {
            fail(place, "point " + std::to_string(i + 1) + " twice", "each point once");
            return;
        }
        for (std::size_t j = i + 2; j < count; ++j) {
            if (i == 0 && j + 1 == count)
                continue;
            if (meet(points[i], points[i + 1], points[j], points[(j + 1) % count])) {
                fail(place,
                     "sides " + std::to_string(i + 1) + " and " + std::to_string(j + 1) + " that cross",
                     "an outline that does not cross itself");
                return;
            }
        }
    }
}

/// `below` is −1 for a beam under the sheet, +1 for one above it.
void Checker::face(const std::string& place, const BeamFace& face, int below)
{
    length((place + "/width_mm").c_str(), face.width, Length::micrometres(1));
    outline(place + "/body", face.body);
    Length reach;
    for (const Point& point : face.body) {
        if (point.y * below < -drawn || point.x < -drawn)
            fail(place + "/body", "a point on the wrong side",
                 below < 0 ? "all of it at x >= 0 and y <= 0" : "all of it at x >= 0 and y >= 0");
        if (magnitude(point.y) <= drawn)
            reach = std::max(reach, point.x);
    }
    if (magnitude(reach - face.width) > drawn)
        fail(place + "/width_mm", write(face.width, millimetres()),
             "the width of the body's edge on y = 0, " + write(reach, millimetres()));
}

bool hasOrigin(const Outline& outline)
{
    return std::any_of(outline.begin(), outline.end(), [](const Point& point) {
        return magnitude(point.x) <= drawn && magnitude(point.y) <= drawn;
    });
}

/// Every point on the side of y = 0 given by `side`, and behind the line on which a sheet folded by `largest`
/// lies. A sheet folded no further then cannot touch the part with the flat next to the bend.
void wedge(Checker& check, const char* place, const Outline& outline, int side, Angle largest)
{
    if (!hasOrigin(outline))
        check.fail(place, "no point at the bend line", "a corner at 0, 0");
    const double c = std::cos(largest.inRadians()), s = std::sin(largest.inRadians());
    for (const Point& point : outline) {
        const double x = inMillimetres(point.x), y = inMillimetres(point.y) * side;
        if (y < -inMillimetres(drawn))
            check.fail(place, "a point across the sheet",
                       side > 0 ? "all of it at y >= 0" : "all of it at y <= 0");
        else if (c * y - s * x < -inMillimetres(drawn))
            check.fail(place, "a point in the way of a sheet folded by " + write(largest),
                       "an outline behind that line, or a smaller largest_fold_angle_degrees");
    }
}

} // namespace

Machine::Machine(MachineDescription description) : description_(std::move(description)) {}

Result<Machine> Machine::make(MachineDescription description)
{
    Checker check;
    const MachineDescription& m = description;
    if (m.id.empty())
        check.fail("id", "nothing", "a name for files");
    check.length("bending_length_mm", m.bendingLength, Length::millimetres(1));
    check.length("capacity/thickness_mm", m.capacity.thickness, Length::micrometres(1));
    if (!(m.capacity.tensileStrengthPascals > 0.0 && m.capacity.tensileStrengthPascals < 1e11))
        check.fail("capacity/tensile_strength_mpa", std::to_string(m.capacity.tensileStrengthPascals / 1e6),
                   "a strength over 0 and below 100 000 MPa");
    check.length("clamp_opening_mm", m.clampOpening, Length::micrometres(1));
    check.length("throat_mm", m.throat, Length::micrometres(1));
    check.length("display_step_mm", m.displayStep, Length::micrometres(1));
    for (const MeasuredSpringback& measured : m.measuredSpringback) {
        check.angle("measured_springback/fold_degrees", measured.foldAngle);
        check.angle("measured_springback/set_degrees", measured.angleToSet);
    }
    if (m.slidesEndways)
        check.length("slides_endways_mm", *m.slidesEndways, Length::micrometres(1));
    check.length("least_leg_mm", m.leastLeg, Length());
    check.length("largest_open_hem_mm", m.largestOpenHem, Length());
    check.angle("largest_fold_angle_degrees", m.largestFoldAngle);
    check.outline("bed", m.bed);
    check.outline("clamp", m.clamp);
    if (m.beamFaces.empty() || m.beamFaces.size() > 16)
        check.fail("beam_faces", std::to_string(m.beamFaces.size()), "1 to 16 faces");
    for (std::size_t i = 0; i < m.beamFaces.size(); ++i)
        check.face("beam_faces/" + std::to_string(i), m.beamFaces[i], -1);
    if (m.backGauge) {
        check.length("back_gauge/least_mm", m.backGauge->least, Length());
        check.length("back_gauge/most_mm", m.backGauge->most, m.backGauge->least);
        check.length("back_gauge/finger_height_mm", m.backGauge->fingerHeight, Length::micrometres(1));
    }
    if (m.downFolding) {
        check.angle("down_folding/largest_fold_angle_degrees", m.downFolding->largestFoldAngle);
        check.face("down_folding/beam", m.downFolding->beam, 1);
    }
    if (check.clean()) {
        wedge(check, "clamp", m.clamp, 1, m.largestFoldAngle);
        wedge(check, "bed", m.bed, -1, m.downFolding ? m.downFolding->largestFoldAngle : quarterTurn);
    }
    if (!check.clean())
        return check.take();
    return Machine(std::move(description));
}

Length capacityFor(const Capacity& capacity, double tensileStrengthPascals)
{
    if (!(tensileStrengthPascals > 0.0))
        return capacity.thickness;
    return scaled(capacity.thickness, std::sqrt(capacity.tensileStrengthPascals / tensileStrengthPascals));
}

} // namespace lapwright::fold
