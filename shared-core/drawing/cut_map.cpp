#include "drawing/cut_map.h"

#include "drawing/cut_map_scale.h"
#include "drawing/cut_map_words.h"
#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <utility>

namespace lapwright::drawing {

namespace {

constexpr double margin = 8.0;
constexpr double headHeight = 19.2;
constexpr double bareHead = 4.0;
constexpr double sideRoom = 27.0;
constexpr double topRoom = 10.0;
constexpr double footHeight = 22.0;
constexpr double bareFoot = 8.0;
constexpr double rowHeight = 3.6;
/// Positions moved apart to at least `step`, as little as possible, in their order, from `least` on.
std::vector<double> spread(std::vector<double> wanted, double step, double least)
{
    double next = least;
    for (double& at : wanted) {
        at = std::max(at, next);
        next = at + step;
    }
    return wanted;
}

/// Where the sheet may lie on the page.
Rectangle roomOn(const CutMapPicture& picture, double edge)
{
    return {edge + sideRoom, edge + (picture.framed ? headHeight : bareHead) + topRoom,
            inMillimetres(picture.width) - edge - sideRoom,
            inMillimetres(picture.height) - edge - (picture.framed ? footHeight : bareFoot)};
}

class MapPainter {
public:
    MapPainter(const cutting::Problem& problem, const cutting::Plan& plan, std::size_t index,
               const CutMapPicture& picture)
        : problem_(problem), plan_(plan), index_(index), pattern_(plan.patterns[index]), picture_(picture),
          words_(problem, plan, index, picture), pageWidth_(inMillimetres(picture.width)),
          margin_(picture.framed ? margin : 1.5),
          scale_(problem, pattern_, roomOn(picture, margin_), picture.framed)
    {
    }

    DisplayList paint()
    {
        head();
        drawStock();
        for (std::size_t i = 0; i < pattern_.strips.size(); ++i)
            drawStrip(i);
        drawRemnants();
        shapes_.emplace_back(box(Role::Stock, scale_.sheet(), Stroke{0.5, Dash::Solid, {}}, std::nullopt));
        if (crosswise())
            nameCrossStrips();
        else
            nameStrips();
        const double bottom = foot();
        DisplayList list;
        list.width = picture_.width;
        list.height = std::max(picture_.height, nearestFromMillimetres(std::ceil(bottom + margin_)));
        list.title = words_.number();
        list.description = words_.description();
        list.shapes = std::move(shapes_);
        return list;
    }

private:
    [[nodiscard]] bool crosswise() const { return pattern_.order == cutting::CutOrder::LengthsFirst; }
    [[nodiscard]] double kerf() const { return inMillimetres(problem_.rules().kerf); }

    void head()
    {
        if (!picture_.framed) {
            shapes_.emplace_back(words(Role::Label,
                                       shortened(words_.facts() + " \xC2\xB7 " + words_.orderOfCuts(), 2.6,
                                                 pageWidth_ - 2.0 * margin_),
                                       {margin_, margin_ + 2.6}, 2.6));
            return;
        }
        const double room = pageWidth_ - 2.0 * margin_;
        shapes_.emplace_back(words(Role::Title, shortened(words_.title(), 5.0, room, true),
                                   {margin_, margin_ + 5.0}, 5.0, Anchor::Start, true));
        shapes_.emplace_back(
            words(Role::Label, shortened(words_.facts(), 3.2, room), {margin_, margin_ + 10.4}, 3.2));
        shapes_.emplace_back(
            words(Role::Label, shortened(words_.orderOfCuts(), 3.2, room), {margin_, margin_ + 14.6}, 3.2));
        shapes_.emplace_back(
            line(Role::Note, {margin_, margin_ + 17.0}, {pageWidth_ - margin_, margin_ + 17.0}, 0.2));
    }

    /// Everything is waste until something better lies on it.
    void drawStock()
    {
        shapes_.emplace_back(
            box(Role::Waste, scale_.sheet(), std::nullopt, Fill{true, std::nullopt, Hatch::Crossed}));
        const Rectangle& sheet = scale_.sheet();
        const double row = sheet.top - (crosswise() ? 9.0 : 2.6);
        const std::string whole = words_.lengthOf(pattern_.length);
        shapes_.emplace_back(words(Role::Note, words_.said("lead end"), {sheet.left - 3.6, sheet.top - 2.4},
                                   2.4, Anchor::End));
        const double half = textWidth(whole, 3.0) / 2.0 + 1.0;
        const Point middle{sheet.centre().x, row};
        shapes_.emplace_back(words(Role::Dimension, whole, middle + Point{0.0, 1.0}, 3.0, Anchor::Middle));
        if (sheet.width() > 2.0 * half + 6.0) {
            addArrow(shapes_, Role::Dimension, middle - Point{half, 0.0}, {sheet.left, row}, 0.18, 1.8);
            addArrow(shapes_, Role::Dimension, middle + Point{half, 0.0}, {sheet.right, row}, 0.18, 1.8);
        }
    }

