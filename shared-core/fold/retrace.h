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

/// The section in machine coordinates when `line` stands on the bend line: a point at least every
/// millimetre.
[[nodiscard]] std::vector<Trace> retrace(const Standing& standing, std::size_t line, End endToGauge,
                                         trim::Side faceUp);

/// Whether a part of the path before the flat place `line` comes closer than `gap` to a part after it; the
/// flats on both sides of the line, which adjoin it, are not held against each other.
[[nodiscard]] bool meetsItself(const std::vector<Trace>& path, double line, double gap);

/// A part of the machine as the checker sees it. Millimetres.
class Solid {
public:
    explicit Solid(const Outline& outline);
    /// Whether the point is inside by more than `depth`.
    [[nodiscard]] bool holds(Place point, double depth) const;

private:
    std::vector<Place> corners_;
    double left_ = 0.0, right_ = 0.0, bottom_ = 0.0, top_ = 0.0;
};

} // namespace lapwright::fold
