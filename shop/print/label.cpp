#include "print/label.h"

#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"
#include "print/lines.h"
#include "print/small_section.h"
#include "speech/spoken.h"

#include <algorithm>
#include <cmath>

namespace lapwright::print {

using drawing::Anchor;
using drawing::Rectangle;
using drawing::Role;
using drawing::Shape;

namespace {

/// Kept free along a label's edges: what a label printer misses and a die cut shifts.
constexpr double edge = 2.2;
/// The label whose sizes of type all others are scaled from, and the least size still read on a rack.
constexpr double usualHeight = 50.0;
constexpr double leastType = 2.1;
/// What a code may take of the label's height before its modules go down to the least.
constexpr double codeShare = 0.5;
constexpr double gap = 1.6;

class LabelPainter {
public:
    LabelPainter(const Label& label, double width, double height)
        : label_(label), width_(width), height_(height), unit_(height / usualHeight)
    {
    }

    /// Adds to the page what stands on the label whose upper left corner is `corner`.
    void paint(drawing::Point corner, Page& page)
    {
        corner_ = corner;
        placeCode(page);
        rightColumn();
        leftColumn();
        for (Shape& shape : shapes_)
            page.list.shapes.push_back(drawing::placed(std::move(shape), corner));
    }

private:
    [[nodiscard]] double size(double atUsualHeight) const
    {
        return std::max(leastType, atUsualHeight * unit_);
    }

    /// Whole printer dots to the module, as many as `room` takes; 0 where it takes too few.
    static double moduleIn(double room, std::size_t modules)
    {
        const double dots = std::floor(room / (static_cast<double>(modules) * printerDot) + 1e-9);
        return dots * printerDot >= leastModule - 1e-9 ? dots * printerDot : 0.0;
    }

    void placeCode(Page& page)
    {
        columnLeft_ = width_ - edge - 22.0 * unit_;
        columnTop_ = edge;
        const auto code = codeOf(label_.code);
        if (!code) {
            codeLeftOut_ = !label_.code.empty();
            return;
        }
        const std::size_t modules = code->size + 2 * quietModules;
        double module = moduleIn(height_ * codeShare, modules);
        if (module == 0.0)
            module = moduleIn(height_ - 2.0, modules);
        if (module == 0.0) {
            codeLeftOut_ = true;
            return;
        }
        const double whole = module * static_cast<double>(modules), quiet = module * quietModules;
        // On the printer's own dots, seen from the edge of the label.
        const auto onDots = [](double at) { return std::floor(at / printerDot) * printerDot; };
        const drawing::Point dark{onDots(width_ - 1.0 - whole + quiet), onDots(1.0 + quiet)};
        page.codes.push_back({*code, corner_ + dark, module});
        columnLeft_ = std::min(columnLeft_, dark.x - quiet);
        columnTop_ = dark.y + module * static_cast<double>(code->size) + quiet;
    }

    void rightColumn()
    {
        Rectangle rest{columnLeft_, columnTop_, width_ - edge, height_ - edge};
        if (label_.twoPeople) {
            const std::string words = spoken("TWO PEOPLE");
            const double high = 5.4 * unit_;
            const double type = drawing::fittingSize(words, 3.4 * unit_, rest.width() - 2.0, true);
            const Rectangle flag{rest.left, rest.bottom - high, rest.right, rest.bottom};
            shapes_.emplace_back(drawing::box(Role::Label, flag,
                                              drawing::Stroke{0.5, drawing::Dash::Solid, {}}, std::nullopt));
            shapes_.emplace_back(drawing::textIn({flag.centre(), flag.width() / 2.0, high / 2.0, 0.0},
                                                 Role::Label, words, type, true));
            rest.bottom = flag.top - 1.0;
        }
        if (label_.profile)
            addSmallSection(*label_.profile, label_.thickness, rest.grown(-0.6), shapes_);
    }

