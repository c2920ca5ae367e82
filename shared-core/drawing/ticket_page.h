#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"

#include <string>
#include <vector>

/// Pages filled from top to bottom.
namespace lapwright::drawing {

/// The paper a ticket is printed on, and what stands at the foot of every page beside its number.
struct TicketForm {
    Length width = Length::millimetres(210);
    Length height = Length::millimetres(297);
    std::string foot;
};

class TicketPages {
public:
    /// `title` and `job` stand on every page; `job` may be empty.
    TicketPages(std::string title, std::string job, TicketForm form);

    [[nodiscard]] double left() const { return margin; }
    [[nodiscard]] double right() const { return width_ - margin; }
    /// Height left on this page.
    [[nodiscard]] double room() const { return height_ - margin - footHeight - used_; }
    /// Height of a page on which nothing stands yet.
    [[nodiscard]] double wholeRoom() const { return height_ - margin - footHeight - headEnd - ruleHeight; }

    /// Moves down by `by`, to a new page if this one has no room for it. Returns where it has got to.
    double down(double by);
    void next();
    void add(Shape shape) { shapes_.push_back(std::move(shape)); }
    [[nodiscard]] std::vector<Shape>& shapes() { return shapes_; }
    /// Text across the page, in as many lines as it needs.
    void text(Role role, const std::string& text, double size, bool bold);
    /// What that takes of the page.
    [[nodiscard]] double heightOf(const std::string& text, double size, bool bold) const;
    /// A line across the page.
    void rule();
    static constexpr double ruleHeight = 2.2;
    /// A picture at its full size; it must fit the page.
    void picture(const DisplayList& list);

    /// All pages, numbered in the reader's language. Nothing can be added after it.
    [[nodiscard]] std::vector<DisplayList> take(const Style& style);

private:
    static constexpr double margin = 10.0, headEnd = margin + 7.0, footHeight = 6.0;

    [[nodiscard]] std::vector<std::string> linesOf(const std::string& text, double size, bool bold) const;
    void head();

    std::string title_;
    std::string job_;
    TicketForm form_;
    double width_;
    double height_;
    std::vector<Shape> shapes_;
    std::vector<DisplayList> pages_;
    std::string described_;
    double used_ = 0.0;
};

} // namespace lapwright::drawing
