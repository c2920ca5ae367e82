#include "drawing/marks.h"

#include "drawing/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace lapwright::drawing {

namespace {

struct Ruler {
    double millimetres;
    const char* name;
};

constexpr std::array inchRulers = {Ruler{12.7, "1/2\""},   Ruler{25.4, "1\""},     Ruler{50.8, "2\""},
                                   Ruler{101.6, "4\""},    Ruler{152.4, "6\""},    Ruler{304.8, "1'"},
                                   Ruler{609.6, "2'"},     Ruler{1524.0, "5'"},    Ruler{3048.0, "10'"},
                                   Ruler{6096.0, "20'"},   Ruler{15240.0, "50'"},  Ruler{30480.0, "100'"},
                                   Ruler{60960.0, "200'"}, Ruler{152400.0, "500'"}};
constexpr std::array metricRulers = {Ruler{5.0, "5 mm"},     Ruler{10.0, "10 mm"},    Ruler{20.0, "20 mm"},
                                     Ruler{50.0, "50 mm"},   Ruler{100.0, "100 mm"},  Ruler{200.0, "200 mm"},
                                     Ruler{500.0, "500 mm"}, Ruler{1000.0, "1 m"},    Ruler{2000.0, "2 m"},
                                     Ruler{5000.0, "5 m"},   Ruler{10000.0, "10 m"},  Ruler{20000.0, "20 m"},
                                     Ruler{50000.0, "50 m"}, Ruler{100000.0, "100 m"}};

} // namespace

Path line(Role role, Point from, Point to, double width, Dash dash)
{
    return {role, {from, to}, false, Stroke{width, dash, {}}, {}};
}

void addArrow(std::vector<Shape>& onto, Role role, Point from, Point to, double width, double head)
{
    if (norm(to - from) < 1e-9)
        return;
    const Point heading = unit(to - from);
    const Point neck = to - head * heading;
    const Point wing = 0.32 * head * quarter(heading);
    onto.emplace_back(line(role, from, neck, width));
    onto.emplace_back(Path{role, {to, neck + wing, neck - wing}, true, Stroke{0.1, Dash::Solid, {}}, Fill{}});
}

Path box(Role role, const Rectangle& rectangle, std::optional<Stroke> stroke, std::optional<Fill> fill)
{
    return {role,
            {{rectangle.left, rectangle.top},
             {rectangle.right, rectangle.top},
             {rectangle.right, rectangle.bottom},
             {rectangle.left, rectangle.bottom}},
            true,
            stroke,
            fill};
}

Text words(Role role, std::string text, Point at, double size, Anchor anchor, bool bold)
{
    return {role, std::move(text), at, size, anchor, bold, 0.0};
}

Shape placed(Shape shape, Point corner, double scale)
{
    const auto move = [&](Point& point) { point = corner + scale * point; };
    const auto draw = [&](Stroke& stroke) { stroke.width *= scale; };
    if (auto* path = std::get_if<Path>(&shape)) {
        for (Point& point : path->points)
            move(point);
        if (path->stroke)
            draw(*path->stroke);
    } else if (auto* circle = std::get_if<Circle>(&shape)) {
        move(circle->centre);
        circle->radius *= scale;
        if (circle->stroke)
            draw(*circle->stroke);
    } else if (auto* arc = std::get_if<Arc>(&shape)) {
        move(arc->centre);
        arc->radius *= scale;
        draw(arc->stroke);
    } else if (auto* text = std::get_if<Text>(&shape)) {
        move(text->at);
        text->size *= scale;
    }
    return shape;
}

const std::vector<double>& usualScales()
{
    static const std::vector<double> scales = {
        5.0,        4.0,        3.0,        2.0,        1.5,        1.0,        1.0 / 1.25, 1.0 / 1.5,
        1.0 / 2.0,  1.0 / 2.5,  1.0 / 3.0,  1.0 / 4.0,  1.0 / 5.0,  1.0 / 6.0,  1.0 / 8.0,  1.0 / 10.0,
        1.0 / 12.0, 1.0 / 16.0, 1.0 / 20.0, 1.0 / 25.0, 1.0 / 30.0, 1.0 / 40.0, 1.0 / 50.0, 1.0 / 75.0,
        1.0 / 100,  1.0 / 125,  1.0 / 150,  1.0 / 200,  1.0 / 250,  1.0 / 300,  1.0 / 400,  1.0 / 500,
        1.0 / 1000, 1.0 / 2000, 1.0 / 5000, 1.0 / 10000};
    return scales;
}

double usualScale(double width, double height, const Rectangle& room)
{
    for (const double scale : usualScales())
        if (width * scale <= room.width() && height * scale <= room.height())
            return scale;
    return std::min(room.width() / width, room.height() / height);
}

std::string scaleName(double scale)
{
    const double share = scale >= 1.0 ? scale : 1.0 / scale;
    const std::int64_t hundredths = std::llround(share * 100.0);
    std::string number = std::to_string(hundredths / 100);
    if (hundredths % 100 != 0) {
        number += "." + std::to_string(100 + hundredths % 100).substr(1);
        if (number.back() == '0')
            number.pop_back();
    }
    return scale >= 1.0 ? number + ":1" : "1:" + number;
}

void addScaleBar(std::vector<Shape>& onto, Point at, double scale, double most, bool metric)
{
    const auto& rulers = metric ? metricRulers : inchRulers;
    const auto* best = &rulers.front();
    for (const Ruler& ruler : rulers)
        if (ruler.millimetres * scale <= most)
            best = &ruler;
    const double length = best->millimetres * scale;
    constexpr double height = 1.2;
    // Two fields, the first filled: readable as a measure at a glance, and the half can be taken off.
    onto.emplace_back(box(Role::Label, {at.x, at.y - height, at.x + length / 2.0, at.y},
                          Stroke{0.2, Dash::Solid, {}}, Fill{}));
    onto.emplace_back(box(Role::Label, {at.x + length / 2.0, at.y - height, at.x + length, at.y},
                          Stroke{0.2, Dash::Solid, {}}, std::nullopt));
    onto.emplace_back(words(Role::Label, best->name, {at.x + length + 1.2, at.y}, 2.6));
}

} // namespace lapwright::drawing
