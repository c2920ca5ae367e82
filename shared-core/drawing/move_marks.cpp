#include "drawing/move_marks.h"

#include "drawing/marks.h"
#include "drawing/palette.h"

#include <cmath>
#include <numbers>

namespace lapwright::drawing {

namespace {

/// An arc with a head at its end, counter-clockwise to the eye if `sweep` > 0.
void addTurn(std::vector<Shape>& onto, Point centre, double radius, double start, double sweep)
{
    onto.emplace_back(Arc{Role::Movement, centre, radius, start, sweep, Stroke{0.5, Dash::Solid, {}}});
    const double end = start + sweep;
    const Point tip = centre + radius * direction(-end);
    const Point heading = (sweep > 0.0 ? -1.0 : 1.0) * quarter(direction(-end));
    const Point wing = 1.1 * quarter(heading);
    onto.emplace_back(Path{Role::Movement,
                           {tip + 2.4 * heading, tip + wing, tip - wing},
                           true,
                           Stroke{0.1, Dash::Solid, {}},
                           Fill{}});
}

void addTurnOver(std::vector<Shape>& onto, Point corner, Colour colour)
{
    const Stroke outline{0.2, Dash::Solid, {}};
    const double left = corner.x + 0.5, right = corner.x + 8.5, middle = corner.y + 7.0;
    onto.emplace_back(box(Role::ColouredFace, {left, middle - 1.6, right, middle}, outline,
                          Fill{true, colour, Hatch::None}));
    onto.emplace_back(Path{Role::ColouredFace,
                           {{left + 0.8, middle - 0.8}, {right - 0.4, middle - 0.8}},
                           false,
                           Stroke{0.4, Dash::Dotted, contrasting(colour)},
                           {}});
    onto.emplace_back(box(Role::Sheet, {left, middle, right, middle + 1.0}, outline, Fill{}));
    addTurn(onto, {corner.x + 4.5, middle}, 5.2, 0.45 * std::numbers::pi, -0.85 * std::numbers::pi);
}

void addSpin(std::vector<Shape>& onto, Point corner)
{
    const Point centre = corner + Point{6.0, 7.0};
    const Stroke outline{0.25, Dash::Solid, {}};
    onto.emplace_back(box(Role::Sheet, {centre.x - 4.2, centre.y - 1.4, centre.x + 4.2, centre.y + 1.4},
                          outline, std::nullopt));
    onto.emplace_back(
        box(Role::Sheet, {centre.x + 2.4, centre.y - 1.4, centre.x + 4.2, centre.y + 1.4}, outline, Fill{}));
    addTurn(onto, centre, 5.4, 0.08 * std::numbers::pi, 0.72 * std::numbers::pi);
    addTurn(onto, centre, 5.4, 1.08 * std::numbers::pi, 0.72 * std::numbers::pi);
}

} // namespace

std::string wordsFor(fold::Move move)
{
    switch (move) {
    case fold::Move::None:
        return "as it lies";
    case fold::Move::TurnOver:
        return "turn over";
    case fold::Move::Spin:
        return "spin end for end";
    case fold::Move::TurnOverAndSpin:
        return "turn over and spin end for end";
    }
    return "";
}

void addMoveMark(std::vector<Shape>& onto, Point corner, fold::Move move, Colour colour)
{
    const bool over = move == fold::Move::TurnOver || move == fold::Move::TurnOverAndSpin;
    if (over)
        addTurnOver(onto, corner, colour);
    if (move == fold::Move::Spin || move == fold::Move::TurnOverAndSpin)
        addSpin(onto, corner + Point{over ? 13.5 : 0.0, 0.0});
}

} // namespace lapwright::drawing
