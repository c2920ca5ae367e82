#include "trim/end_cut.h"

#include "measure/rounding.h"
#include "measure/writing.h"
#include "trim/section.h"

#include <algorithm>
#include <cmath>

namespace lapwright::trim {

namespace {

/// A sharper corner than this is a slip of the pen: the cut would reach over ten times the trim's projection.
constexpr Angle sharpestTurn = Angle::degrees(170.0);

/// How far out each mould line of the blank lies, start edge to end edge.
std::vector<Length> mouldLinesOut(const Profile& profile)
{
    std::vector<Length> out;
    const std::vector<SectionPoint> points = idealMouldLine(profile);
    Angle heading = profile.firstDirection;
    if (profile.startHem)
        out.push_back(points.front().x + scaled(profile.startHem->flat, std::cos(heading.inRadians())));
    for (const SectionPoint& point : points)
        out.push_back(point.x);
    for (const Bend& bend : profile.bends)
        heading += bend.turn;
    if (profile.endHem)
        out.push_back(points.back().x - scaled(profile.endHem->flat, std::cos(heading.inRadians())));
    return out;
}

} // namespace

Length EndCut::longPoint() const
{
    return *std::max_element(reach.begin(), reach.end());
}

Length EndCut::shortPoint() const
{
    return *std::min_element(reach.begin(), reach.end());
}

Result<EndCut> mitreCut(const Profile& profile, Angle planTurn)
{
    if (profile.legs.empty() || profile.bends.size() + 1 != profile.legs.size())
        return Error{"bends", std::to_string(profile.bends.size()), "one between each two legs"};
    if (!(magnitude(planTurn) <= sharpestTurn))
        return Error{"corner", write(planTurn), "a turn of at most " + write(sharpestTurn) + " either way"};
    EndCut cut;
    const double slant = std::tan(planTurn.inRadians() / 2.0);
    for (const Length out : mouldLinesOut(profile))
        cut.reach.push_back(scaled(out, slant));
    cut.derivation = {
        {"mitre: each mould line of the blank reaches tan({turn} / 2) = {slant} times its distance "
         "outside the measured line beyond the measured end; long point {long}, short point {short}",
         {{"turn", planTurn}, {"slant", slant}, {"long", cut.longPoint()}, {"short", cut.shortPoint()}}},
        "",
        {}};
    return cut;
}

bool mitresAtCorners(site::RunKind kind)
{
    switch (kind) {
    case site::RunKind::Eave:
    case site::RunKind::Ridge:
    case site::RunKind::Headwall:
    case site::RunKind::SlopeChange:
    case site::RunKind::Fascia:
    case site::RunKind::WallBase:
    case site::RunKind::Parapet:
    case site::RunKind::GravelEdge:
        return true;
    default:
        return false;
    }
}

} // namespace lapwright::trim
