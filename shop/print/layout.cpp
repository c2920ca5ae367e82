#include "print/layout.h"

#include "drawing/marks.h"
#include "drawing/text.h"
#include "print/lines.h"
#include "print/table.h"
#include "print/type.h"
#include "speech/spoken.h"

#include <algorithm>

namespace lapwright::print {

using drawing::Anchor;
using drawing::Role;
using drawing::Shape;

namespace {

/// After a heading's text, before it, and after any other block, millimetres.
constexpr double afterHeading = 1.4;
constexpr double beforeHeading = 3.0;
constexpr double afterBlock = 3.0;
constexpr double factName = 27.0;
constexpr double factGap = 4.0;
constexpr double signatureHeight = 16.0;
constexpr double besideGap = 4.0;
constexpr std::size_t factColumns = 2;
constexpr std::size_t mostFactLines = 12;
/// Kept free beside a picture of a whole page, for the heading over it.
constexpr double headingRoom = 12.0;

class Layouter {
public:
    Layouter(const Sheet& sheet, const Paper& paper)
        : sheet_(sheet), paper_(paper), left_(pageMargin), width_(contentWidth(paper)),
          top_(pageMargin + headHeight), bottom_(top_ + contentHeight(paper)), at_(top_)
    {
    }

    std::vector<Page> layOut()
    {
        for (std::size_t index = 0; index < sheet_.blocks.size(); ++index) {
            makeRoom(index);
            std::visit([this](const auto& content) { put(content); }, sheet_.blocks[index].content);
        }
        close();
        furnish();
        return std::move(pages_);
    }

private:
    [[nodiscard]] double room() const { return bottom_ - at_; }
    [[nodiscard]] bool fresh() const { return at_ == top_; }

    void close()
    {
        Page page;
        page.list.width = paper_.width;
        page.list.height = paper_.height;
        page.list.title = sheet_.title;
        page.list.description = sheet_.title + ", " + sheet_.subject;
        page.list.shapes = std::move(shapes_);
        pages_.push_back(std::move(page));
        shapes_.clear();
        at_ = top_;
    }

    /// A new page where a block and those it stands with have no room any more and would have it there.
    void makeRoom(std::size_t index)
    {
        if (index > 0 && sheet_.blocks[index - 1].withNext)
            return;
        double needed = 0.0;
        for (std::size_t block = index; block < sheet_.blocks.size(); ++block) {
            needed += std::visit([this](const auto& content) { return least(content); },
                                 sheet_.blocks[block].content);
            if (!sheet_.blocks[block].withNext)
                break;
        }
        if (!fresh() && needed > room())
            close();
    }

    // What each kind of block needs on the page where it begins, and how it is put there.

    [[nodiscard]] double least(const Heading& heading) const
    {
        const auto lines = linesOf(heading.text, headingSize, width_, true).size();
        return beforeHeading + static_cast<double>(lines) * headingSize * lineInEm + afterHeading;
    }
    void put(const Heading& heading)
    {
        if (!fresh())
            at_ += beforeHeading;
        text(heading.text, headingSize, Role::Title, true);
        at_ += afterHeading;
    }

    [[nodiscard]] double least(const Paragraph& paragraph) const
    {
        return static_cast<double>(linesOf(paragraph.text, bodySize, width_, bold(paragraph.tone)).size()) *
                   bodySize * lineInEm +
               afterBlock / 2.0;
    }
    void put(const Paragraph& paragraph)
    {
        text(paragraph.text, bodySize, roleOf(paragraph.tone), bold(paragraph.tone));
        at_ += afterBlock / 2.0;
    }

    [[nodiscard]] static bool bold(Tone tone) { return tone == Tone::Strong || tone == Tone::Caution; }

