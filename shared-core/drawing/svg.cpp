#include "drawing/svg.h"

#include "drawing/palette.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <set>

namespace lapwright::drawing {

namespace {

/// Millimetres to the nearest micrometre, in plain decimals: the same text in every locale.
std::string number(double millimetres)
{
    const std::int64_t micrometres = std::llround(millimetres * 1000.0);
    const std::int64_t size = micrometres < 0 ? -micrometres : micrometres;
    std::string text = (micrometres < 0 ? "-" : "") + std::to_string(size / 1000);
    if (size % 1000 != 0) {
        std::string decimals = std::to_string(1000 + size % 1000).substr(1);
        decimals.erase(decimals.find_last_not_of('0') + 1);
        text += "." + decimals;
    }
    return text;
}

std::string hexadecimal(Colour colour)
{
    constexpr std::array<char, 17> digits = {"0123456789abcdef"};
    std::string text;
    for (const std::uint8_t channel : {colour.red, colour.green, colour.blue}) {
        text.push_back(digits[channel / 16U]);
        text.push_back(digits[channel % 16U]);
    }
    return text;
}

std::string escaped(const std::string& text)
{
    std::string safe;
    for (const char character : harmless(text)) {
        switch (character) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        default:
            safe.push_back(character);
        }
    }
    return safe;
}

std::string point(Point at)
{
    return number(at.x) + "," + number(at.y);
}

std::string attribute(const char* name, const std::string& value)
{
    return std::string(" ") + name + "=\"" + value + "\"";
}

const char* hatchName(Hatch hatch)
{
    switch (hatch) {
    case Hatch::None:
        return "";
    case Hatch::Rising:
        return "rising";
    case Hatch::Crossed:
        return "crossed";
    case Hatch::Dotted:
        return "dotted";
    }
    return "";
}

std::string strokeAttributes(const Stroke& stroke, Role role)
{
    std::string text = attribute("stroke", "#" + hexadecimal(stroke.colour.value_or(paperInk(role).line))) +
                       attribute("stroke-width", number(stroke.width));
    const double unitLength = std::max(stroke.width, 0.2);
    switch (stroke.dash) {
    case Dash::Solid:
        break;
    case Dash::Dashed:
        text += attribute("stroke-dasharray", number(6.0 * unitLength) + " " + number(4.0 * unitLength));
        break;
    case Dash::Dotted:
        text += attribute("stroke-dasharray", "0 " + number(5.0 * unitLength)) +
                attribute("stroke-linecap", "round");
        break;
    case Dash::DashDot:
        text +=
            attribute("stroke-dasharray", number(10.0 * unitLength) + " " + number(3.0 * unitLength) + " " +
                                              number(2.0 * unitLength) + " " + number(3.0 * unitLength));
        break;
    }
    return text;
}

class Writer {
public:
    std::string write(const DisplayList& list)
    {
        std::string shapes;
        for (const Shape& shape : list.shapes)
            shapes += std::visit([this](const auto& kind) { return draw(kind); }, shape);
        const std::string width = number(inMillimetres(list.width)),
                          height = number(inMillimetres(list.height));
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
               "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\"" +
               attribute("width", width + "mm") + attribute("height", height + "mm") +
               attribute("viewBox", "0 0 " + width + " " + height) +
               " font-family=\"'DejaVu Sans',sans-serif\" stroke-linejoin=\"round\">\n<title>" +
               escaped(list.title) + "</title>\n<desc>" + escaped(list.description) + "</desc>\n" +
               definitions() + "<rect" + attribute("width", width) + attribute("height", height) +
               attribute("fill", "#ffffff") + "/>\n" + shapes + "</svg>\n";
    }

private:
    [[nodiscard]] std::string definitions() const
    {
        std::string text;
        for (const auto& [hatch, colour] : hatches_)
            text += definition(hatch, colour);
        return text.empty() ? text : "<defs>\n" + text + "</defs>\n";
    }