    void leftColumn()
    {
        double foot = height_ - edge;
        const auto above = [&](const std::string& words, double type, bool bold) {
            if (words.empty())
                return;
            put(words, foot - drawing::descentInEm * type, type, bold);
            foot -= type * lineInEm;
        };
        above((codeLeftOut_ ? spoken("too much for a code") + " \xC2\xB7 " : std::string()) + label_.foot,
              size(2.3), false);
        above(label_.job, size(3.2), true);
        above(label_.material, size(3.6), true);
        double top = markRow(edge);
        const double type = size(3.5), line = type * lineInEm;
        // Where it goes takes a second line only if every line of what it is still has one.
        double whereType = size(4.4);
        const double lines = static_cast<double>(label_.lines.size());
        const bool roomy = foot - top >= 2.0 * whereType * lineInEm + lines * line;
        // On one line it is rather smaller than shortened.
        if (!roomy && !label_.where.empty())
            whereType = std::clamp((columnLeft_ - gap - edge) /
                                       drawing::widthInEm(drawing::harmless(label_.where), true),
                                   size(3.2), whereType);
        top = block(label_.where, top, whereType, roomy ? 2 : 1, true);
        for (std::size_t i = 0; i < label_.lines.size(); ++i) {
            const double others = static_cast<double>(label_.lines.size() - 1 - i) * line;
            const auto fit = static_cast<std::size_t>(std::max(0.0, (foot - top + 1e-9) / line));
            const auto fitWithOthers =
                static_cast<std::size_t>(std::max(0.0, (foot - top - others + 1e-9) / line));
            if (fit > 0)
                top = block(label_.lines[i], top, type, std::max<std::size_t>(1, fitWithOthers), i == 0);
        }
    }

    /// The mark as large as its row takes it, and beside it what it counts; returns where the row ends.
    double markRow(double top)
    {
        const double most = 12.0 * unit_, besideType = size(4.6), room = columnLeft_ - gap - edge;
        const std::string beside =
            drawing::shortened(drawing::harmless(label_.beside), besideType, room * 0.45, true);
        const double besideRoom = beside.empty() ? 0.0 : drawing::textWidth(beside, besideType, true) + 3.0;
        const std::string clean = drawing::harmless(label_.mark);
        const double type = std::clamp((room - besideRoom) / std::max(0.1, drawing::widthInEm(clean, true)),
                                       5.0 * unit_, most);
        const std::string mark = drawing::shortened(clean, type, room - besideRoom, true);
        const double base = top + 0.76 * most;
        put(mark, base, type, true);
        if (!beside.empty())
            shapes_.emplace_back(drawing::words(Role::Label, beside, {columnLeft_ - gap, base}, besideType,
                                                Anchor::End, true));
        return top + most;
    }

    double block(const std::string& words, double top, double type, std::size_t most, bool bold)
    {
        if (words.empty())
            return top;
        for (const std::string& line : fewLinesOf(words, type, columnLeft_ - gap - edge, most, bold)) {
            put(line, top + 0.98 * type, type, bold);
            top += type * lineInEm;
        }
        return top;
    }

    void put(const std::string& words, double base, double type, bool bold)
    {
        shapes_.emplace_back(drawing::words(
            Role::Label,
            drawing::shortened(drawing::harmless(words), type, columnLeft_ - gap - edge + 1e-6, bold),
            {edge, base}, type, Anchor::Start, bold));
    }

    const Label& label_;
    double width_;
    double height_;
    double unit_;
    drawing::Point corner_;
    double columnLeft_ = 0.0;
    double columnTop_ = 0.0;
    bool codeLeftOut_ = false;
    std::vector<Shape> shapes_;
};

} // namespace

std::vector<Page> labelPages(const std::vector<Label>& labels, const LabelStock& stock)
{
    const auto perPage = static_cast<std::size_t>(stock.columns) * static_cast<std::size_t>(stock.rows);
    std::vector<Page> pages;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const auto place = static_cast<std::int64_t>(i % perPage);
        if (place == 0) {
            pages.emplace_back();
            pages.back().list.width = stock.pageWidth;
            pages.back().list.height = stock.pageHeight;
            pages.back().list.title = spoken("Labels");
        }
        const drawing::Point corner{inMillimetres(stock.left + stock.acrossStep * (place % stock.columns)),
                                    inMillimetres(stock.top + stock.downStep * (place / stock.columns))};
        LabelPainter(labels[i], inMillimetres(stock.width), inMillimetres(stock.height))
            .paint(corner, pages.back());
    }
    return pages;
}

} // namespace lapwright::print