    [[nodiscard]] double factWidth() const { return (width_ - factGap) / factColumns; }
    [[nodiscard]] std::vector<std::string> valueLines(const Fact& fact) const
    {
        return fewLinesOf(fact.value, bodySize, factWidth() - factName, mostFactLines, true);
    }
    [[nodiscard]] double rowHeight(const Facts& facts, std::size_t row) const
    {
        std::size_t most = 1;
        for (std::size_t i = row; i < std::min(row + factColumns, facts.facts.size()); ++i)
            most = std::max(most, valueLines(facts.facts[i]).size());
        return static_cast<double>(most) * bodySize * lineInEm + 0.8;
    }
    [[nodiscard]] double least(const Facts& facts) const
    {
        double height = afterBlock;
        for (std::size_t row = 0; row < facts.facts.size(); row += factColumns)
            height += rowHeight(facts, row);
        return height;
    }
    void put(const Facts& facts)
    {
        for (std::size_t row = 0; row < facts.facts.size(); row += factColumns) {
            const double height = rowHeight(facts, row);
            if (height > room() && !fresh())
                close();
            for (std::size_t i = row; i < std::min(row + factColumns, facts.facts.size()); ++i)
                putFact(facts.facts[i], left_ + (factWidth() + factGap) * static_cast<double>(i - row));
            at_ += height;
        }
        at_ += afterBlock;
    }
    void putFact(const Fact& fact, double left)
    {
        double base = at_ + firstBaseInEm * bodySize;
        shapes_.emplace_back(drawing::words(
            Role::Note, drawing::shortened(drawing::harmless(fact.name), smallSize, factName - 1.0),
            {left, base}, smallSize));
        for (const std::string& line : valueLines(fact)) {
            shapes_.emplace_back(
                drawing::words(Role::Label, line, {left + factName, base}, bodySize, Anchor::Start, true));
            base += bodySize * lineInEm;
        }
    }

    [[nodiscard]] double least(const Table& table) const
    {
        const SetTable set(table, width_, bottom_ - top_);
        double height = set.headHeight();
        for (std::size_t row = 0; row < set.rows().size(); ++row) {
            height += set.rows()[row].height;
            if (set.mayBreakBefore(row + 1))
                break;
        }
        return height;
    }
    void put(const Table& table)
    {
        const SetTable set(table, width_, bottom_ - top_);
        for (std::size_t row = 0; row < set.rows().size();) {
            std::size_t next = set.breakAfter(row, room());
            if (next == row && !fresh()) {
                close();
                continue;
            }
            if (next == row)
                next = set.breakAnywhere(row, room());
            at_ = set.draw(row, next, left_, at_, shapes_);
            row = next;
        }
        at_ += afterBlock;
    }

    /// Paper per paper: less than 1 where the picture is larger than a page.
    [[nodiscard]] double scaleOf(const Picture& picture) const
    {
        return std::min({1.0, width_ / inMillimetres(picture.list.width),
                         (bottom_ - top_ - headingRoom) / inMillimetres(picture.list.height)});
    }
    [[nodiscard]] double least(const Picture& picture) const { return heightOf(picture) + afterBlock; }
    [[nodiscard]] double heightOf(const Picture& picture) const
    {
        return scaleOf(picture) * inMillimetres(picture.list.height);
    }
    void put(const Picture& picture)
    {
        const double scale = scaleOf(picture), height = heightOf(picture);
        if (height > room() && !fresh())
            close();
        const double left = left_ + (width_ - scale * inMillimetres(picture.list.width)) / 2.0;
        for (const Shape& shape : picture.list.shapes)
            shapes_.push_back(drawing::placed(shape, {left, at_}, scale));
        at_ += height + afterBlock;
    }

