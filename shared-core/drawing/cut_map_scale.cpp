#include "drawing/cut_map_scale.h"

#include "drawing/marks.h"
#include "measure/rounding.h"

#include <algorithm>

namespace lapwright::drawing {

namespace {

/// A map drawn narrower than this is stretched across, and one with blanks narrower than take their names.
constexpr double leastDrawnWidth = 40.0;
constexpr double readableBlank = 3.4;

/// The narrowest blank of the pattern, real millimetres across the stock.
double narrowestBlank(const cutting::Problem& problem, const cutting::Pattern& pattern, double width)
{
    double least = width;
    for (const cutting::Strip& strip : pattern.strips)
        for (const cutting::Crosscut& cut : strip.crosscuts) {
            const cutting::Blank& blank = problem.blanks()[cut.blank];
            least = std::min(least, inMillimetres(cut.turned ? blank.length : blank.girth));
        }
    return least;
}

/// What the edge trims leave of the stock.
Rectangle usableOf(const cutting::Problem& problem, const cutting::Pattern& pattern)
{
    const cutting::Stock& stock = problem.stocks()[pattern.stock];
    const bool coil = stock.kind == cutting::StockKind::Coil;
    const cutting::EdgeTrim trim =
        stock.kind == cutting::StockKind::Remnant ? cutting::EdgeTrim() : problem.rules().edgeTrim;
    const double left = coil ? 0.0 : inMillimetres(trim.lead), top = inMillimetres(trim.left);
    return {left, top, left + inMillimetres(coil ? pattern.length : problem.usableLength(pattern.stock)),
            top + inMillimetres(problem.usableWidth(pattern.stock))};
}

} // namespace

CutMapScale::CutMapScale(const cutting::Problem& problem, const cutting::Pattern& pattern,
                         const Rectangle& room, bool usual)
    : usable_(usableOf(problem, pattern))
{
    const double length = inMillimetres(pattern.length);
    const double width = inMillimetres(problem.stocks()[pattern.stock].width);
    const auto scaleFor = [&](double wide) {
        return usual ? usualScale(length, wide, room) : std::min(room.width() / length, room.height() / wide);
    };
    along_ = scaleFor(std::min(width, room.height() / room.width() * length));
    if (width * along_ > room.height())
        along_ = scaleFor(width);
    const double narrowest = narrowestBlank(problem, pattern, width);
    while ((width * along_ * stretch_ < leastDrawnWidth || narrowest * along_ * stretch_ < readableBlank) &&
           width * along_ * (stretch_ + 1.0) <= room.height())
        stretch_ += 1.0;
    origin_ = {room.centre().x - length * along_ / 2.0, room.top};
    sheet_ = onPage(0.0, 0.0, length, width);
}

} // namespace lapwright::drawing
