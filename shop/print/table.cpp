#include "print/table.h"

#include "drawing/marks.h"
#include "drawing/text.h"
#include "print/lines.h"
#include "print/type.h"
#include "speech/spoken.h"

#include <algorithm>

namespace lapwright::print {

using drawing::Role;
using drawing::Shape;
using drawing::Stroke;

namespace {

/// Left and right of a cell's text, above and below it, millimetres.
constexpr double sidePad = 1.2;
constexpr double rowPad = 1.1;
constexpr double tickSide = 3.8;
constexpr double tickRoom = tickSide + 1.6;
constexpr std::size_t mostTitleLines = 3;

bool boldIn(const Cell& cell)
{
    return cell.tone == Tone::Strong || cell.tone == Tone::Caution;
}

drawing::Anchor anchorOf(Align align)
{
    switch (align) {
    case Align::Left:
        return drawing::Anchor::Start;
    case Align::Middle:
        return drawing::Anchor::Middle;
    case Align::Right:
        return drawing::Anchor::End;
    }
    return drawing::Anchor::Start;
}

/// Where text aligned so stands in a cell from `left` on.
double anchorAt(Align align, double left, double width)
{
    switch (align) {
    case Align::Left:
        return left + sidePad;
    case Align::Middle:
        return left + width / 2.0;
    case Align::Right:
        return left + width - sidePad;
    }
    return left;
}

} // namespace

SetTable::SetTable(const Table& table, double width, double mostHeight) : table_(table), width_(width)
{
    setColumns(width);
    for (std::size_t column = 0; column < table.columns.size(); ++column) {
        titles_.push_back(fewLinesOf(table.columns[column].title, smallSize, widths_[column] - 2.0 * sidePad,
                                     mostTitleLines, true));
        headHeight_ =
            std::max(headHeight_, static_cast<double>(titles_.back().size()) * smallSize * lineInEm);
    }
    headHeight_ += 2.0 * rowPad;
    bodiesOf_.resize(table.groups.size());
    for (std::size_t group = 0; group < table.groups.size(); ++group)
        setGroup(group, mostHeight - headHeight_ - bandHeight());
}

void SetTable::setColumns(double width)
{
    double left = width, shares = 0.0;
    for (const Column& column : table_.columns) {
        left -= column.width;
        shares += column.width > 0.0 ? 0.0 : column.share;
    }
    for (const Column& column : table_.columns)
        widths_.push_back(column.width > 0.0 ? column.width : left * column.share / shares);
}

double SetTable::bandHeight() const
{
    return bodySize * lineInEm + 2.0 * rowPad;
}

void SetTable::setGroup(std::size_t group, double mostHeight)
{
    const Group& from = table_.groups[group];
    if (!from.title.empty()) {
        const double noteWidth = drawing::textWidth(from.note, bodySize, true);
        const double room = width_ - 3.0 * sidePad - noteWidth;
        rows_.push_back(
            {SetRow::Kind::Band,
             group,
             bandHeight(),
             {{drawing::shortened(drawing::harmless(from.title), bodySize, room, true)}, {from.note}},
             {},
             {}});
    }
    for (const Row& row : from.rows)
        addBody(group, row, mostHeight);
}

void SetTable::addBody(std::size_t group, const Row& row, double mostHeight)
{
    SetRow set{SetRow::Kind::Body, group, 0.0, {}, row.cells, {}};
    std::size_t most = 1;
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        const Cell& cell = row.cells[column];
        const double room =
            widths_[column] - 2.0 * sidePad - (cell.kind == Cell::Kind::Tick ? tickRoom : 0.0);
        set.sizes.push_back(sizeOfWholeLengths(cell.text, bodySize, room, boldIn(cell)));
        set.lines.push_back(linesOf(cell.text, set.sizes.back(), room, boldIn(cell)));
        most = std::max(most, set.lines.back().size());
    }
    const double line = bodySize * lineInEm;
    const auto fitting = static_cast<std::size_t>(std::max(1.0, (mostHeight - 2.0 * rowPad) / line));
    for (std::size_t from = 0; from < most; from += fitting) {
        SetRow part = set;
        std::size_t count = 1;
        for (std::size_t column = 0; column < part.lines.size(); ++column) {
            auto& lines = part.lines[column];
            const auto begin = static_cast<std::ptrdiff_t>(std::min(from, lines.size()));
            const auto end = static_cast<std::ptrdiff_t>(std::min(from + fitting, lines.size()));
            lines = {lines.begin() + begin, lines.begin() + end};
            count = std::max(count, lines.size());
            if (from > 0)
                part.cells[column].kind = Cell::Kind::Text;
        }
        part.height = std::max(table_.leastRowHeight, static_cast<double>(count) * line + 2.0 * rowPad);
        rows_.push_back(part);
        ++bodiesOf_[group];
    }
}

double SetTable::height() const
{
    double height = headHeight_;
    for (const SetRow& row : rows_)
        height += row.height;
    return height;
}

double SetTable::againHeight(std::size_t row) const
{
    const bool goesOn = row > 0 && row < rows_.size() && rows_[row].kind == SetRow::Kind::Body &&
                        rows_[row - 1].kind == SetRow::Kind::Body && rows_[row - 1].group == rows_[row].group;
    return goesOn && !table_.groups[rows_[row].group].title.empty() ? bandHeight() : 0.0;
}

bool SetTable::mayBreakBefore(std::size_t row) const
{
    if (row >= rows_.size())
        return true;
    if (row == 0 || table_.together || rows_[row - 1].kind == SetRow::Kind::Band)
        return false;
    if (rows_[row].group != rows_[row - 1].group)
        return true;
    std::size_t before = 0;
    while (before < row && rows_[row - 1 - before].kind == SetRow::Kind::Body &&
           rows_[row - 1 - before].group == rows_[row].group)
        ++before;
    return before >= 2 && bodiesOf_[rows_[row].group] - before >= 2;
}

