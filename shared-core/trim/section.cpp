#include "trim/section.h"

#include "measure/rounding.h"
#include "trim/unfolded.h"

#include <algorithm>
#include <cmath>

namespace lapwright::trim {

namespace {

/// In millimetres: trigonometry happens here, lengths are exact again in SectionPoint.
struct Point {
    double x = 0.0;
    double y = 0.0;

    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend Point operator*(double factor, Point a) { return {factor * a.x, factor * a.y}; }
};

Point along(double radians)
{
    return {std::cos(radians), std::sin(radians)};
}
/// To the left of a heading.
Point leftOf(double radians)
{
    return {-std::sin(radians), std::cos(radians)};
}
SectionPoint exact(Point point)
{
    return {nearestFromMillimetres(point.x), nearestFromMillimetres(point.y)};
}
/// −180° < angle <= 180°.
Angle withinOneTurn(Angle angle)
{
    const double radians = std::remainder(angle.inRadians(), fullTurn.inRadians());
    return Angle::radians(radians <= -halfTurn.inRadians() ? halfTurn.inRadians() : radians);
}

/// Walks the middle plane of the sheet, flats and arcs in turn.
class Walk {
public:
    Walk(const Profile& profile, const Unfolded& unfolded, Length thickness, Angle chord)
        : profile_(profile), unfolded_(unfolded), sheet_(thickness), half_(inMillimetres(thickness) / 2.0),
          chord_(chord.inRadians())
    {
    }

    Section section()
    {
        startBeforeFirstLeg();
        mark(position_);
        for (std::size_t part = 0; part < unfolded_.parts.size(); ++part) {
            flat(part);
            if (part < unfolded_.lines.size())
                bend(unfolded_.lines[part]);
        }
        return std::move(section_);
    }

private:
    static double sideOf(Angle turn) { return turn < Angle() ? -1.0 : 1.0; }
    [[nodiscard]] double middleRadius(const BendLine& line) const
    {
        return inMillimetres(line.insideRadius) + half_;
    }
    [[nodiscard]] double straight(std::size_t part) const
    {
        return inMillimetres(straightOf(unfolded_, part, sheet_));
    }

    /// How far left of the first or last leg's middle plane its mould line lies.
    [[nodiscard]] double mouldOffset(bool atEnd) const
    {
        if (profile_.bends.empty())
            return -half_;
        return -half_ * sideOf(atEnd ? profile_.bends.back().turn : profile_.bends.front().turn);
    }

    void startBeforeFirstLeg()
    {
        heading_ = profile_.firstDirection.inRadians();
        const Point mouldStart{inMillimetres(profile_.startX), inMillimetres(profile_.startY)};
        section_.mouldLine.push_back(exact(mouldStart));
        position_ = mouldStart - mouldOffset(false) * leftOf(heading_);
        if (!profile_.startHem)
            return;
        const BendLine& edge = unfolded_.lines.front();
        const Point legStart = position_ + (middleRadius(edge) + half_) * along(heading_);
        position_ = legStart + 2.0 * middleRadius(edge) * sideOf(edge.turn) * leftOf(heading_) +
                    straight(0) * along(heading_);
        heading_ -= edge.turn.inRadians();
        section_.startHemEdge = exact(position_);
    }

    void mark(Point point)
    {
        section_.middle.push_back(exact(point));
        section_.leftFace.push_back(exact(point + half_ * leftOf(heading_)));
        section_.rightFace.push_back(exact(point - half_ * leftOf(heading_)));
    }

    void flat(std::size_t part)
    {
        const Point from = position_;
        position_ = position_ + straight(part) * along(heading_);
        const std::size_t hemsBefore = profile_.startHem ? 1 : 0;
        SectionFlat piece{SectionFlat::Kind::Leg, 0, exact(from), exact(position_),
                          withinOneTurn(Angle::radians(heading_))};
        if (part < hemsBefore)
            piece.kind = SectionFlat::Kind::StartHem;
        else if (part - hemsBefore >= profile_.legs.size())
            piece.kind = SectionFlat::Kind::EndHem;
        else
            piece.leg = part - hemsBefore;
        if (piece.kind == SectionFlat::Kind::EndHem)
            section_.endHemEdge = exact(position_);
        else if (piece.kind == SectionFlat::Kind::Leg)
            markMouldLine(piece.leg);
        section_.flats.push_back(piece);
        mark(position_);
    }

