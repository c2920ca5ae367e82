#include "drawing/ticket_page.h"

#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"

namespace lapwright::drawing {

namespace {

Shape moved(Shape shape, Point by)
{
    if (auto* path = std::get_if<Path>(&shape)) {
        for (Point& point : path->points)
            point = point + by;
    } else if (auto* circle = std::get_if<Circle>(&shape)) {
        circle->centre = circle->centre + by;
    } else if (auto* arc = std::get_if<Arc>(&shape)) {
        arc->centre = arc->centre + by;
    } else if (auto* text = std::get_if<Text>(&shape)) {
        text->at = text->at + by;
    }
    return shape;
}

} // namespace

TicketPages::TicketPages(std::string title, std::string job) : title_(std::move(title)), job_(std::move(job))
{
    head();
}

void TicketPages::head()
{
    used_ = margin + 7.0;
    const double room = right() - left();
    const std::string job = shortened(job_, 3.4, room * 0.4);
    add(words(Role::Title, shortened(title_, 5.4, room * 0.58, true), {left(), margin + 5.0}, 5.4,
              Anchor::Start, true));
    if (!job.empty())
        add(words(Role::Label, job, {right(), margin + 5.0}, 3.4, Anchor::End));
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
    page.width = nearestFromMillimetres(width);
    page.height = nearestFromMillimetres(height);
    page.title = title_;
    page.description = described_;
    page.shapes = std::move(shapes_);
    pages_.push_back(std::move(page));
    shapes_.clear();
    described_.clear();
    head();
}

void TicketPages::text(Role role, const std::string& text, double size, bool bold)
{
    // The advance widths are for plain type; bold runs wider.
    const double across = (right() - left()) * (bold ? 0.86 : 1.0);
    for (const std::string& part : wrapped(text, size, across)) {
        const double row = down(size * 1.35);
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
        add(moved(shape, {left(), bottom - high}));
    described_ += list.title + ": " + list.description + " ";
}

std::vector<DisplayList> TicketPages::take()
{
    next();
    for (std::size_t i = 0; i < pages_.size(); ++i)
        pages_[i].shapes.emplace_back(
            words(Role::Note, "page " + std::to_string(i + 1) + " of " + std::to_string(pages_.size()),
                  {right(), height - margin + 2.0}, 2.8, Anchor::End));
    return std::move(pages_);
}

} // namespace lapwright::drawing
