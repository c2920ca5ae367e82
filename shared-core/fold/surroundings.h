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

/// The machine with one beam face, as what the middle of one blank's sheet has to keep out of.
class Surroundings {
public:
    Surroundings(const Blank& blank, const Machine& machine, std::size_t face, const Settings& settings);

    /// What stops a part of the sheet, from points[1] on, from being laid in: slid through the open clamp
    /// from the front, lifted by `lift`, let down, and the clamp closed on it. The beam that folds up is at
    /// rest then; one that folds down comes to the sheet when the clamp has closed.
    [[nodiscard]] std::optional<Obstacle> layingIn(const std::vector<Vector>& points, Direction direction,
                                                   double lift) const;
    /// How far a part that hangs below the sheet's plane is lifted over the bed: whole millimetres, 0 if none
    /// does.
    [[nodiscard]] static double liftFor(const std::vector<Vector>& points);
    /// What the part in front meets as it turns with the fold at `line`; it is formed from `nearest` on and
    /// nowhere further round the pole than `largestAngle`.
    [[nodiscard]] std::optional<Obstacle> sweeping(const std::vector<Vector>& points, std::size_t line,
                                                   Direction direction, double nearest,
                                                   double largestAngle) const;

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
        double turn;
    };

    Barrier bed_, clamp_, openClamp_, upBeam_, downBeam_;
    Vector out_; ///< far enough to the front to be clear of everything
    double opening_ = 0.0;
    std::vector<Swing> swings_; ///< two for each line: up and down
};

} // namespace lapwright::fold