    void drawStrip(std::size_t index)
    {
        const cutting::Strip& strip = pattern_.strips[index];
        const double start = inMillimetres(strip.position), wide = inMillimetres(strip.width);
        double at = crosswise() ? scale_.usable().top : scale_.usable().left;
        for (const cutting::Crosscut& cut : strip.crosscuts) {
            const cutting::Lying lying =
                cutting::lyingIn(pattern_.order, problem_.blanks()[cut.blank], cut.turned);
            const double fills = inMillimetres(lying.across), takes = inMillimetres(lying.along);
            for (std::int64_t i = 0; i < cut.count; ++i) {
                drawBlank(index, cut.blank, lying.across < strip.width,
                          crosswise() ? scale_.onPage(start, at, fills, takes)
                                      : scale_.onPage(at, start, takes, fills));
                at += takes + kerf();
            }
        }
        const Rectangle whole =
            crosswise() ? scale_.onPage(start, scale_.usable().top, wide, scale_.usable().height())
                        : scale_.onPage(scale_.usable().left, start, scale_.usable().width(), wide);
        shapes_.emplace_back(box(Role::Strip, whole, Stroke{0.35, Dash::Solid, {}}, std::nullopt));
    }

    /// A blank `narrower` than its strip is cut once more, so its girth stands there too.
    void drawBlank(std::size_t strip, std::size_t blank, bool narrower, const Rectangle& place)
    {
        shapes_.emplace_back(box(Role::Blank, place, Stroke{0.25, Dash::Solid, {}}, Fill{}));
        const std::string name = words_.nameOf(blank);
        const cutting::Blank& cut = problem_.blanks()[blank];
        const std::string size =
            narrower ? words_.sizeOf(cut.girth, cut.length) : words_.lengthOf(cut.length);
        const Written written = writeInside(place, name, size);
        if (written == Written::Nothing || (narrower && written == Written::Name)) {
            auto& missing = unnamed_[strip];
            const std::string entry = name + " " + size;
            if (!missing.empty() && missing.back().first == entry)
                ++missing.back().second;
            else
                missing.emplace_back(entry, 1);
        }
    }

    enum class Written { Nothing, Name, Both };

    /// Name and length, on two lines or one, or along the long side of an upright place; the name in bold.
    Written writeInside(const Rectangle& place, const std::string& name, const std::string& size)
    {
        const bool upright =
            place.height() > place.width() && textWidth(name, 2.6, true) > place.width() - 1.2;
        const double along = upright ? place.height() : place.width();
        const double across = upright ? place.width() : place.height();
        // Turned text reads from below.
        const double rotation = upright ? -std::acos(0.0) : 0.0;
        const Point down = upright ? Point{1.0, 0.0} : Point{0.0, 1.0};
        const Point on = upright ? Point{0.0, -1.0} : Point{1.0, 0.0};
        const auto put = [&](Point shift, Role role, const std::string& text, double height, bool bold) {
            shapes_.emplace_back(
                textIn({place.centre() + shift, textWidth(text, height, bold) / 2.0, height / 2.0, rotation},
                       role, text, height, bold));
        };
        const double nameWidth = textWidth(name, 2.8, true), sizeWidth = textWidth(size, 2.4);
        if (across >= 6.8 && along >= std::max(nameWidth, sizeWidth) + 1.6) {
            put(-1.35 * down, Role::Label, name, 2.8, true);
            put(1.5 * down, Role::Dimension, size, 2.4, false);
            return Written::Both;
        }
        const double height = across >= 3.8 ? 2.6 : 2.1;
        const double wide = textWidth(name, height, true), gap = 1.5, rest = textWidth(size, height);
        if (across < height + 0.7 || along < wide + 1.4)
            return Written::Nothing;
        if (along < wide + gap + rest + 1.6) {
            put({}, Role::Label, name, height, true);
            return Written::Name;
        }
        put(on * (-(rest + gap) / 2.0), Role::Label, name, height, true);
        put(on * ((wide + gap) / 2.0), Role::Dimension, size, height, false);
        return Written::Both;
    }