    [[nodiscard]] static double least(const Signatures&) { return signatureHeight; }
    void put(const Signatures& signatures)
    {
        if (signatureHeight > room() && !fresh())
            close();
        const auto count = static_cast<double>(signatures.captions.size());
        const double gap = 6.0, each = (width_ - gap * (count - 1.0)) / count, line = at_ + 10.0;
        double left = left_;
        for (const std::string& caption : signatures.captions) {
            shapes_.emplace_back(drawing::line(Role::Label, {left, line}, {left + each, line}, 0.25));
            shapes_.emplace_back(drawing::words(Role::Note, drawing::shortened(caption, smallSize, each),
                                                {left, line + 3.6}, smallSize));
            left += each + gap;
        }
        at_ += signatureHeight;
    }

    [[nodiscard]] double tableWidth(const Beside& beside) const
    {
        return width_ - inMillimetres(beside.picture.list.width) - besideGap;
    }
    [[nodiscard]] double least(const Beside& beside) const
    {
        const SetTable set(beside.table, tableWidth(beside), bottom_ - top_);
        return std::max(inMillimetres(beside.picture.list.height), set.height());
    }
    void put(const Beside& beside)
    {
        const double height = least(beside);
        // What no page holds side by side stands one below the other.
        if (height > bottom_ - top_) {
            put(beside.picture);
            put(beside.table);
            return;
        }
        if (height > room() && !fresh())
            close();
        for (const Shape& shape : beside.picture.list.shapes)
            shapes_.push_back(drawing::placed(shape, {left_, at_}));
        const SetTable set(beside.table, tableWidth(beside), bottom_ - top_);
        set.draw(0, set.rows().size(), left_ + width_ - tableWidth(beside), at_, shapes_);
        at_ += height + afterBlock;
    }

    void text(const std::string& words, double size, Role role, bool bold)
    {
        for (const std::string& line : linesOf(words, size, width_, bold)) {
            if (size * lineInEm > room() && !fresh())
                close();
            shapes_.emplace_back(
                drawing::words(role, line, {left_, at_ + firstBaseInEm * size}, size, Anchor::Start, bold));
            at_ += size * lineInEm;
        }
    }

    /// Head and foot of every page, when it is known how many there are.
    void furnish()
    {
        const double right = left_ + width_, line = pageMargin + 8.2;
        const double foot = bottom_ + footHeight;
        const std::string title =
            drawing::shortened(drawing::harmless(sheet_.title), titleSize, width_ * 0.6, true);
        const double rest = width_ - drawing::textWidth(title, titleSize, true) - 4.0;
        const std::string subject =
            drawing::shortened(drawing::harmless(sheet_.subject), headingSize, rest, true);
        for (std::size_t number = 0; number < pages_.size(); ++number) {
            std::vector<Shape>& shapes = pages_[number].list.shapes;
            const std::string page = spoken("page") + " " + std::to_string(number + 1) + " " + spoken("of") +
                                     " " + std::to_string(pages_.size());
            const double footRoom = width_ - drawing::textWidth(page, smallSize, true) - 4.0;
            shapes.emplace_back(drawing::words(Role::Title, title, {left_, pageMargin + 5.6}, titleSize,
                                               Anchor::Start, true));
            shapes.emplace_back(drawing::words(Role::Title, subject, {right, pageMargin + 5.6}, headingSize,
                                               Anchor::End, true));
            shapes.emplace_back(drawing::line(Role::Label, {left_, line}, {right, line}, 0.5));
            shapes.emplace_back(drawing::words(
                Role::Note, drawing::shortened(drawing::harmless(sheet_.foot), smallSize, footRoom),
                {left_, foot}, smallSize));
            shapes.emplace_back(
                drawing::words(Role::Label, page, {right, foot}, smallSize, Anchor::End, true));
        }
    }

    const Sheet& sheet_;
    Paper paper_;
    double left_;
    double width_;
    double top_;
    double bottom_;
    double at_;
    std::vector<Shape> shapes_;
    std::vector<Page> pages_;
};

} // namespace

std::vector<Page> layOut(const Sheet& sheet, const Paper& paper)
{
    return Layouter(sheet, paper).layOut();
}

} // namespace lapwright::print