    /// The apex after `leg`, or where the last leg ends.
    void markMouldLine(std::size_t leg)
    {
        double beyond = 0.0, offset = mouldOffset(true);
        if (leg < profile_.bends.size()) {
            const Bend& next = profile_.bends[leg];
            beyond = inMillimetres(outsideSetback(magnitude(next.turn), next.insideRadius, sheet_));
            offset = -half_ * sideOf(next.turn);
        } else if (profile_.endHem) {
            beyond = inMillimetres(profile_.endHem->insideRadius) + 2.0 * half_;
        }
        section_.mouldLine.push_back(exact(position_ + beyond * along(heading_) + offset * leftOf(heading_)));
    }

    void bend(const BendLine& line)
    {
        const double turn = line.turn.inRadians();
        const double reach = middleRadius(line) * sideOf(line.turn);
        const Point centre = position_ + reach * leftOf(heading_);
        const double entry = heading_;
        const int chords = std::max(1, static_cast<int>(std::ceil(std::abs(turn) / chord_ - 1e-9)));
        for (int step = 1; step <= chords; ++step) {
            heading_ = entry + turn * step / chords;
            position_ = centre - reach * leftOf(heading_);
            mark(position_);
        }
    }

    const Profile& profile_;
    const Unfolded& unfolded_;
    Length sheet_;
    double half_;
    double chord_;
    double heading_ = 0.0;
    Point position_;
    Section section_;
};

} // namespace

Result<Section> sectionOf(const Profile& profile, Length thickness, Angle chord)
{
    const Result<Unfolded> unfolded = unfold(profile, thickness);
    if (!unfolded)
        return unfolded.errors();
    return Walk(profile, *unfolded, thickness, chord).section();
}

Angle includedAngle(const Bend& bend)
{
    return halfTurn - magnitude(bend.turn);
}

Profile mirrored(const Profile& profile)
{
    Profile other = profile;
    for (Bend& bend : other.bends)
        bend.turn = -bend.turn;
    for (std::optional<Hem>* hem : {&other.startHem, &other.endHem})
        if (*hem)
            (*hem)->side = opposite((*hem)->side);
    other.colourFace = opposite(other.colourFace);
    other.firstDirection = withinOneTurn(halfTurn - other.firstDirection);
    other.startX = -other.startX;
    return other;
}

Profile reversed(const Profile& profile)
{
    Profile other = mirrored(profile); // sides change as in a mirror, whatever the place
    std::reverse(other.legs.begin(), other.legs.end());
    std::reverse(other.bends.begin(), other.bends.end());
    std::swap(other.startHem, other.endHem);
    const SectionPoint end = idealMouldLine(profile).back();
    other.startX = end.x;
    other.startY = end.y;
    other.firstDirection = profile.firstDirection + halfTurn;
    for (const Bend& bend : profile.bends)
        other.firstDirection += bend.turn;
    other.firstDirection = withinOneTurn(other.firstDirection);
    return other;
}

std::vector<SectionPoint> idealMouldLine(const Profile& profile)
{
    Point at{inMillimetres(profile.startX), inMillimetres(profile.startY)};
    double heading = profile.firstDirection.inRadians();
    std::vector<SectionPoint> points{exact(at)};
    for (std::size_t leg = 0; leg < profile.legs.size(); ++leg) {
        at = at + inMillimetres(profile.legs[leg].length) * along(heading);
        points.push_back(exact(at));
        if (leg < profile.bends.size())
            heading += profile.bends[leg].turn.inRadians();
    }
    return points;
}

} // namespace lapwright::trim
