#pragma once

#include "measure/result.h"
#include "trim/profile.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::trim {

/// A point of the section: x out of the building, y up, from the measured line.
struct SectionPoint {
    Length x;
    Length y;

    friend bool operator==(const SectionPoint&, const SectionPoint&) = default;
};

/// A flat piece of the folded sheet along its middle plane, from tangent line to tangent line.
struct SectionFlat {
    enum class Kind { StartHem, Leg, EndHem } kind = Kind::Leg;
    std::size_t leg = 0; ///< index in Profile::legs for Kind::Leg
    SectionPoint from;
    SectionPoint to;
    Angle direction; ///< of the path here, counter-clockwise from x
};

/// The cross-section of a folded profile in a sheet of a given thickness.
struct Section {
    /// Mould-line points: where the first leg starts, the apex on the outside of each bend, where the last
    /// leg ends. Size: legs + 1. Exact: where bends turn both ways they stand on both faces.
    std::vector<SectionPoint> mouldLine;
    /// Free edge of each hem, on the sheet's middle plane.
    std::optional<SectionPoint> startHemEdge;
    std::optional<SectionPoint> endHemEdge;
    /// Flats in path order: start hem, legs, end hem.
    std::vector<SectionFlat> flats;
    /// The sheet's middle plane, its left face and its right face (looking along the path), with arcs as
    /// chords; equal sizes, point by point.
    std::vector<SectionPoint> middle;
    std::vector<SectionPoint> leftFace;
    std::vector<SectionPoint> rightFace;
};

/// How finely arcs are drawn: the most that one chord turns.
inline constexpr Angle drawnChord = Angle::degrees(10.0);

/// The section of `profile`. Start of the first leg at (startX, startY), direction firstDirection; the sheet
/// lies on the inside of the mould line. Errors: as flatPattern (girth.h), but for the material; place is the
/// leg's or hem's name.
[[nodiscard]] Result<Section> sectionOf(const Profile& profile, Length thickness, Angle chord = drawnChord);

/// Two parts of the profile that would lie in one another.
struct Crossing {
    std::string first;
    std::string second;
};
/// Where the folded sheet runs into itself: parts closer than its thickness, measured between middle planes,
/// other than round a bend or a hem. A tenth of the thickness of overlap goes unnoticed (arcs are checked as
/// chords). Nothing if the profile is free of it. Errors as sectionOf.
[[nodiscard]] Result<std::optional<Crossing>> findCrossing(const Profile& profile, Length thickness);

/// The angle between the two flats at a bend: 180° − |turn|.
[[nodiscard]] Angle includedAngle(const Bend& bend);

/// The other hand: mirrored left to right (x to −x). Turns, hem sides and the coloured face change sides.
[[nodiscard]] Profile mirrored(const Profile& profile);
/// The same folded piece described from its other edge. The start is where the ideal mould line (no
/// thickness) ends.
[[nodiscard]] Profile reversed(const Profile& profile);
/// Points of the ideal mould line, with no regard to thickness: start, apexes, end. Size: legs + 1.
/// Precondition: bends.size() + 1 == legs.size().
[[nodiscard]] std::vector<SectionPoint> idealMouldLine(const Profile& profile);

} // namespace lapwright::trim
