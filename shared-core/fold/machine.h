#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/result.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::fold {

/// A point of the machine's section: bend line at the origin, +x to the operator, −x to the back gauge, y up,
/// the sheet's clamped part on y = 0.
struct Point {
    Length x;
    Length y;

    friend bool operator==(const Point&, const Point&) = default;
};

/// A closed polygon that does not cross itself; the last point joins the first. Either way round.
using Outline = std::vector<Point>;

/// Insert of a folding beam. `body` is the beam at rest with this insert: below y = 0 for the beam that folds
/// up, above it for the one that folds down. Its edge on y = 0 from x = 0 to x = width is the face.
struct BeamFace {
    std::string name;
    Length width;
    Outline body;

    friend bool operator==(const BeamFace&, const BeamFace&) = default;
};

/// The thickest sheet of a reference metal that is folded over the full bending length.
struct Capacity {
    std::string metal; ///< as on the machine's plate: "mild steel"
    Length thickness;
    double tensileStrengthPascals = 0.0;

    friend bool operator==(const Capacity&, const Capacity&) = default;
};

struct BackGauge {
    Length least; ///< smallest distance from the bend line to the fingers
    Length most;
    Length fingerHeight; ///< above y = 0; an edge higher than this is not touched

    friend bool operator==(const BackGauge&, const BackGauge&) = default;
};

/// The second beam of a machine that also folds down, round the edge of the bed.
struct DownFolding {
    BeamFace beam;
    Angle largestFoldAngle;

    friend bool operator==(const DownFolding&, const DownFolding&) = default;
};

/// What a shop found by trial must be set to be left with `foldAngle`, springback in it: wins over the
/// formula, and is never added to it.
struct MeasuredSpringback {
    std::string metal; ///< metal id
    std::string gauge;
    Angle foldAngle;
    Angle angleToSet;

    friend bool operator==(const MeasuredSpringback&, const MeasuredSpringback&) = default;
};

/// A folding machine as data (machines/*.json), before it is checked.
struct MachineDescription {
    std::string id;
    std::string name;
    std::string note;
    Length bendingLength;
    Capacity capacity;
    Outline bed;
    /// The clamp when closed; its nose tip is at the origin.
    Outline clamp;
    Angle largestFoldAngle; ///< the clamp nose lets the sheet go so far up
    Length clampOpening;
    Length throat;                   ///< from the bend line back to the frame
    std::vector<BeamFace> beamFaces; ///< the first is the one usually fitted
    std::optional<DownFolding> downFolding;
    std::optional<BackGauge> backGauge; ///< none: folded to marks
    Length displayStep; ///< smallest step of the gauge's display, or of the rule used for marking
    Length leastLeg;    ///< shortest part in front that the beam still folds
    /// A piece up to this length may be slid in and out past the end of the clamp. None: both ends are
    /// closed by the frame, everything comes and goes from the front.
    std::optional<Length> slidesEndways;
    std::vector<MeasuredSpringback> measuredSpringback; ///< on this machine
    bool flattensHems = false;
    Length largestOpenHem; ///< widest gap that can be left when a hem is pressed; 0: closed hems only

    friend bool operator==(const MachineDescription&, const MachineDescription&) = default;
};

/// A machine whose description was checked; there is no other way to one.
class Machine {
public:
    /// Checks lengths (positive, below 100 m), angles (0 to 180°), outlines (3 to 64 points, not crossing
    /// themselves, clamp above and bed below y = 0, clamp inside the wedge its largest fold angle leaves),
    /// faces (at least one; width on the face's outline). Place is the member's name in the file.
    [[nodiscard]] static Result<Machine> make(MachineDescription description);

    [[nodiscard]] const MachineDescription& description() const { return description_; }
    const MachineDescription* operator->() const { return &description_; }

private:
    explicit Machine(MachineDescription description);

    MachineDescription description_;
};

/// Thickest sheet of a metal of this tensile strength over the full length: t √(σ_ref/σ). From the bending
/// moment of a rectangular section, M = σ t²/4 per unit length. A guide: the machine's own plate rules.
[[nodiscard]] Length capacityFor(const Capacity& capacity, double tensileStrengthPascals);

} // namespace lapwright::fold
