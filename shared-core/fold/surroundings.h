#pragma once

#include "fold/contact.h"
#include "fold/machine.h"
#include "fold/plan.h"
#include "fold/section.h"
#include "fold/settings.h"

#include <optional>
#include <vector>

namespace lapwright::fold {

/// The sheet lies on clamp and bed without pressing into them; numbers only. Millimetres.
inline constexpr double lyingOn = 0.05;

/// How a folded part in front leans back over the clamp or under the bed.
struct Overhang {
    double depth = 0.0; ///< how far it reaches to x < 0; 0 if it does not
    Vector along;       ///< direction of its flat next to the bend
};
/// A sheet that leans by no more springs aside as it is taken out; a pressed hem does.
inline constexpr double springsAside = 1.5;
[[nodiscard]] Overhang overhangOf(const std::vector<Vector>& front);

/// The machine with one beam face, as what the middle of one blank's sheet has to keep out of.
class Surroundings {
public:
    Surroundings(const Blank& blank, const Machine& machine, std::size_t face, const Settings& settings);

    /// What stops a part of the sheet, from points[1] on, from being laid in: slid through the open clamp
    /// from the front, lifted by `lift`, let down, and the clamp closed on it. The beam that folds up is at
    /// rest then; one that folds down comes to the sheet when the clamp has closed.
    [[nodiscard]] std::optional<Obstacle> layingIn(const std::vector<Vector>& points, Direction direction,
                                                   double lift) const;
    /// What stops the same part from standing where it is folded, however it came there, and the clamp from
    /// closing on it.
    [[nodiscard]] std::optional<Obstacle> standing(const std::vector<Vector>& points,
                                                   Direction direction) const;
    /// How far a part that hangs below the sheet's plane is lifted over the bed: whole millimetres, 0 if none
    /// does.
    [[nodiscard]] static double liftFor(const std::vector<Vector>& points);
    /// What the part in front meets as it turns with the fold at `line`; it is formed from `nearest` on and
    /// nowhere further round the pole than `largestAngle`.
    [[nodiscard]] std::optional<Obstacle> sweeping(const std::vector<Vector>& points, std::size_t line,
                                                   Direction direction, double nearest,
                                                   double largestAngle) const;

    /// How a piece is taken out after a fold, rear part and folded front part as they stand in the
    /// machine when it is let go; `lift` as it was laid in with. None if it is caught. The front part's flat
    /// next to the bend is taken to be clear of the clamp as long as it moves away from it.
    [[nodiscard]] std::optional<WayOut> takingOut(const std::vector<Vector>& front,
                                                  const std::vector<Vector>& rear, Direction direction,
                                                  double lift) const;
    /// How far the clamp has to open for a part behind that is lifted by `lift`, and some air.
    [[nodiscard]] double littleOpening(const std::vector<Vector>& rear, double lift) const;
    /// How far the sheet is drawn forward first on this way.
    [[nodiscard]] double drawnFirst(WayOut way, const Overhang& over) const;
    /// Whether the beam gets back to rest past the part in front, not yet folded, that it folded at `line`.
    [[nodiscard]] bool beamReturns(const std::vector<Vector>& front, std::size_t line,
                                   Direction direction) const;

    [[nodiscard]] const Barrier& bed() const { return bed_; }
    [[nodiscard]] const Barrier& clamp() const { return clamp_; }
    [[nodiscard]] const Barrier& beam(Direction direction) const
    {
        return direction == Direction::Up ? upBeam_ : downBeam_;
    }

private:
    struct Swing {
        TurningBarrier clamp;
        TurningBarrier bed;
        TurningBarrier beam;
        double turn;
    };
    /// A moment on the way out: where the sheet is, and how far the clamp is open.
    struct Moment {
        Vector sheet;
        double open = 0.0;
    };

    /// The clamp opens by `wide`.
    [[nodiscard]] std::vector<Moment> momentsOf(WayOut way, Direction direction, const Overhang& over,
                                                double lift, double wide) const;
    /// `besideClamp` is how far the points stand in front of where they are given, seen from the clamp; none:
    /// they are clear of it.
    [[nodiscard]] bool getsOut(const std::vector<Vector>& points, const std::vector<Moment>& way,
                               Direction direction, const Vector* besideClamp) const;

    Barrier bed_, clamp_, openClamp_, upBeam_, downBeam_;
    Vector out_; ///< far enough to the front to be clear of everything
    double opening_ = 0.0;
    std::vector<Swing> swings_; ///< two for each line: up and down
};

} // namespace lapwright::fold
