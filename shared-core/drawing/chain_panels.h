#pragma once

#include "drawing/display_list.h"
#include "drawing/geometry.h"
#include "site/closure.h"
#include "site/job.h"

#include <optional>
#include <vector>

namespace lapwright::drawing {

/// Room above a chain in its panel for the chain's name, in millimetres on the sheet.
inline constexpr double panelCaption = 6.0;

/// One chain of the plan, real millimetres, x east, y north, from its lower left corner.
struct LaidOut {
    const site::Chain* chain = nullptr;
    site::ClosureReport closure;
    std::vector<Point> points;
    double width = 0.0;
    double height = 0.0;
    Rectangle panel;
};

/// Missing where a length is missing or the chain has no extent. The chain has to outlive what is returned.
[[nodiscard]] std::optional<LaidOut> layOut(const site::Chain& chain, const site::Tolerance& tolerance);

/// Room that is left free on each side of the chain inside its panel, for labels, at so many millimetres on
/// the sheet for one of the house.
[[nodiscard]] double panelPadding(const LaidOut& chain, double scale);

struct SetPanels {
    double scale = 0.0;
    double height = 0.0; ///< that all rows of panels take
};
/// Sets the panels in rows on a sheet, from `corner` on, at the largest usual scale at which all of them fit
/// into `width` and `height`; never so small that the largest chain shrinks below what can still be read:
/// then the sheet gets longer.
SetPanels setPanels(std::vector<LaidOut>& chains, Point corner, double width, double height);

} // namespace lapwright::drawing
