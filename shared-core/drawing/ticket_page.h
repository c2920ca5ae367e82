#pragma once

#include "drawing/display_list.h"

#include <string>
#include <vector>

/// Pages of A4 filled from top to bottom.
namespace lapwright::drawing {

class TicketPages {
public:
    /// `title` and `job` stand on every page; `job` may be empty.
    TicketPages(std::string title, std::string job);

    [[nodiscard]] double left() const { return margin; }
    [[nodiscard]] double right() const { return width - margin; }
    /// Height left on this page.
    [[nodiscard]] double room() const { return height - margin - footHeight - used_; }

    /// Moves down by `by`, to a new page if this one has no room for it. Returns where it has got to.
    double down(double by);
    void next();
    void add(Shape shape) { shapes_.push_back(std::move(shape)); }
    [[nodiscard]] std::vector<Shape>& shapes() { return shapes_; }
    /// Text across the page, in as many lines as it needs.
    void text(Role role, const std::string& text, double size, bool bold);
    /// A line across the page.
    void rule();
    static constexpr double ruleHeight = 2.2;
    /// A picture at its full size; it must fit the page.
    void picture(const DisplayList& list);

    /// All pages, numbered. Nothing can be added after it.
    [[nodiscard]] std::vector<DisplayList> take();

private:
    static constexpr double width = 210.0, height = 297.0, margin = 10.0, footHeight = 6.0;

    void head();

    std::string title_;
    std::string job_;
    std::vector<Shape> shapes_;
    std::vector<DisplayList> pages_;
    std::string described_;
    double used_ = 0.0;
};

} // namespace lapwright::drawing
