#include "fold/surroundings.h"

#include <algorithm>
#include <cmath>

/// The way of a folded piece out of the machine: straight moves of sheet and clamp, each exact.
namespace lapwright::fold {

namespace {

/// A direction that leans back by less is upright.
constexpr double upright = 1e-6;
/// Drawn forward so much further than it leans back, or than the room about the nose asks for.
constexpr double clearOf = 2.0;

std::vector<Vector> shifted(std::vector<Vector> points, Vector by)
{
    for (Vector& point : points)
        point = point + by;
    return points;
}

} // namespace

Overhang overhangOf(const std::vector<Vector>& front)
{
    Overhang over;
    for (const Vector point : front)
        over.depth = std::max(over.depth, -point.x);
    if (over.depth <= springsAside)
        over.depth = 0.0;
    const Vector flat = front[1] - front[0];
    over.along = (1.0 / std::max(lengthOf(flat), 1e-12)) * flat;
    return over;
}

std::optional<Obstacle> Surroundings::standing(const std::vector<Vector>& points, Direction direction) const
{
    const Bounds bounds = boundsOf(points, 1);
    if (standsIn(points, 1, bounds, bed_))
        return Obstacle::Bed;
    if (standsIn(points, 1, bounds, beam(direction)))
        return Obstacle::Beam;
    if (standsIn(points, 1, bounds, openClamp_))
        return Obstacle::ClampOpening;
    if (slidingContact(points, 1, bounds, clamp_, {0.0, -opening_}))
        return Obstacle::Clamp;
    return std::nullopt;
}

double Surroundings::drawnFirst(WayOut way, const Overhang& over) const
{
    const double clear =
        over.depth + std::max({clearOf, clamp_.bounds.most.x + 0.5, bed_.bounds.most.x + 0.5});
    if (way == WayOut::DrawnFirst)
        return clear;
    // Along the folded leg, until it is clear or the clamp is open.
    return way == WayOut::AsClampOpens ? std::min(clear, opening_ * std::abs(over.along.x / over.along.y))
                                       : 0.0;
}

double Surroundings::littleOpening(const std::vector<Vector>& rear, double lift) const
{
    constexpr double air = 10.0;
    double highest = 0.0;
    for (const Vector point : rear)
        highest = std::max(highest, point.y);
    return std::min(opening_, std::ceil(highest + lift + air));
}

std::vector<Surroundings::Moment>
Surroundings::momentsOf(WayOut way, Direction direction, const Overhang& over, double lift, double wide) const
{
    const double drawn = drawnFirst(way, over);
    std::vector<Moment> moments{{{0.0, 0.0}, 0.0}};
    if (way == WayOut::DrawnFirst && direction == Direction::Up)
        moments.push_back({{drawn, 0.0}, 0.0});
    if (way == WayOut::DrawnFirst && direction == Direction::Down)
        moments.push_back({{0.0, 0.0}, wide});
    if (way == WayOut::AsClampOpens)
        moments.push_back({{drawn, 0.0}, std::min(wide, drawn * std::abs(over.along.y / over.along.x))});
    moments.push_back({{drawn, 0.0}, wide});
    if (lift > 0.0)
        moments.push_back({{drawn, lift}, wide});
    moments.push_back({Vector{drawn, lift} + out_, wide});
    return moments;
}

bool Surroundings::getsOut(const std::vector<Vector>& points, const std::vector<Moment>& way,
                           Direction direction, const Vector* besideClamp) const
{
    const Bounds bounds = boundsOf(points, 1);
    for (std::size_t i = 0; i + 1 < way.size(); ++i) {
        const Moment& from = way[i];
        const Moment& to = way[i + 1];
        const Vector beside = besideClamp != nullptr ? *besideClamp : Vector{};
        const Vector past = beside + from.sheet - Vector{0.0, from.open}; // as seen from the clamp
        const Vector move = to.sheet - from.sheet, moveByClamp = move - Vector{0.0, to.open - from.open};
        if (besideClamp != nullptr &&
            slidingContact(shifted(points, past), 1, {bounds.least + past, bounds.most + past}, clamp_,
                           moveByClamp))
            return false;
        const std::vector<Vector> here = shifted(points, from.sheet);
        const Bounds its{bounds.least + from.sheet, bounds.most + from.sheet};
        if (slidingContact(here, 1, its, bed_, move) ||
            (direction == Direction::Up && slidingContact(here, 1, its, upBeam_, move)))
            return false;
    }
    return true;
}

std::optional<WayOut> Surroundings::takingOut(const std::vector<Vector>& front,
                                              const std::vector<Vector>& rear, Direction direction,
                                              double lift) const
{
    const Overhang over = overhangOf(front);
    const bool formed = front.size() > 2; // a flat alone moves away from whatever it leans over
    const bool leans = over.depth > 0.0, up = direction == Direction::Up;
    const bool legLeans = leans && over.along.x < -upright;
    const Vector inPlace, aside{springsAside, 0.0};
    for (const WayOut way :
         {WayOut::Straight, WayOut::LittleOpen, WayOut::DrawnFirst, WayOut::AsClampOpens}) {
        const bool straight = way == WayOut::Straight || way == WayOut::LittleOpen;
        // Straight up the clamp would take with it a leg that leans over it, and the sheet one under the bed.
        if (straight && legLeans && (up || lift > 0.0))
            continue;
        if (way != WayOut::Straight && !leans)
            continue;
        if (way == WayOut::AsClampOpens && !(up && legLeans))
            continue;
        const std::vector<Moment> moments = momentsOf(
            way, direction, over, lift, way == WayOut::LittleOpen ? littleOpening(rear, lift) : opening_);
        // What stands upright in front of the nose is nowhere in the clamp's way.
        const Vector* besideClamp = !leans ? nullptr : straight ? &aside : &inPlace;
        if ((!formed || getsOut(front, moments, direction, besideClamp)) &&
            getsOut(rear, moments, direction, &inPlace))
            return way;
    }
    return std::nullopt;
}

bool Surroundings::beamReturns(const std::vector<Vector>& front, std::size_t line, Direction direction) const
{
    const Swing& swing = swings_[2 * line + (direction == Direction::Up ? 0 : 1)];
    const double side = direction == Direction::Up ? 1.0 : -1.0;
    const bool allAbove =
        std::all_of(front.begin(), front.end(), [side](Vector point) { return side * point.y >= -lyingOn; });
    return allAbove || !swing.beam.contact(front, 1, swing.turn);
}

} // namespace lapwright::fold
