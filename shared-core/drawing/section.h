#pragma once

#include "drawing/geometry.h"
#include "trim/profile.h"

#include <vector>

/// The shape of a folded sheet in section, ready to draw.
namespace lapwright::drawing {

/// How a section is drawn. Lengths on paper in millimetres.
struct SectionStyle {
    double scale = 1.0;          ///< paper per metal
    double thickness = 0.0;      ///< of the metal, unscaled
    double leastThickness = 0.8; ///< a sheet is never drawn thinner
    double bandWidth = 1.3;      ///< of the coloured band on its face
    double hemGap = 0.5;         ///< a closed hem is drawn open at least so far
};

/// One leg as drawn: its ends are the outside mould-line apexes (or outer hem edges, or free edges) between
/// which its length is measured, except that both stand on the leg's middle plane where the leg has bends to
/// opposite sides.
struct DrawnLeg {
    Segment measured;
};

/// One bend as drawn.
struct DrawnBend {
    Point apex;    ///< of the middle plane
    Point outside; ///< mould-line apex
    Point before;  ///< unit vector of the leg before, in path direction
    Point after;   ///< unit vector of the leg after
};

struct DrawnHem {
    Point middle; ///< of the flat part
    Point edge;   ///< where the sheet turns back
};

/// Section coordinates: millimetres on paper, x out of the building, y up.
struct Section {
    std::vector<Point> sheet;        ///< closed outline
    std::vector<Point> colour;       ///< closed outline of the coloured band
    std::vector<Point> colourMiddle; ///< open line along the middle of the band
    std::vector<DrawnLeg> legs;
    std::vector<DrawnBend> bends;
    std::vector<DrawnHem> hems; ///< start hem first
    Point firstEdge;
    Point lastEdge;
    double drawnThickness = 0.0;
    /// Every leg was long enough to be drawn to its true outside length.
    bool trueToScale = true;
};

/// Precondition: bends.size() + 1 == legs.size().
[[nodiscard]] Section drawSection(const trim::Profile& profile, const SectionStyle& style);

} // namespace lapwright::drawing
