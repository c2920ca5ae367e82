#pragma once

#include "fold/plan.h"
#include "metal/metal.h"
#include "trim/girth.h"

#include <complex>
#include <vector>

/// The checker's own way of folding a section: traced whole from edge to edge, then laid in the machine.
namespace lapwright::fold {

using Place = std::complex<double>;

/// A point on the middle of the sheet, with the direction of the path there.
struct Trace {
    Place at;
    Place along;
    double fromStart = 0.0; ///< on the flat
};

/// The blank with the angle each line stands at now (signed, + to the left) and where the lines really are.
struct Standing {
    std::vector<double> positions;
    std::vector<double> angles;
    std::vector<double> allowances;
    std::vector<double> radii; ///< of the middle of the sheet
    double girth = 0.0;
};

/// The section in machine coordinates when `line` stands on the bend line.
[[nodiscard]] std::vector<Trace> retrace(const Standing& standing, std::size_t line, End endToGauge,
                                         trim::Side faceUp);

/// Whether the point is inside the outline by more than `depth`. Millimetres.
[[nodiscard]] bool deepInside(Place point, const Outline& outline, double depth);

} // namespace lapwright::fold
