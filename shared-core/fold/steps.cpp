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
    if (direction == Direction::Down && !machine_->downFolding)
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

void StepChecker::knowLeaving(HalfAnswer& inFront, Made made, std::size_t line, Placement placement)
{
    if (inFront.leavingKnown)
        return;
    inFront.leavingKnown = true;
    halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up, scratch_);
    const Direction direction = directionOf(blank_.lines[line], placement.up);
    const double side = direction == Direction::Up ? 1.0 : -1.0;
    const std::vector<Vector> released = letGo(scratch_.points, line, direction);
    inFront.leansOver = overhangOf(released).depth > 0.0;
    if (!around_.beamReturns(scratch_.points, line, direction))
        return;
    inFront.leavesAnyhow =
        !inFront.leansOver &&
        std::all_of(released.begin(), released.end(), [side](Vector point) { return side * point.y >= 0.0; });
    inFront.leaving =
        inFront.leavesAnyhow ? WayOut::Straight : around_.takingOut(released, {}, direction, 0.0);
}

std::vector<Vector> StepChecker::letGo(const std::vector<Vector>& ahead, std::size_t line,
                                       Direction direction) const
{
    const LetGo& turn = letGo_[2 * line + (direction == Direction::Up ? 0 : 1)];
    std::vector<Vector> points;
    points.reserve(ahead.size());
    for (const Vector point : ahead) {
        const Vector at = point - turn.pole;
        points.push_back(
            turn.pole + Vector{turn.cosine * at.x - turn.sine * at.y, turn.sine * at.x + turn.cosine * at.y});
    }
    return points;
}

Overhang StepChecker::overhang(Made made, std::size_t line, Placement placement) const
{
    const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    return overhangOf(letGo(ahead.points, line, directionOf(blank_.lines[line], placement.up)));
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

bool StepChecker::keepApart(const HalfAnswer& ahead, const HalfAnswer& back, double turn) const
{
    // Parts cannot meet while their angles about the pole do not, give or take the gap: an arc sine is at
    // most its sine by half of π.
    const double nearest = std::min(ahead.nearest, back.nearest);
    return nearest >= closeToPole &&
           ahead.angle + back.angle + std::abs(turn) + 1.6 * sheetGap(blank_.thickness) / nearest <
               std::numbers::pi;
}

StepChecker::Passage StepChecker::judgeTogether(Made made, std::size_t line, Placement placement,
                                                const HalfAnswer& inFront, const HalfAnswer& inRear)
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    const std::vector<Vector> back =
        behind(halfSection(blank_, line, placement.endToGauge, made, placement.up).points);
    const bool formedAhead = ahead.points.size() > 2, formedBehind = back.size() > 2;
    Passage passage;
    std::optional<Obstacle> way = inRear.layingIn;
    if (!way && formedAhead)
        way = inRear.lift > 0.0 ? around_.layingIn(ahead.points, direction, inRear.lift) : inFront.layingIn;
    if (way && blank_.slidesEndways) {
        passage.in = WayIn::Endways;
        way = standing(made, line, placement);
    }
    const double turn = turnOf(fold, direction);
    if (!way && !keepApart(inFront, inRear, turn) &&
        sheetContact(ahead.points, back, poleOf(fold, turn), turn, sheetGap(blank_.thickness)))
        way = Obstacle::Sheet;
    passage.obstacle = way;
    if (way)
        return passage;
    std::optional<WayOut> leaving = inFront.leaving;
    if (passage.in == WayIn::Endways) {
        leaving.reset(); // in that way because there was no other: out again the same
    } else if (leaving && formedBehind && !inFront.leavesAnyhow) {
        leaving = around_.takingOut(letGo(ahead.points, line, direction), back, direction, inRear.lift);
    }
    if (!leaving && blank_.slidesEndways)
        leaving = WayOut::Endways;
    if (leaving)
        passage.out = *leaving;
    else
        passage.obstacle = Obstacle::WayOut;
    return passage;
}

StepChecker::Passage StepChecker::together(Made made, std::size_t line, Placement placement)
{
    return together(made, line, placement, front(made, line, placement), rear(made, line, placement));
}

