#include "fold/steps.h"

#include "fold/gauge.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

/// A hem goes all the way down on the sheet when it is pressed; short of it, so that the flap does not count
/// as running into the sheet that it comes to lie on.
constexpr double pressed = 0.999 * std::numbers::pi;

double nearestOfFormed(const Half& half)
{
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i + 1 < half.points.size() && half.points.size() > 2; ++i) {
        const Vector a = half.points[i], along = half.points[i + 1] - a;
        const double at = std::clamp(-dot(a, along) / std::max(dot(along, along), 1e-12), 0.0, 1.0);
        nearest = std::min(nearest, lengthOf(a + at * along));
    }
    return nearest;
}

double farthestOf(const Half& half)
{
    double farthest = 0.0;
    for (const Vector point : half.points)
        farthest = std::max(farthest, lengthOf(point));
    return farthest;
}

double deepestOf(const Half& half)
{
    double deepest = 0.0;
    for (const Vector point : half.points)
        deepest = std::max(deepest, point.x);
    return deepest;
}

std::size_t numberOf(Placement placement)
{
    return (placement.endToGauge == End::Start ? 0U : 2U) + (placement.up == trim::Side::Left ? 0U : 1U);
}

} // namespace

double sheetGap(double thickness)
{
    return std::max(thickness - lyingOn, 1e-3);
}

double turnOf(const FoldLine& line, Direction direction)
{
    return (direction == Direction::Up ? 1.0 : -1.0) * (line.hem ? pressed : line.angleToSet);
}

StepChecker::StepChecker(const Blank& blank, const Machine& machine, std::size_t face,
                         const Settings& settings)
    : blank_(blank), machine_(machine), settings_(settings), around_(blank, machine, face, settings)
{
    std::size_t total = 0;
    const std::size_t count = blank.lines.size();
    for (std::size_t line = 0; line < count; ++line)
        for (const std::size_t beyond : {line, count - 1 - line}) {
            firstOf_.push_back(total);
            total += std::size_t{2} << beyond;
        }
    fronts_.resize(total);
    rears_.resize(total);
    together_.resize((std::size_t{1} << count) * count * 4);
}

std::size_t StepChecker::index(Made made, std::size_t line, End towards, trim::Side up) const
{
    const std::size_t part = towards == End::Start ? made & ((Made{1} << line) - 1) : made >> (line + 1);
    const std::size_t table = 2 * line + (towards == End::Start ? 0 : 1);
    return firstOf_[table] + 2 * part + (up == trim::Side::Left ? 0 : 1);
}

std::optional<Obstacle> StepChecker::byItself(std::size_t line, Placement placement) const
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    if (direction == Direction::Down && (!machine_->downFolding || fold.hem))
        return Obstacle::FoldsOneWayOnly;
    const Angle most =
        direction == Direction::Up ? machine_->largestFoldAngle : machine_->downFolding->largestFoldAngle;
    if (fold.angleToSet > most.inRadians() + 1e-9)
        return Obstacle::ClampAngle;
    if (fold.hem) {
        // The flap stands in front, so that it can be pushed under the clamp as it is.
        if (fold.flap == placement.endToGauge || !machine_->flattensHems)
            return Obstacle::Flattening;
        const double gap = 2.0 * fold.middleRadius - blank_.thickness;
        if (gap > inMillimetres(machine_->largestOpenHem) + 1e-6)
            return Obstacle::Flattening;
        const double flap = placement.endToGauge == End::Start ? blank_.girth - fold.position : fold.position;
        if (flap * std::sin(fold.angleToSet) + blank_.thickness > inMillimetres(machine_->clampOpening))
            return Obstacle::ClampOpening;
    }
    return std::nullopt;
}

StepChecker::HalfAnswer StepChecker::judgeFront(const Half& half, std::size_t line, Placement placement) const
{
    HalfAnswer answer;
    answer.known = true;
    answer.nearestFormed = nearestOfFormed(half);
    answer.farthest = farthestOf(half);
    const Direction direction = directionOf(blank_.lines[line], placement.up);
    if (half.points[1].x < inMillimetres(machine_->leastLeg)) {
        answer.obstacle = Obstacle::LeastLeg;
    } else if (half.points.size() > 2) {
        answer.obstacle = around_.sweeping(half.points, line, direction);
        if (!answer.obstacle)
            answer.layingIn = around_.layingIn(half.points, direction, 0.0);
    }
    return answer;
}

