#include "drawing/chain_panels.h"

#include "drawing/marks.h"
#include "measure/rounding.h"

#include <algorithm>
#include <numeric>

namespace lapwright::drawing {

namespace {

constexpr double padding = 15.0;
constexpr double sidePadding = 27.0;
/// Above and below a chain of one straight line there is only its name to be written.
constexpr double paddingOfLine = 9.0;
constexpr double leastPanel = 46.0;

/// Sets the panels in rows, tallest first; returns the height that takes.
double setRows(std::vector<LaidOut>& chains, Point corner, double scale, double width)
{
    std::vector<std::size_t> order(chains.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
        return chains[left].height > chains[right].height;
    });
    double x = 0.0, y = 0.0, rowHeight = 0.0;
    for (const std::size_t index : order) {
        LaidOut& chain = chains[index];
        const double wide = std::max(chain.width * scale + 2.0 * sidePadding, leastPanel);
        const double high = chain.height * scale + 2.0 * panelPadding(chain, scale) + panelCaption;
        if (x > 0.0 && x + wide > width) {
            x = 0.0;
            y += rowHeight;
            rowHeight = 0.0;
        }
        chain.panel = {corner.x + x, corner.y + y, corner.x + x + wide, corner.y + y + high};
        x += wide;
        rowHeight = std::max(rowHeight, high);
    }
    return y + rowHeight;
}

bool panelsFit(const std::vector<LaidOut>& chains, double right)
{
    return std::all_of(chains.begin(), chains.end(),
                       [&](const LaidOut& chain) { return chain.panel.right <= right + 1e-9; });
}

} // namespace

std::optional<LaidOut> layOut(const site::Chain& chain, const site::Tolerance& tolerance)
{
    LaidOut made;
    made.chain = &chain;
    made.closure = site::closureReport(chain, tolerance);
    const std::optional<site::Plan> plan = made.closure.plan ? made.closure.plan : site::planOf(chain);
    if (!plan)
        return std::nullopt;
    const bool adjusted = made.closure.drawnPoints.size() == plan->points.size();
    for (const site::PlanVector& point : adjusted ? made.closure.drawnPoints : plan->points)
        made.points.push_back({inMillimetres(point.east), inMillimetres(point.north)});
    const Rectangle reach = bounds(made.points);
    if (reach.width() < 1.0 && reach.height() < 1.0)
        return std::nullopt;
    for (Point& point : made.points)
        point = point - Point{reach.left, reach.top};
    made.width = reach.width();
    made.height = reach.height();
    return made;
}

double panelPadding(const LaidOut& chain, double scale)
{
    return chain.height * scale < 1.0 ? paddingOfLine : padding;
}

SetPanels setPanels(std::vector<LaidOut>& chains, Point corner, double width, double height)
{
    constexpr double leastDrawn = 60.0;
    double largest = 0.0;
    for (const LaidOut& chain : chains)
        largest = std::max({largest, chain.width, chain.height});
    SetPanels set;
    for (const double tried : usualScales()) {
        set = {tried, setRows(chains, corner, tried, width)};
        if (panelsFit(chains, corner.x + width) && (set.height <= height || largest * tried < leastDrawn))
            break;
    }
    return set;
}

} // namespace lapwright::drawing
