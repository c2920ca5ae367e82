#include "icon_shapes.h"

#include <algorithm>
#include <array>
#include <sstream>
#include <string>

namespace lapwright::look {

namespace {

/// M x y moves, L x y draws, Z closes, O x y r is a circle, A x y r start sweep an arc in degrees,
/// counter-clockwise to the eye from +x.
struct IconShape {
    const char* name;
    const char* strokes;
};

constexpr std::array shapes = {
    IconShape{"add", "M 12 4 L 12 20 M 4 12 L 20 12"},
    IconShape{"arrivals", "M 3 13 L 3 20 L 21 20 L 21 13 M 12 3 L 12 15 M 7 10 L 12 15 L 17 10"},
    IconShape{"back", "M 20 12 L 5 12 M 11 5 L 4 12 L 11 19"},
    IconShape{"batches", "M 3 8 L 12 3 L 21 8 L 12 13 Z M 3 13 L 12 18 L 21 13 M 3 17 L 12 22 L 21 17"},
    IconShape{"blocks", "M 8 3 L 16 3 L 21 8 L 21 16 L 16 21 L 8 21 L 3 16 L 3 8 Z M 8 12 L 16 12"},
    IconShape{"camera", "M 3 7 L 7 7 L 9 4 L 15 4 L 17 7 L 21 7 L 21 20 L 3 20 Z O 12 13 4"},
    IconShape{"close", "M 5 5 L 19 19 M 19 5 L 5 19"},
    IconShape{"corner", "M 4 4 L 4 20 L 20 20 M 4 13 L 11 13 L 11 20"},
    IconShape{"cutting", "M 3 5 L 21 5 L 21 19 L 3 19 Z M 3 11 L 21 11 M 14 11 L 14 19 M 9 5 L 9 11"},
    IconShape{"damaged", "M 3 5 L 12 5 L 10 10 L 14 12 L 11 19 L 3 19 Z M 16 5 L 21 5 L 21 19 L 15 19"},
    IconShape{"done", "M 4 13 L 9 18 L 20 6"},
    IconShape{"down", "M 12 4 L 12 19 M 5 13 L 12 20 L 19 13"},
    IconShape{"edit", "M 4 20 L 5 15 L 16 4 L 20 8 L 9 19 Z M 13 7 L 17 11"},
    IconShape{"filter", "M 3 5 L 21 5 L 14 13 L 14 20 L 10 18 L 10 13 Z"},
    IconShape{"flip",
              "M 3 12 L 21 12 M 6 8 L 6 4 L 18 4 L 18 8 M 15 6 L 18 9 L 21 6 M 6 16 L 6 20 L 18 20 L 18 16"},
    IconShape{"folding", "M 3 18 L 13 18 L 20 7 M 20 7 L 16 5 M 13 18 L 21 18"},
    IconShape{"forward", "M 4 12 L 19 12 M 13 5 L 20 12 L 13 19"},
    IconShape{"hold", "M 8 4 L 8 20 M 16 4 L 16 20"},
    IconShape{"house", "M 3 12 L 12 4 L 21 12 M 6 10 L 6 20 L 18 20 L 18 10 M 10 20 L 10 14 L 14 14 L 14 20"},
    IconShape{"informs", "O 12 12 9 M 12 11 L 12 17 M 12 7 L 12 8"},
    IconShape{"loads",
              "M 2 6 L 14 6 L 14 17 L 2 17 Z M 14 10 L 19 10 L 22 13 L 22 17 L 14 17 O 7 18 2 O 18 18 2"},
    IconShape{"measure",
              "M 2 8 L 22 8 L 22 16 L 2 16 Z M 6 8 L 6 12 M 10 8 L 10 13 M 14 8 L 14 12 M 18 8 L 18 13"},
    IconShape{"menu", "M 3 6 L 21 6 M 3 12 L 21 12 M 3 18 L 21 18"},
    IconShape{"more", "M 11 5 L 13 5 M 11 12 L 13 12 M 11 19 L 13 19"},
    IconShape{"open", "M 3 20 L 3 5 L 9 5 L 11 8 L 20 8 L 20 11 M 3 20 L 7 11 L 23 11 L 19 20 Z"},
    IconShape{"orders", "M 5 3 L 15 3 L 19 7 L 19 21 L 5 21 Z M 9 11 L 15 11 M 9 15 L 15 15"},
    IconShape{"photo", "M 3 4 L 21 4 L 21 20 L 3 20 Z M 3 17 L 9 11 L 13 15 L 16 12 L 21 17 M 15 8 L 17 8"},
    IconShape{"plan", "M 4 4 L 20 4 L 20 14 L 13 14 L 13 20 L 4 20 Z"},
    IconShape{
        "print",
        "M 7 9 L 7 3 L 17 3 L 17 9 M 7 17 L 3 17 L 3 9 L 21 9 L 21 17 L 17 17 M 7 14 L 17 14 L 17 21 L 7 21 Z"},
    IconShape{"receipts", "M 5 3 L 19 3 L 19 21 L 15.5 19 L 12 21 L 8.5 19 L 5 21 Z M 8 11 L 11 14 L 16 8"},
    IconShape{"redo", "M 20 9 L 9 9 L 4 14 L 4 19 M 15 4 L 20 9 L 15 14"},
    IconShape{"remove", "M 4 12 L 20 12"},
    IconShape{
        "rules",
        "M 5 3 L 19 3 L 19 21 L 5 21 Z M 8 8 L 9.5 9.5 L 12 6.5 M 14 8 L 16 8 M 8 15 L 9.5 16.5 L 12 13.5 M 14 15 L 16 15"},
    IconShape{"schedule", "M 3 3 L 3 21 L 21 21 M 6 7 L 13 7 M 9 12 L 18 12 M 13 17 L 20 17"},
    IconShape{
        "scrap",
        "M 4 6 L 20 6 M 9 6 L 9 3 L 15 3 L 15 6 M 6 6 L 7 21 L 17 21 L 18 6 M 10 11 L 10 16 M 14 11 L 14 16"},
    IconShape{"search", "O 10 10 6 M 15 15 L 21 21"},
    IconShape{"send", "M 3 12 L 21 4 L 16 21 L 11 14 Z M 11 14 L 21 4"},
    IconShape{
        "settings",
        "M 3 7 L 8 7 M 14 7 L 21 7 M 8 4 L 14 4 L 14 10 L 8 10 Z M 3 17 L 12 17 M 18 17 L 21 17 M 12 14 L 18 14 L 18 20 L 12 20 Z"},
    IconShape{"short", "M 4 5 L 20 5 L 20 12 M 4 5 L 4 19 L 12 19 M 15 16 L 21 22 M 21 16 L 15 22"},
    IconShape{"spin", "A 12 12 8 40 280 M 18 1 L 18 7 L 12 7"},
    IconShape{"stock", "O 9 13 7 O 9 13 2 M 9 20 L 22 20"},
    IconShape{
        "sun",
        "O 12 12 4 M 12 2 L 12 4 M 12 20 L 12 22 M 2 12 L 4 12 M 20 12 L 22 12 M 5 5 L 6 6 M 18 18 L 19 19 M 19 5 L 18 6 M 5 19 L 6 18"},
    IconShape{"trim", "M 3 6 L 10 6 L 10 15 L 20 15 L 20 20 L 17 20"},
    IconShape{"undo", "M 4 9 L 15 9 L 20 14 L 20 19 M 9 4 L 4 9 L 9 14"},
    IconShape{"up", "M 12 20 L 12 5 M 5 11 L 12 4 L 19 11"},
    IconShape{"warns", "M 12 3 L 22 20 L 2 20 Z M 12 10 L 12 14 M 12 16.5 L 12 17.5"},
    IconShape{"wrong", "M 3 6 L 9 6 L 9 14 L 15 14 M 21 18 L 15 18 L 15 10 M 18 3 L 18 6 M 18 8 L 18 8.6"},
};

QPainterPath pathOf(const std::string& strokes)
{
    QPainterPath path;
    std::istringstream words(strokes);
    char act = 0;
    while (words >> act) {
        double x = 0.0, y = 0.0, radius = 0.0, start = 0.0, sweep = 0.0;
        if (act == 'Z') {
            path.closeSubpath();
            continue;
        }
        words >> x >> y;
        if (act == 'M')
            path.moveTo(x, y);
        if (act == 'L')
            path.lineTo(x, y);
        if (act == 'O') {
            words >> radius;
            path.addEllipse(QPointF(x, y), radius, radius);
        }
        if (act == 'A') {
            words >> radius >> start >> sweep;
            const QRectF around(x - radius, y - radius, 2.0 * radius, 2.0 * radius);
            path.arcMoveTo(around, start);
            path.arcTo(around, start, sweep);
        }
    }
    return path;
}

} // namespace

QPainterPath iconPath(const QString& name)
{
    const auto* found = std::find_if(shapes.begin(), shapes.end(), [&name](const IconShape& shape) {
        return name == QLatin1String(shape.name);
    });
    return found == shapes.end() ? QPainterPath() : pathOf(found->strokes);
}

QStringList iconNames()
{
    QStringList names;
    for (const IconShape& shape : shapes)
        names.append(QLatin1String(shape.name));
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace lapwright::look