    static std::string definition(Hatch hatch, const std::string& colour)
    {
        std::string marks;
        if (hatch == Hatch::Dotted)
            marks = "<circle cx=\"0.75\" cy=\"0.75\" r=\"0.25\" fill=\"#" + colour + "\"/>";
        if (hatch == Hatch::Rising || hatch == Hatch::Crossed)
            marks = "<path d=\"M0,0V2\" stroke-width=\"0.35\" stroke=\"#" + colour + "\"/>";
        if (hatch == Hatch::Crossed)
            marks += "<path d=\"M0,0H2\" stroke-width=\"0.35\" stroke=\"#" + colour + "\"/>";
        const std::string size = hatch == Hatch::Dotted ? "1.5" : "2";
        return "<pattern id=\"" + std::string(hatchName(hatch)) + "-" + colour +
               "\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"" +
               attribute("width", size) + attribute("height", size) + ">" + marks + "</pattern>\n";
    }

    /// One element, painted once for the ground and once more for a hatch over it.
    std::string element(const std::string& opening, Role role, const std::optional<Stroke>& stroke,
                        const std::optional<Fill>& fill)
    {
        std::string text = opening;
        text += attribute("fill", fill && fill->ground
                                      ? "#" + hexadecimal(fill->colour.value_or(paperInk(role).fill))
                                      : "none");
        if (stroke)
            text += strokeAttributes(*stroke, role);
        text += "/>\n";
        if (fill && fill->hatch != Hatch::None) {
            const std::string colour = hexadecimal(paperInk(role).line);
            hatches_.insert({fill->hatch, colour});
            text += opening +
                    attribute("fill", "url(#" + std::string(hatchName(fill->hatch)) + "-" + colour + ")") +
                    "/>\n";
        }
        return text;
    }

    std::string draw(const Path& path)
    {
        if (path.points.size() < 2)
            return {};
        std::string data;
        for (const Point& at : path.points)
            data += (data.empty() ? "M" : "L") + point(at);
        if (path.closed)
            data += "Z";
        return element("<path" + attribute("d", data), path.role, path.stroke, path.fill);
    }

    std::string draw(const Circle& circle)
    {
        return element("<circle" + attribute("cx", number(circle.centre.x)) +
                           attribute("cy", number(circle.centre.y)) + attribute("r", number(circle.radius)),
                       circle.role, circle.stroke, circle.fill);
    }

    std::string draw(const Arc& arc)
    {
        const Point from = arc.centre + arc.radius * direction(-arc.start);
        const Point to = arc.centre + arc.radius * direction(-arc.start - arc.sweep);
        const std::string flags = std::string(std::abs(arc.sweep) > std::acos(-1.0) ? "1" : "0") + " " +
                                  (arc.sweep > 0.0 ? "0" : "1");
        return element("<path" + attribute("d", "M" + point(from) + "A" + number(arc.radius) + " " +
                                                    number(arc.radius) + " 0 " + flags + " " + point(to)),
                       arc.role, arc.stroke, std::nullopt);
    }

    std::string draw(const Text& text)
    {
        std::string element = "<text" + attribute("x", number(text.at.x)) +
                              attribute("y", number(text.at.y)) + attribute("font-size", number(text.size)) +
                              attribute("fill", "#" + hexadecimal(paperInk(text.role).line));
        if (text.bold)
            element += attribute("font-weight", "bold");
        if (text.anchor != Anchor::Start)
            element += attribute("text-anchor", text.anchor == Anchor::Middle ? "middle" : "end");
        if (text.rotation != 0.0)
            element += attribute("transform", "rotate(" + number(-text.rotation * 180.0 / std::acos(-1.0)) +
                                                  " " + number(text.at.x) + " " + number(text.at.y) + ")");
        return element + ">" + escaped(text.text) + "</text>\n";
    }

    /// Which hatches in which colours the shapes use, in a fixed order.
    std::set<std::pair<Hatch, std::string>> hatches_;
};

} // namespace

std::string toSvg(const DisplayList& list)
{
    return Writer().write(list);
}

} // namespace lapwright::drawing
