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

double nearestOfFormed(const Half& half, Vector pole)
{
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i + 1 < half.points.size() && half.points.size() > 2; ++i)
        nearest = std::min(nearest, squaredDistanceTo(half.points[i] - pole, half.points[i + 1] - pole));
    return std::sqrt(nearest);
}

double deepestOf(const Half& half)
{
    double deepest = 0.0;
    for (const Vector point : half.points)
        deepest = std::max(deepest, point.x);
    return deepest;
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
    for (std::size_t line = 0; line < count; ++line) {
        for (const End end : {End::Start, End::End})
            for (const trim::Side up : {trim::Side::Left, trim::Side::Right})
                itself_.push_back(byItself(line, {end, up}));
        for (const Direction direction : {Direction::Up, Direction::Down})
            poles_.push_back(poleOf(blank.lines[line], turnOf(blank.lines[line], direction)));
    }
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

StepChecker::HalfAnswer StepChecker::aboutPole(const Half& half, std::size_t line, Direction direction,
                                               bool behindLine) const
{
    Vector pole = poles_[2 * line + (direction == Direction::Up ? 0 : 1)];
    if (behindLine)
        pole.x = -pole.x;
    HalfAnswer answer;
    answer.known = true;
    answer.nearest = nearestOfFormed(half, pole);
    answer.angle = largestAngle(half.points, pole, direction == Direction::Up ? 1.0 : -1.0);
    return answer;
}

StepChecker::HalfAnswer StepChecker::judgeFront(const Half& half, std::size_t line, Placement placement) const
{
    const Direction direction = directionOf(blank_.lines[line], placement.up);
    HalfAnswer answer = aboutPole(half, line, direction, false);
    if (half.points[1].x < inMillimetres(machine_->leastLeg)) {
        answer.obstacle = Obstacle::LeastLeg;
    } else if (half.points.size() > 2) {
        answer.obstacle = around_.sweeping(half.points, line, direction, answer.nearest, answer.angle);
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
    HalfAnswer answer = aboutPole(canonical, line, direction, true);
    const double inset = fold.hem ? inMillimetres(settings_.flattenInset) : 0.0;
    if (canonical.points.size() > 2) {
        std::vector<Vector> points = canonical.points;
        for (Vector& point : points)
            point.x = -point.x;
        answer.lift = Surroundings::liftFor(points);
        answer.obstacle = around_.layingIn(points, direction, answer.lift);
        if (!answer.obstacle && fold.hem) {
            for (Vector& point : points)
                point.x -= inset;
            answer.obstacle = around_.layingIn(points, direction, answer.lift);
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
    if (!answer.known) {
        halfSection(blank_, line, towards, made, placement.up, scratch_);
        answer = judgeFront(scratch_, line, placement);
    }
    return answer;
}

StepChecker::HalfAnswer& StepChecker::rear(Made made, std::size_t line, Placement placement)
{
    HalfAnswer& answer = rears_[index(made, line, placement.endToGauge, placement.up)];
    if (!answer.known) {
        halfSection(blank_, line, placement.endToGauge, made, placement.up, scratch_);
        answer = judgeRear(scratch_, line, placement);
    }
    return answer;
}

std::optional<Obstacle> StepChecker::together(Made made, std::size_t line, Placement placement)
{
    const HalfAnswer& inFront = front(made, line, placement);
    const HalfAnswer& inRear = rear(made, line, placement);
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    const double turn = turnOf(fold, direction), gap = sheetGap(blank_.thickness);
    // Parts cannot meet while their angles about the pole do not, give or take the gap.
    const double nearest = std::min(inFront.nearest, inRear.nearest);
    const bool apart = nearest >= closeToPole && inFront.angle + inRear.angle + std::abs(turn) +
                                                         std::asin(std::min(1.0, gap / nearest)) <
                                                     std::numbers::pi;
    const bool liftsFormed = inRear.lift > 0.0 && !std::isinf(inFront.nearest);
    if (apart && !liftsFormed)
        return std::nullopt;
    constexpr std::uint8_t unknown = 0, free = 1, firstObstacle = 2;
    std::uint8_t& known = together_[(made * blank_.lines.size() + line) * 4 + numberOf(placement)];
    if (known == unknown) {
        std::optional<Obstacle> found;
        const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
        if (liftsFormed)
            found = around_.layingIn(ahead.points, direction, inRear.lift);
        if (!found && !apart) {
            const Half back = behind(halfSection(blank_, line, placement.endToGauge, made, placement.up));
            if (sheetContact(ahead.points, back.points, poleOf(fold, turn), turn, gap))
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
    if (const std::optional<Obstacle>& itself = itself_[4 * line + numberOf(placement)])
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
