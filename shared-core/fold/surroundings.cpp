#include "fold/surroundings.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

Surroundings::Surroundings(const Blank& blank, const Machine& machine, std::size_t face,
                           const Settings& settings)
    : out_{4.0 * blank.girth + 1'000.0, 0.0}, opening_(inMillimetres(machine->clampOpening))
{
    // A bend bulges beyond its chords.
    const double clearance = blank.thickness / 2.0 + std::max(inMillimetres(settings.clearance), chordRise);
    // A flattened hem that faces the beam lies on it: the sheet lifts by its thickness.
    const double onBeam = 1.5 * blank.thickness + 0.2;
    bed_ = keepOut(machine->bed, clearance, lyingOn);
    clamp_ = keepOut(machine->clamp, clearance, lyingOn);
    openClamp_ = moved(clamp_, {0.0, opening_});
    upBeam_ = keepOut(machine->beamFaces[face].body, clearance, onBeam);
    if (machine->downFolding)
        downBeam_ = keepOut(machine->downFolding->beam.body, clearance, onBeam);
    for (const FoldLine& line : blank.lines)
        for (const double turn : {line.angleToSet, -line.angleToSet}) {
            const Vector pole = poleOf(line, turn);
            const double sense = turn < 0.0 ? -1.0 : 1.0;
            swings_.push_back({TurningBarrier(clamp_, pole, sense), TurningBarrier(bed_, pole, sense),
                               TurningBarrier(turn < 0.0 ? downBeam_ : upBeam_, pole, sense), turn});
        }
}

double Surroundings::liftFor(const std::vector<Vector>& points)
{
    double lowest = 0.0;
    for (const Vector point : points)
        lowest = std::min(lowest, point.y);
    return lowest < -lyingOn ? std::ceil(chordRise - lowest) : 0.0;
}

std::optional<Obstacle> Surroundings::layingIn(const std::vector<Vector>& points, Direction direction,
                                               double lift) const
{
    const bool up = direction == Direction::Up;
    const Vector raised{0.0, lift};
    const Bounds bounds = boundsOf(points, 1), high{bounds.least + raised, bounds.most + raised};
    std::vector<Vector> lifted;
    if (lift > 0.0) {
        lifted = points;
        if (slidingContact(points, 1, bounds, bed_, raised))
            return Obstacle::Bed;
        if (up && slidingContact(points, 1, bounds, upBeam_, raised))
            return Obstacle::Beam;
        if (slidingContact(points, 1, bounds, openClamp_, raised))
            return Obstacle::ClampOpening;
        for (Vector& point : lifted)
            point = point + raised;
    }
    const std::vector<Vector>& sliding = lift > 0.0 ? lifted : points;
    if (slidingContact(sliding, 1, high, bed_, out_))
        return Obstacle::Bed;
    if (up ? slidingContact(sliding, 1, high, upBeam_, out_) : standsIn(points, 1, bounds, downBeam_))
        return Obstacle::Beam;
    if (slidingContact(sliding, 1, high, openClamp_, out_))
        return Obstacle::ClampOpening;
    if (slidingContact(points, 1, bounds, clamp_, {0.0, -opening_}))
        return Obstacle::Clamp;
    return std::nullopt;
}

std::optional<Obstacle> Surroundings::sweeping(const std::vector<Vector>& points, std::size_t line,
                                               Direction direction, double nearest, double largestAngle) const
{
    const Swing& swing = swings_[2 * line + (direction == Direction::Up ? 0 : 1)];
    const auto meets = [&](const TurningBarrier& part) {
        return !part.outOfReach(nearest, largestAngle, swing.turn) && part.contact(points, 1, swing.turn);
    };
    if (meets(swing.clamp))
        return Obstacle::Clamp;
    if (meets(swing.bed))
        return Obstacle::Bed;
    return std::nullopt;
}

} // namespace lapwright::fold
