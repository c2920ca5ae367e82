#pragma once

#include "site/bearing.h"
#include "site/chain.h"

#include <cstddef>
#include <optional>
#include <vector>

/// A chain laid out on the ground.
namespace lapwright::site {

/// Where a chain lies: on the ground plan, or, for the head, sill and jambs around an opening, in the face of
/// the wall, where its lengths and corners are those of the opening.
enum class Figure { GroundPlan, WallFace };

/// Plan coordinates of a chain as measured. The first run starts at the origin.
struct Plan {
    Figure figure = Figure::GroundPlan;
    /// By run: level length, and bearing.
    std::vector<Length> lengths;
    std::vector<Bearing> bearings;
    /// points[i] is where run i starts; the last is where the last run ends. One more than runs.
    std::vector<PlanVector> points;
    Length perimeter;

    /// From the start to where the last run ends: the linear misclosure of a closed chain.
    [[nodiscard]] PlanVector startToEnd() const { return points.back() - points.front(); }
};

/// Interior angles of all corners. Nothing if one cannot be, or their number does not suit the chain.
[[nodiscard]] std::optional<std::vector<Angle>> interiorAngles(const Chain& chain);
/// (n − 2) · 180°, the sum of the interior angles of a figure with n corners.
[[nodiscard]] Angle expectedAngleSum(std::size_t corners);
/// Sum of the interior angles − the expected sum. Square corners add up exactly.
[[nodiscard]] Angle angularMisclosure(const std::vector<Angle>& interior);
/// The angular misclosure shared out equally, with opposite sign, over the corners that were measured; square
/// corners, which are counted and not measured, keep their angle unless there is nothing else.
/// Source: equal distribution, NPTEL Surveying, archive.nptel.ac.in, 28-19.htm, example 28-3.
[[nodiscard]] std::vector<Angle> balanced(const Chain& chain, std::vector<Angle> interior);

[[nodiscard]] Figure figureOf(const Chain& chain);

/// Lays the chain out with these interior angles (those of a closed chain's last corner do not move any
/// point). Sloped runs count with their level length, upright ones with none. Nothing while a length or slope
/// is missing or there are too few angles.
[[nodiscard]] std::optional<Plan> planWith(const Chain& chain, const std::vector<Angle>& interior);
/// Lays the chain out with the angles as given: no angular adjustment.
[[nodiscard]] std::optional<Plan> planOf(const Chain& chain);

/// Points moved by the compass rule (Bowditch) so that the last comes to lie −`misclosure` from where it was:
/// each leg takes −misclosure · its length / the sum of lengths. For a closed chain `misclosure` is
/// startToEnd(); for a run of legs between two known points, what the end misses the known one by. What was
/// measured is not touched. Source: Purdue University ASM 215,
/// engineering.purdue.edu/~asm215/topics/travcalc.html.
[[nodiscard]] std::vector<PlanVector> compassRule(const Plan& plan, PlanVector misclosure);

} // namespace lapwright::site
