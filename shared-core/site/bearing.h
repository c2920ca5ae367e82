#pragma once

#include "measure/angle.h"
#include "measure/length.h"

namespace lapwright::site {

/// A displacement or a point in plan: east and north.
struct PlanVector {
    Length east;
    Length north;

    friend bool operator==(const PlanVector&, const PlanVector&) = default;
    friend PlanVector operator+(PlanVector left, PlanVector right)
    {
        return {left.east + right.east, left.north + right.north};
    }
    friend PlanVector operator-(PlanVector left, PlanVector right)
    {
        return {left.east - right.east, left.north - right.north};
    }
};

/// Distance covered, to the nearest nanometre.
[[nodiscard]] Length magnitude(const PlanVector& vector);

/// A direction in plan, counter-clockwise from east, kept as whole quarter turns and the rest: square corners
/// are exact however many there are, so a rectilinear house closes to the nanometre.
class Bearing {
public:
    Bearing() = default;
    explicit Bearing(Angle fromEast) { turn(fromEast); }

    /// Turns left by `angle`. A quarter turn held in radians counts as exact.
    void turn(Angle angle);

    /// In [−45°, 45°]: what is over whole quarter turns.
    [[nodiscard]] Angle rest() const { return Angle::radians(rest_); }
    /// 0, 1, 2 or 3 quarter turns from east, before the rest.
    [[nodiscard]] int quarters() const { return quarters_; }
    /// In [−45°, 315°].
    [[nodiscard]] Angle fromEast() const { return quarterTurn * static_cast<double>(quarters_) + rest(); }

    /// Components of a unit step: exactly 0 and ±1 along the axes.
    [[nodiscard]] double east() const;
    [[nodiscard]] double north() const;
    /// A step of this length, each component to the nearest nanometre.
    [[nodiscard]] PlanVector step(Length length) const;

private:
    int quarters_ = 0;
    double rest_ = 0.0;
};

} // namespace lapwright::site