    void drawRemnants()
    {
        for (const cutting::NewRemnant& remnant : plan_.remnants) {
            if (remnant.pattern != index_)
                continue;
            const Rectangle place =
                scale_.onPage(inMillimetres(remnant.along), inMillimetres(remnant.across),
                              inMillimetres(remnant.length), inMillimetres(remnant.width));
            shapes_.emplace_back(box(Role::Remnant, place, Stroke{0.35, Dash::Dashed, {}},
                                     Fill{true, std::nullopt, Hatch::Rising}));
            const std::string size = words_.sizeOf(remnant.width, remnant.length);
            const double needed = std::max(textWidth(remnant.label, 2.8, true), textWidth(size, 2.4)) + 2.0;
            const Point middle = place.centre();
            Rectangle plate{middle.x - needed / 2.0, middle.y - 3.6, middle.x + needed / 2.0, middle.y + 3.6};
            const bool roomy = place.grown(-0.4).contains(plate);
            if (!roomy) {
                plate.top = middle.y - 1.7;
                plate.bottom = middle.y + 1.7;
            }
            if (!place.grown(-0.2).contains(plate)) {
                keptBelow_.push_back(remnant.label + " " + size);
                continue;
            }
            shapes_.emplace_back(box(Role::Remnant, plate, std::nullopt, Fill{}));
            shapes_.emplace_back(textIn({middle - Point{0.0, roomy ? 1.5 : 0.0}, needed / 2.0, 1.4, 0.0},
                                        Role::Label, remnant.label, 2.8, true));
            if (roomy)
                shapes_.emplace_back(
                    textIn({middle + Point{0.0, 1.6}, needed / 2.0, 1.2, 0.0}, Role::Dimension, size, 2.4));
            else
                keptBelow_.push_back(remnant.label + " " + size);
        }
    }

    void number(Point centre, std::size_t value)
    {
        shapes_.emplace_back(Circle{Role::Label, centre, 1.75, Stroke{0.2, Dash::Solid, {}}, std::nullopt});
        const std::string text = std::to_string(value);
        const double size = text.size() > 2 ? 1.6 : 2.2;
        shapes_.emplace_back(textIn({centre, 1.2, size / 2.0, 0.0}, Role::Label, text, size));
    }

    /// Numbers and widths to the right of the strips, knife settings to the left.
    void nameStrips()
    {
        const Rectangle& sheet = scale_.sheet();
        std::vector<double> middles, edges;
        std::vector<Length> settings;
        for (const cutting::Strip& strip : pattern_.strips) {
            middles.push_back(scale_.y(inMillimetres(strip.position) + inMillimetres(strip.width) / 2.0));
            settings.push_back(strip.position + strip.width);
            edges.push_back(scale_.y(inMillimetres(settings.back())));
        }
        const std::vector<double> rows = spread(middles, rowHeight + 0.2, sheet.top);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            shapes_.emplace_back(
                line(Role::Leader, {sheet.right + 0.4, middles[i]}, {sheet.right + 2.6, rows[i]}, 0.15));
            number({sheet.right + 4.6, rows[i]}, i + 1);
            shapes_.emplace_back(words(Role::Dimension, words_.lengthOf(pattern_.strips[i].width),
                                       {sheet.right + 7.4, rows[i] + 0.9}, 2.6));
        }
        const std::vector<double> knives = spread(edges, 3.2, sheet.top);
        for (std::size_t i = 0; i < knives.size(); ++i) {
            shapes_.emplace_back(
                line(Role::Leader, {sheet.left - 0.4, edges[i]}, {sheet.left - 3.0, knives[i]}, 0.15));
            shapes_.emplace_back(words(Role::Dimension, words_.lengthOf(settings[i]),
                                       {sheet.left - 3.6, knives[i] + 0.8}, 2.4, Anchor::End));
        }
        bottom_ = std::max({sheet.bottom, rows.back() + 2.0, knives.back() + 2.0});
    }

