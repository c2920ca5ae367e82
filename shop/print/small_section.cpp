#include "print/small_section.h"

#include "drawing/section.h"
#include "measure/rounding.h"

#include <algorithm>

namespace lapwright::print {

namespace {

using drawing::Point;
using drawing::Rectangle;

/// Thin, but not lost on a label printer; the coloured face stands as far off as it can be told apart.
constexpr double leastSheet = 0.45;
constexpr double bandWidth = 1.0;

drawing::SectionStyle styleAt(double scale, Length thickness)
{
    drawing::SectionStyle style;
    style.scale = scale;
    style.thickness = inMillimetres(thickness);
    style.leastThickness = leastSheet;
    style.bandWidth = bandWidth;
    return style;
}

Rectangle extentOf(const drawing::Section& section)
{
    std::vector<Point> points = section.sheet;
    points.insert(points.end(), section.colour.begin(), section.colour.end());
    return drawing::bounds(points);
}

} // namespace

void addSmallSection(const trim::Profile& profile, Length thickness, const Rectangle& room,
                     std::vector<drawing::Shape>& onto)
{
    if (room.width() < 4.0 || room.height() < 4.0)
        return;
    // The sheet and its band have a least size, so the scale is found by coming nearer.
    double scale = 1.0;
    Rectangle extent;
    for (int pass = 0; pass < 12; ++pass) {
        extent = extentOf(drawing::drawSection(profile, styleAt(scale, thickness)));
        const double fits = std::min(room.width() / extent.width(), room.height() / extent.height());
        if (pass > 3 && fits >= 1.0)
            break;
        scale *= fits * 0.995;
    }
    const drawing::Section section = drawing::drawSection(profile, styleAt(scale, thickness));
    extent = extentOf(section);
    if (extent.width() > room.width() || extent.height() > room.height())
        return;
    const Point middle = extent.centre();
    const auto onLabel = [&](std::vector<Point> points) {
        for (Point& point : points)
            point = {room.centre().x + (point.x - middle.x), room.centre().y - (point.y - middle.y)};
        return points;
    };
    onto.emplace_back(
        drawing::Path{drawing::Role::Label, onLabel(section.sheet), true, std::nullopt, drawing::Fill{}});
    onto.emplace_back(drawing::Path{drawing::Role::Label, onLabel(section.colourMiddle), false,
                                    drawing::Stroke{0.3, drawing::Dash::Dotted, {}}, std::nullopt});
}

} // namespace lapwright::print
