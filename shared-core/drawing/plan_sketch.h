#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "site/closure.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::drawing {

/// What a sketch of one chain shows, and how large.
struct SketchWish {
    Style style;
    Length width = Length::millimetres(160);
    Length height = Length::millimetres(120);
    /// The run in hand.
    std::optional<std::size_t> chosen;
    /// Said beside a run instead of its id, by run id: marks of its pieces. Runs whose key is there and empty
    /// are done and drawn pale.
    std::map<std::string, std::string> marks;
};

struct SketchedRun {
    std::size_t run = 0;
    Segment line;
};

/// A chain drawn for a screen while it grows, and where its runs lie in the drawing.
struct PlanSketch {
    DisplayList list;
    std::vector<SketchedRun> runs;
};

/// The chain to the largest scale that fits the page, as plan_picture.h draws it but alone and without head
/// or foot: lengths beside the runs as far as there is room, the run in hand stressed, the gap of a chain
/// that does not close, and the run that would explain it. Upright runs, which have no extent in plan, stand
/// side by side to scale. `report` is of `chain`. Runs without a length end the drawing.
[[nodiscard]] PlanSketch planSketch(const site::Chain& chain, const site::ClosureReport& report,
                                    const SketchWish& wish);

/// The run nearest to `point` of the page, no further than `reach` from it.
[[nodiscard]] std::optional<std::size_t> runAt(const PlanSketch& sketch, Point point, double reach);

} // namespace lapwright::drawing
