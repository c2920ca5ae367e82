#pragma once

#include "fold/machine.h"
#include "fold/section.h"

#include <optional>

namespace lapwright::fold {

/// How far back something touches the gauge, and what it is.
struct GaugeReach {
    enum class Part { Edge, Arc, Leg };

    double millimetres = 0.0;
    Part part = Part::Edge;
    std::size_t arc = 0; ///< index in Half::arcs, for Part::Arc
};

/// From the bend line to what touches the back gauge's finger: the edge, or the face or bend that
/// stands furthest back below the finger's top. `half` is the part behind, laid along +x (halfSection()).
/// None if that face leans so far that it would ride up on the finger.
[[nodiscard]] std::optional<GaugeReach> gaugeReach(const Half& half, double thickness,
                                                   const Machine& machine);

} // namespace lapwright::fold
