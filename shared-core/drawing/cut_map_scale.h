#pragma once

#include "cutting/plan.h"
#include "cutting/problem.h"
#include "drawing/geometry.h"

#include <cstddef>

namespace lapwright::drawing {

/// Where the sheet of a cut map lies on its page: its lead end to the left, its left edge up, true to scale
/// lengthwise. Real millimetres go in, millimetres of the page come out.
class CutMapScale {
public:
    /// The largest scale at which the stock of the pattern fits into `room`; `usual`: one of usualScale(). A
    /// sheet that would be too low to read is stretched across as far as `room` takes it.
    CutMapScale(const cutting::Problem& problem, const cutting::Pattern& pattern, const Rectangle& room,
                bool usual);

    [[nodiscard]] double x(double along) const { return origin_.x + along * along_; }
    [[nodiscard]] double y(double across) const { return origin_.y + across * along_ * stretch_; }
    /// What begins at `along` and `across` and is so long and wide.
    [[nodiscard]] Rectangle onPage(double along, double across, double lengthwise, double wide) const
    {
        return {x(along), y(across), x(along + lengthwise), y(across + wide)};
    }
    /// The whole stock.
    [[nodiscard]] const Rectangle& sheet() const { return sheet_; }
    /// What the edge trims leave of it; real millimetres, x along, y across.
    [[nodiscard]] const Rectangle& usable() const { return usable_; }
    /// Page per real, lengthwise.
    [[nodiscard]] double lengthwise() const { return along_; }
    /// How many times as large it is drawn across.
    [[nodiscard]] double stretch() const { return stretch_; }

private:
    double along_ = 1.0;
    double stretch_ = 1.0;
    Point origin_;
    Rectangle sheet_;
    Rectangle usable_;
};

} // namespace lapwright::drawing