    /// Crosscut first: numbers above the parts, their lengths and the stop settings turned beside the cuts.
    void nameCrossStrips()
    {
        const Rectangle& sheet = scale_.sheet();
        std::vector<double> middles, edges;
        for (const cutting::Strip& strip : pattern_.strips) {
            middles.push_back(scale_.x(inMillimetres(strip.position) + inMillimetres(strip.width) / 2.0));
            edges.push_back(scale_.x(inMillimetres(strip.position + strip.width)));
        }
        const std::vector<double> columns = spread(middles, 4.0, sheet.left);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            shapes_.emplace_back(
                line(Role::Leader, {middles[i], sheet.top - 0.4}, {columns[i], sheet.top - 2.0}, 0.15));
            number({columns[i], sheet.top - 4.0}, i + 1);
        }
        double deepest = 0.0;
        const std::vector<double> stops = spread(edges, 3.2, sheet.left);
        for (std::size_t i = 0; i < stops.size(); ++i) {
            const cutting::Strip& strip = pattern_.strips[i];
            const std::string text =
                words_.lengthOf(strip.position + strip.width) + "  (" + words_.lengthOf(strip.width) + ")";
            shapes_.emplace_back(
                line(Role::Leader, {edges[i], sheet.bottom + 0.4}, {stops[i], sheet.bottom + 2.4}, 0.15));
            Text turned =
                words(Role::Dimension, text, {stops[i] + 0.8, sheet.bottom + 3.2}, 2.4, Anchor::End);
            turned.rotation = std::acos(0.0);
            shapes_.emplace_back(turned);
            deepest = std::max(deepest, textWidth(text, 2.4));
        }
        bottom_ = sheet.bottom + 4.0 + deepest;
    }

    /// What the hatches mean, the scale, and what found no room; returns how far down it reaches.
    double foot()
    {
        double row =
            std::max(bottom_ + 6.0, inMillimetres(picture_.height) - margin_ - (picture_.framed ? 9.0 : 1.0));
        double x = margin_;
        const auto sample = [&](Role role, Hatch hatch, Dash dash, const std::string& name) {
            shapes_.emplace_back(box(role, {x, row - 3.0, x + 7.0, row}, Stroke{0.25, dash, {}},
                                     Fill{true, std::nullopt, hatch}));
            shapes_.emplace_back(words(Role::Note, name, {x + 8.4, row - 0.5}, 2.6));
            x += 12.0 + textWidth(name, 2.6);
        };
        sample(Role::Blank, Hatch::None, Dash::Solid, words_.said("blank"));
        sample(Role::Remnant, Hatch::Rising, Dash::Dashed, words_.said("remnant, to be kept and labelled"));
        sample(Role::Waste, Hatch::Crossed, Dash::Solid, words_.said("waste"));
        const std::string stretched =
            scale_.stretch() > 1.0 ? words_.stretched(scale_.stretch()) : std::string();
        std::string scale = stretched;
        if (picture_.framed) {
            addScaleBar(shapes_, {x + 4.0, row - 0.8}, scale_.lengthwise(), 50.0,
                        picture_.style.unit == LengthUnit::Millimetres);
            scale = words_.said("lengthwise") + " " + scaleName(scale_.lengthwise()) +
                    (stretched.empty() ? "" : ", " + stretched);
        }
        shapes_.emplace_back(words(Role::Label, scale, {pageWidth_ - margin_, row - 0.5}, 2.6, Anchor::End));
        row += 4.4;
        std::vector<std::string> rows;
        for (const auto& [strip, missing] : unnamed_) {
            std::string text = words_.said("Strip") + " " + std::to_string(strip + 1) + ":";
            for (const auto& [entry, count] : missing)
                text += (text.back() == ':' ? " " : "; ") +
                        (count > 1 ? std::to_string(count) + " \xC3\x97 " + entry : entry);
            rows.push_back(text);
        }
        for (const std::string& kept : keptBelow_)
            rows.push_back(words_.said("Remnant") + ": " + kept);
        for (const std::string& text : rows)
            for (const std::string& part : wrapped(text, 2.6, pageWidth_ - 2.0 * margin_)) {
                shapes_.emplace_back(words(Role::Note, part, {margin_, row}, 2.6));
                row += rowHeight;
            }
        return row - 4.4;
    }

    const cutting::Problem& problem_;
    const cutting::Plan& plan_;
    std::size_t index_;
    const cutting::Pattern& pattern_;
    const CutMapPicture& picture_;
    CutMapWords words_;
    double pageWidth_;
    double margin_;
    CutMapScale scale_;
    double bottom_ = 0.0;
    std::vector<Shape> shapes_;
    std::map<std::size_t, std::vector<std::pair<std::string, std::int64_t>>> unnamed_;
    std::vector<std::string> keptBelow_;
};

} // namespace

DisplayList cutMap(const cutting::Problem& problem, const cutting::Plan& plan, std::size_t pattern,
                   const CutMapPicture& picture)
{
    return MapPainter(problem, plan, pattern, picture).paint();
}

} // namespace lapwright::drawing