StepChecker::Passage StepChecker::together(Made made, std::size_t line, Placement placement,
                                           HalfAnswer& inFront, HalfAnswer& inRear)
{
    knowLeaving(inFront, made, line, placement);
    const bool formedAhead = !std::isinf(inFront.nearest), formedBehind = !std::isinf(inRear.nearest);
    const bool in = !inRear.layingIn && (!formedAhead || (!inFront.layingIn && inRear.lift <= 0.0));
    // Straight out in front and as it came behind, without a lift, is straight out.
    const bool straight = inFront.leaving == WayOut::Straight && !inFront.leansOver && inRear.lift <= 0.0;
    const bool out = inFront.leavesAnyhow || straight || (inFront.leaving && !formedBehind);
    if (in && out &&
        keepApart(inFront, inRear, turnOf(blank_.lines[line], directionOf(blank_.lines[line], placement.up))))
        return {std::nullopt, WayIn::FromTheFront, *inFront.leaving};
    constexpr std::uint8_t unknown = 0, free = 1, blocked = 16, endways = 8;
    std::uint8_t& known = together_[(made * blank_.lines.size() + line) * 4 + numberOf(placement)];
    if (known == unknown) {
        const Passage passage = judgeTogether(made, line, placement, inFront, inRear);
        if (passage.obstacle)
            known = static_cast<std::uint8_t>(blocked + static_cast<std::uint8_t>(*passage.obstacle));
        else
            known = static_cast<std::uint8_t>(free + static_cast<std::uint8_t>(passage.out) +
                                              (passage.in == WayIn::Endways ? endways : 0));
    }
    if (known >= blocked)
        return {static_cast<Obstacle>(known - blocked), {}, {}};
    const bool past = known >= free + endways;
    return {std::nullopt, past ? WayIn::Endways : WayIn::FromTheFront,
            static_cast<WayOut>(known - free - (past ? endways : 0))};
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

std::optional<Obstacle> StepChecker::layingInBent(Made made, std::size_t line, Placement placement,
                                                  const FoldLine& partly)
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    const double sign = direction == Direction::Up ? 1.0 : -1.0;
    Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    // The flat next to the bend counts too, but for what lies at the nose.
    constexpr double atNose = 6.0;
    const Vector first = ahead.points[0];
    if (ahead.points[1].x - first.x > atNose)
        ahead.points.insert(ahead.points.begin() + 1, {first.x + atNose, 0.0});
    const std::vector<Vector> bent = folded(ahead.points, partly, sign * partly.angle);
    if (together(made, line, placement).in == WayIn::Endways)
        return around_.standing(bent, direction);
    return around_.layingIn(bent, direction, rear(made, line, placement).lift);
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

std::optional<Obstacle> StepChecker::standsIn(HalfAnswer& answer, const std::vector<Vector>& points,
                                              std::size_t line, Direction direction) const
{
    answer.standingKnown = true;
    if (points.size() < 3)
        return std::nullopt;
    answer.standing = around_.standing(points, direction);
    if (!answer.standing && blank_.lines[line].hem) {
        std::vector<Vector> pressing = points;
        for (Vector& point : pressing)
            point.x -= inMillimetres(settings_.flattenInset);
        answer.standing = around_.standing(pressing, direction);
    }
    return answer.standing;
}

std::optional<Obstacle> StepChecker::standing(Made made, std::size_t line, Placement placement)
{
    const Direction direction = directionOf(blank_.lines[line], placement.up);
    HalfAnswer& inRear = rear(made, line, placement);
    if (!inRear.standingKnown) {
        halfSection(blank_, line, placement.endToGauge, made, placement.up, scratch_);
        if (standsIn(inRear, behind(scratch_.points), line, direction))
            return inRear.standing;
    } else if (inRear.standing) {
        return inRear.standing;
    }
    HalfAnswer& inFront = front(made, line, placement);
    if (!inFront.standingKnown) {
        halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up, scratch_);
        return standsIn(inFront, scratch_.points, line, direction);
    }
    return inFront.standing;
}

Handling StepChecker::handlingForTime(Made made, std::size_t line, Placement placement)
{
    Handling handling;
    if (blank_.slidesEndways) {
        const Passage passage = together(made, line, placement);
        handling.in = passage.in;
        handling.out = passage.out;
    }
    if (handling.in == WayIn::FromTheFront)
        handling.lift = nearestFromMillimetres(rear(made, line, placement).lift);
    return handling;
}

Handling StepChecker::handling(Made made, std::size_t line, Placement placement)
{
    const Passage passage = together(made, line, placement);
    Handling handling{passage.in, passage.out, {}, {}, {}};
    if (passage.in == WayIn::FromTheFront)
        handling.lift = nearestFromMillimetres(rear(made, line, placement).lift);
    if (passage.out == WayOut::LittleOpen)
        handling.open = nearestFromMillimetres(around_.littleOpening(
            behind(halfSection(blank_, line, placement.endToGauge, made, placement.up).points),
            rear(made, line, placement).lift));
    if (passage.out == WayOut::DrawnFirst || passage.out == WayOut::AsClampOpens)
        handling.drawn = roundToNearest(
            nearestFromMillimetres(around_.drawnFirst(passage.out, overhang(made, line, placement))),
            Length::micrometres(100));
    return handling;
}

} // namespace lapwright::fold