std::size_t SetTable::breakAfter(std::size_t first, double room) const
{
    double left = room - headHeight_ - againHeight(first);
    std::size_t best = first;
    for (std::size_t row = first; row < rows_.size(); ++row) {
        left -= rows_[row].height;
        if (left < 0.0)
            break;
        if (mayBreakBefore(row + 1))
            best = row + 1;
    }
    return best;
}

std::size_t SetTable::breakAnywhere(std::size_t first, double room) const
{
    double left = room - headHeight_ - againHeight(first);
    std::size_t row = first;
    while (row < rows_.size() && left >= rows_[row].height)
        left -= rows_[row++].height;
    return std::max(row, first + 1);
}

double SetTable::draw(std::size_t first, std::size_t last, double left, double top,
                      std::vector<Shape>& onto) const
{
    drawHead(left, top, onto);
    double at = top + headHeight_;
    if (againHeight(first) > 0.0) {
        SetRow again = rows_[first];
        const Group& group = table_.groups[again.group];
        again.lines = {{drawing::shortened(drawing::harmless(group.title) + " " + spoken("(goes on)"),
                                           bodySize, width_ - 2.0 * sidePad, true)},
                       {}};
        drawBand(again, true, left, at, onto);
        at += bandHeight();
    }
    for (std::size_t row = first; row < last; ++row) {
        if (rows_[row].kind == SetRow::Kind::Band)
            drawBand(rows_[row], false, left, at, onto);
        else
            drawBody(rows_[row], left, at, onto);
        at += rows_[row].height;
    }
    onto.emplace_back(drawing::line(Role::Label, {left, at}, {left + width_, at}, 0.3));
    return at;
}

void SetTable::drawHead(double left, double top, std::vector<Shape>& onto) const
{
    double at = left;
    for (std::size_t column = 0; column < widths_.size(); ++column) {
        const Align align = table_.columns[column].align;
        const auto& lines = titles_[column];
        double base = top + headHeight_ - rowPad - (drawing::descentInEm + 0.06) * smallSize -
                      static_cast<double>(lines.size() - 1) * smallSize * lineInEm;
        for (const std::string& line : lines) {
            onto.emplace_back(drawing::words(Role::Note, line, {anchorAt(align, at, widths_[column]), base},
                                             smallSize, anchorOf(align), true));
            base += smallSize * lineInEm;
        }
        at += widths_[column];
    }
    onto.emplace_back(
        drawing::line(Role::Label, {left, top + headHeight_}, {left + width_, top + headHeight_}, 0.3));
}

void SetTable::drawBand(const SetRow& row, bool again, double left, double top,
                        std::vector<Shape>& onto) const
{
    onto.emplace_back(drawing::box(Role::Machine, {left, top, left + width_, top + bandHeight()},
                                   std::nullopt, drawing::Fill{}));
    const double base = top + rowPad + firstBaseInEm * bodySize;
    onto.emplace_back(drawing::words(Role::Title, row.lines[0].front(), {left + sidePad, base}, bodySize,
                                     drawing::Anchor::Start, true));
    if (!again && !row.lines[1].front().empty())
        onto.emplace_back(drawing::words(Role::Title, row.lines[1].front(), {left + width_ - sidePad, base},
                                         bodySize, drawing::Anchor::End, true));
}

void SetTable::drawBody(const SetRow& row, double left, double top, std::vector<Shape>& onto) const
{
    double at = left;
    for (std::size_t column = 0; column < row.lines.size(); ++column) {
        drawCell(row, column, at, top, onto);
        at += widths_[column];
    }
    const double bottom = top + row.height;
    onto.emplace_back(drawing::line(Role::Note, {left, bottom}, {left + width_, bottom}, 0.12));
}

void SetTable::drawCell(const SetRow& row, std::size_t column, double left, double top,
                        std::vector<Shape>& onto) const
{
    const Cell& cell = row.cells[column];
    const double width = widths_[column];
    if (cell.kind == Cell::Kind::Frame)
        onto.emplace_back(drawing::box(Role::Note, {left, top, left + width, top + row.height},
                                       Stroke{0.15, drawing::Dash::Solid, {}}, std::nullopt));
    const bool tick = cell.kind == Cell::Kind::Tick;
    const double height = static_cast<double>(row.lines[column].size()) * bodySize * lineInEm;
    const double slack = std::max(0.0, (std::min(row.height, table_.leastRowHeight) - height) / 2.0 - rowPad);
    const double firstLine = top + rowPad + slack;
    if (tick) {
        const double middle = firstLine + bodySize * lineInEm / 2.0;
        onto.emplace_back(drawing::box(
            Role::Label,
            {left + sidePad, middle - tickSide / 2.0, left + sidePad + tickSide, middle + tickSide / 2.0},
            Stroke{0.3, drawing::Dash::Solid, {}}, std::nullopt));
    }
    const Align align = table_.columns[column].align;
    double base = firstLine + firstBaseInEm * bodySize;
    for (const std::string& line : row.lines[column]) {
        if (!line.empty())
            onto.emplace_back(drawing::words(
                roleOf(cell.tone), line,
                {anchorAt(align, left + (tick ? tickRoom : 0.0), width - (tick ? tickRoom : 0.0)), base},
                row.sizes[column], anchorOf(align), boldIn(cell)));
        base += bodySize * lineInEm;
    }
}

} // namespace lapwright::print