StepChecker::HalfAnswer StepChecker::judgeRear(const Half& canonical, std::size_t line,
                                               Placement placement) const
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    Half half = behind(canonical);
    HalfAnswer answer;
    answer.known = true;
    answer.nearestFormed = nearestOfFormed(half);
    answer.farthest = farthestOf(half);
    const double inset = fold.hem ? inMillimetres(settings_.flattenInset) : 0.0;
    if (half.points.size() > 2) {
        answer.lift = Surroundings::liftFor(half.points);
        answer.obstacle = around_.layingIn(half.points, direction, answer.lift);
        if (!answer.obstacle && fold.hem) {
            for (Vector& point : half.points)
                point.x -= inset;
            answer.obstacle = around_.layingIn(half.points, direction, answer.lift);
        }
    }
    if (!answer.obstacle && deepestOf(canonical) + inset > inMillimetres(machine_->throat))
        answer.obstacle = Obstacle::Throat;
    const std::optional<double> reach = gaugeReach(canonical, blank_.thickness, machine_);
    answer.gauge = reach.value_or(0.0);
    if (!answer.obstacle && machine_->backGauge &&
        (!reach || *reach < inMillimetres(machine_->backGauge->least) ||
         *reach + inset > inMillimetres(machine_->backGauge->most)))
        answer.obstacle = Obstacle::Gauge;
    return answer;
}

StepChecker::HalfAnswer& StepChecker::front(Made made, std::size_t line, Placement placement)
{
    const End towards = otherEnd(placement.endToGauge);
    HalfAnswer& answer = fronts_[index(made, line, towards, placement.up)];
    if (!answer.known)
        answer = judgeFront(halfSection(blank_, line, towards, made, placement.up), line, placement);
    return answer;
}

StepChecker::HalfAnswer& StepChecker::rear(Made made, std::size_t line, Placement placement)
{
    HalfAnswer& answer = rears_[index(made, line, placement.endToGauge, placement.up)];
    if (!answer.known)
        answer =
            judgeRear(halfSection(blank_, line, placement.endToGauge, made, placement.up), line, placement);
    return answer;
}

std::optional<Obstacle> StepChecker::together(Made made, std::size_t line, Placement placement)
{
    const HalfAnswer& inFront = front(made, line, placement);
    const HalfAnswer& inRear = rear(made, line, placement);
    const bool flatFront = std::isinf(inFront.nearestFormed);
    const FoldLine& fold = blank_.lines[line];
    // A flat front that turns inside everything formed behind cannot meet it.
    const double slack = 2.0 * fold.halfAllowance + blank_.thickness + 1.0;
    const bool apart = flatFront && inFront.farthest + slack < inRear.nearestFormed;
    const bool liftsFormed = inRear.lift > 0.0 && !flatFront;
    if (apart && !liftsFormed)
        return std::nullopt;
    constexpr std::uint8_t unknown = 0, free = 1, firstObstacle = 2;
    std::uint8_t& known = together_[(made * blank_.lines.size() + line) * 4 + numberOf(placement)];
    if (known == unknown) {
        std::optional<Obstacle> found;
        const Direction direction = directionOf(fold, placement.up);
        const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
        if (liftsFormed)
            found = around_.layingIn(ahead.points, direction, inRear.lift);
        if (!found && !apart) {
            const Half back = behind(halfSection(blank_, line, placement.endToGauge, made, placement.up));
            const double turn = turnOf(fold, direction);
            if (sheetContact(ahead.points, back.points, poleOf(fold, turn), turn, sheetGap(blank_.thickness)))
                found = Obstacle::Sheet;
        }
        known = found ? static_cast<std::uint8_t>(firstObstacle + static_cast<int>(*found)) : free;
    }
    if (known == free)
        return std::nullopt;
    return static_cast<Obstacle>(known - firstObstacle);
}

std::optional<Obstacle> StepChecker::obstacle(Made made, std::size_t line, Placement placement)
{
    if (const std::optional<Obstacle> itself = byItself(line, placement))
        return itself;
    const HalfAnswer& inFront = front(made, line, placement);
    if (inFront.obstacle)
        return inFront.obstacle;
    const HalfAnswer& inRear = rear(made, line, placement);
    if (inRear.obstacle)
        return inRear.obstacle;
    if (inRear.lift <= 0.0 && inFront.layingIn)
        return inFront.layingIn;
    return together(made, line, placement);
}

Length StepChecker::gaugeDistance(Made made, std::size_t line, Placement placement)
{
    const Made behindLine =
        placement.endToGauge == End::Start ? made & ((Made{1} << line) - 1) : made >> (line + 1);
    if (behindLine == 0)
        return placement.endToGauge == End::Start ? blank_.exactPositions[line]
                                                  : blank_.exactGirth - blank_.exactPositions[line];
    return nearestFromMillimetres(rear(made, line, placement).gauge);
}

Length StepChecker::lift(Made made, std::size_t line, Placement placement)
{
    return nearestFromMillimetres(rear(made, line, placement).lift);
}

} // namespace lapwright::fold
