#include "fold/steps.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

/// How a part comes in and goes out, and what only both parts together decide.
namespace lapwright::fold {

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
