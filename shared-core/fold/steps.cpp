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
        for (const Direction direction : {Direction::Up, Direction::Down}) {
            const FoldLine& fold = blank.lines[line];
            poles_.push_back(poleOf(fold, turnOf(fold, direction)));
            const double left =
                (direction == Direction::Up ? 1.0 : -1.0) * (fold.hem ? fold.angleToSet : fold.angle);
            letGo_.push_back({poleOf(fold, left), std::cos(left), std::sin(left)});
        }
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
    if (fold.hem && !machine_->flattensHems)
        return Obstacle::Flattening;
    if (direction == Direction::Down && !machine_->downFolding)
        return Obstacle::FoldsOneWayOnly;
    const Angle most =
        direction == Direction::Up ? machine_->largestFoldAngle : machine_->downFolding->largestFoldAngle;
    if (fold.angleToSet > most.inRadians() + 1e-9)
        return Obstacle::ClampAngle;
    if (fold.hem) {
        // The flap stands in front, so that it can be pushed under the clamp as it is.
        if (fold.flap == placement.endToGauge)
            return Obstacle::Flattening;
        const double gap = 2.0 * fold.middleRadius - blank_.thickness;
        if (gap > inMillimetres(machine_->largestOpenHem) + 1e-6)
            return Obstacle::Flattening;
        if (flapHeight(fold) + blank_.thickness > inMillimetres(machine_->clampOpening))
            return Obstacle::ClampOpening;
    }
    return std::nullopt;
}

double StepChecker::flapHeight(const FoldLine& hem) const
{
    const double flap = hem.flap == End::End ? blank_.girth - hem.position : hem.position;
    return flap * std::sin(hem.angleToSet);
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
        std::vector<Vector> points = behind(canonical.points);
        answer.lift = Surroundings::liftFor(points);
        answer.layingIn = around_.layingIn(points, direction, answer.lift);
        if (!answer.layingIn && fold.hem) {
            for (Vector& point : points)
                point.x -= inset;
            // A flap that hangs down lies on the bed as it is pushed in, and lifts the sheet.
            const double onFlap = direction == Direction::Down ? flapHeight(fold) : 0.0;
            answer.layingIn = around_.layingIn(points, direction, std::max(answer.lift, onFlap));
        }
    }
    if (deepestOf(canonical) + inset > inMillimetres(machine_->throat))
        answer.obstacle = Obstacle::Throat;
    const std::optional<GaugeReach> reach = gaugeReach(canonical, blank_.thickness, machine_);
    answer.gauge = reach ? reach->millimetres : 0.0;
    if (!answer.obstacle && machine_->backGauge &&
        (!reach || reach->millimetres < inMillimetres(machine_->backGauge->least) ||
         reach->millimetres + inset > inMillimetres(machine_->backGauge->most)))
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

std::optional<Obstacle> StepChecker::obstacle(Made made, std::size_t line, Placement placement)
{
    if (const std::optional<Obstacle>& itself = itself_[4 * line + numberOf(placement)])
        return itself;
    HalfAnswer& inFront = front(made, line, placement);
    if (inFront.obstacle)
        return inFront.obstacle;
    HalfAnswer& inRear = rear(made, line, placement);
    if (inRear.obstacle)
        return inRear.obstacle;
    const std::optional<Obstacle> way = inRear.layingIn      ? inRear.layingIn
                                        : inRear.lift <= 0.0 ? inFront.layingIn
                                                             : std::nullopt;
    if (way && !blank_.slidesEndways)
        return way;
    if (way)
        if (const std::optional<Obstacle> stands = standing(made, line, placement))
            return stands;
    knowLeaving(inFront, made, line, placement);
    if (!blank_.slidesEndways && !inFront.leaving)
        return Obstacle::WayOut;
    return together(made, line, placement, inFront, inRear).obstacle;
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

Touching StepChecker::touching(Made made, std::size_t line, Placement placement) const
{
    const Half half = halfSection(blank_, line, placement.endToGauge, made, placement.up);
    const std::optional<GaugeReach> reach = gaugeReach(half, blank_.thickness, machine_);
    if (!reach || reach->part == GaugeReach::Part::Edge)
        return Touching::Edge;
    if (reach->part == GaugeReach::Part::Leg)
        return Touching::Leg;
    std::size_t index = line; // of the bend the arc belongs to: so many made bends further out
    for (std::size_t left = reach->arc + 1; left > 0;) {
        index = placement.endToGauge == End::Start ? index - 1 : index + 1;
        left -= made >> index & 1U;
    }
    return blank_.lines[index].hem ? Touching::HemFold : Touching::Corner;
}

} // namespace lapwright::fold
