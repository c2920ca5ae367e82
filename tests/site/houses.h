#pragma once

#include "measure/rounding.h"
#include "site/chain.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <string>
#include <utility>
#include <vector>

/// Houses made so that they close exactly, to be measured wrongly in tests.
namespace houses {

using namespace lapwright;
using namespace lapwright::site;

struct Point {
    std::int64_t east = 0; ///< nm
    std::int64_t north = 0;
};

inline Run eave(std::string id, Length length)
{
    Run run;
    run.id = std::move(id);
    run.kind = RunKind::Eave;
    run.lengths = {{length, ""}};
    run.slope = Slope::twelfths(6);
    return run;
}

/// Corner given as a person would: square ones as such.
inline Corner cornerOf(double interiorRadians)
{
    if (std::abs(interiorRadians - std::numbers::pi / 2.0) < 1e-12)
        return SquareOutside{};
    if (std::abs(interiorRadians - 1.5 * std::numbers::pi) < 1e-12)
        return SquareInside{};
    return InteriorAngle{Angle::radians(interiorRadians), ""};
}

/// The closed chain around `corners`, counter-clockwise.
inline Chain around(const std::vector<Point>& corners)
{
    Chain chain;
    chain.id = "house";
    chain.name = "House";
    chain.closed = true;
    const std::size_t count = corners.size();
    const auto bearing = [&](std::size_t run) {
        const Point &from = corners[run % count], &to = corners[(run + 1) % count];
        return std::atan2(static_cast<double>(to.north - from.north),
                          static_cast<double>(to.east - from.east));
    };
    chain.firstBearing = Angle::radians(bearing(0));
    for (std::size_t run = 0; run < count; ++run) {
        const Point &from = corners[run], &to = corners[(run + 1) % count];
        const double length =
            std::hypot(static_cast<double>(to.east - from.east), static_cast<double>(to.north - from.north));
        chain.runs.push_back(eave("E" + std::to_string(run + 1), Length::nanometres(std::llround(length))));
        const double turn = std::remainder(bearing(run + 1) - bearing(run), 2.0 * std::numbers::pi);
        chain.corners.push_back(cornerOf(std::numbers::pi - turn));
    }
    return chain;
}

/// All corners square, `wings` steps along its north side; lengths in sixteenths of an inch.
inline Chain rectilinear(std::mt19937& random, std::size_t wings)
{
    const std::int64_t sixteenth = Length::sixtyFourths(4).inNanometres();
    std::uniform_int_distribution<std::int64_t> width(4 * 192, 20 * 192), depth(12 * 192, 40 * 192);
    std::vector<std::int64_t> widths, depths;
    for (std::size_t wing = 0; wing < wings; ++wing) {
        widths.push_back(width(random) * sixteenth);
        std::int64_t next = depth(random) * sixteenth;
        while (!depths.empty() && std::abs(next - depths.back()) < 24 * 16 * sixteenth)
            next = depth(random) * sixteenth;
        depths.push_back(next);
    }
    std::vector<Point> corners{{0, 0}};
    std::int64_t east = 0;
    for (const std::int64_t one : widths)
        east += one;
    corners.push_back({east, 0});
    for (std::size_t wing = wings; wing-- > 0;) {
        corners.push_back({east, depths[wing]});
        east -= widths[wing];
        corners.push_back({east, depths[wing]});
    }
    return around(corners);
}

/// Corners at random distances around a middle, in millimetres: no two runs parallel but by chance.
inline Chain general(std::mt19937& random, std::size_t corners)
{
    std::uniform_real_distribution<double> distance(5'000.0, 14'000.0), jitter(0.1, 0.9);
    std::vector<Point> points;
    for (std::size_t corner = 0; corner < corners; ++corner) {
        const double angle = 2.0 * std::numbers::pi * (static_cast<double>(corner) + jitter(random)) /
                             static_cast<double>(corners);
        const double far = distance(random);
        points.push_back({std::llround(far * std::cos(angle)) * 1'000'000,
                          std::llround(far * std::sin(angle)) * 1'000'000});
    }
    return around(points);
}

} // namespace houses
