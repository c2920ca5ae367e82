#include "drawing/ticket_page.h"

#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>

namespace lapwright::drawing {

namespace {

/// From one line's base to the next.
constexpr double lineInEm = 1.35;

constexpr double titleSize = 5.4;
constexpr double leastTitleSize = 3.8;
constexpr double jobSize = 3.4;

} // namespace

TicketPages::TicketPages(std::string title, std::string job, TicketForm form)
    : title_(std::move(title)), job_(std::move(job)), form_(std::move(form)),
      width_(inMillimetres(form_.width)), height_(inMillimetres(form_.height))
{
    head();
}

void TicketPages::head()
{
    used_ = headEnd;
    const double room = right() - left();
    const std::string job = shortened(job_, jobSize, room * 0.4);
    const double titleRoom = room - textWidth(job, jobSize) - titleSize;
    // What does not fit at full size is written smaller before it is cut.
    const double size = std::max(fittingSize(title_, titleSize, titleRoom, true), leastTitleSize);
    add(words(Role::Title, shortened(title_, size, titleRoom + 1e-6, true), {left(), margin + 5.0}, size,
              Anchor::Start, true));
    if (!job.empty())
        add(words(Role::Label, job, {right(), margin + 5.0}, jobSize, Anchor::End));
    rule();
}

double TicketPages::down(double by)
{
    if (room() < by)
        next();
    used_ += by;
    return used_;
}

void TicketPages::next()
{
    DisplayList page;
    page.width = form_.width;
    page.height = form_.height;
    page.title = title_;
    page.description = described_;
    page.shapes = std::move(shapes_);
    pages_.push_back(std::move(page));
    shapes_.clear();
    described_.clear();
    head();
}

std::vector<std::string> TicketPages::linesOf(const std::string& text, double size, bool bold) const
{
    // The advance widths are for plain type; bold runs wider.
    return wrapped(text, size, (right() - left()) * (bold ? 0.86 : 1.0));
}

double TicketPages::heightOf(const std::string& text, double size, bool bold) const
{
    return static_cast<double>(linesOf(text, size, bold).size()) * size * lineInEm;
}

void TicketPages::text(Role role, const std::string& text, double size, bool bold)
{
    for (const std::string& part : linesOf(text, size, bold)) {
        const double row = down(size * lineInEm);
        add(words(role, part, {left(), row}, size, Anchor::Start, bold));
    }
    described_ += text + ". ";
}

void TicketPages::rule()
{
    used_ += ruleHeight - 0.6;
    add(line(Role::Note, {left(), used_}, {right(), used_}, 0.2));
    used_ += 0.6;
}

void TicketPages::picture(const DisplayList& list)
{
    const double high = inMillimetres(list.height);
    const double bottom = down(high);
    for (const Shape& shape : list.shapes)
        add(placed(shape, {left(), bottom - high}));
    described_ += list.title + ": " + list.description + " ";
}

std::vector<DisplayList> TicketPages::take(const Style& style)
{
    next();
    const double row = height_ - margin + 2.0;
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        const std::string page =
            translated("page " + std::to_string(i + 1) + " of " + std::to_string(pages_.size()), style);
        const double room = right() - left() - textWidth(page, 2.8) - 4.0;
        if (!form_.foot.empty())
            pages_[i].shapes.emplace_back(
                words(Role::Note, shortened(harmless(form_.foot), 2.8, room), {left(), row}, 2.8));
        pages_[i].shapes.emplace_back(words(Role::Note, page, {right(), row}, 2.8, Anchor::End));
    }
    return std::move(pages_);
}

} // namespace lapwright::drawing
