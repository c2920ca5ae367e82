#include "site/bearing.h"

#include "measure/rounding.h"

#include <cmath>
#include <numbers>

namespace lapwright::site {

namespace {

constexpr double quarter = std::numbers::pi / 2.0;
/// What a quarter turn given in radians or degrees may be off by: a few units in the last place.
constexpr double noise = 1e-12;

/// cos(quarters · 90° + rest).
double cosine(int quarters, double rest)
{
    switch (quarters % 4) {
    case 0:
        return std::cos(rest);
    case 1:
        return -std::sin(rest);
    case 2:
        return -std::cos(rest);
    default:
        return std::sin(rest);
    }
}

} // namespace

Length magnitude(const PlanVector& vector)
{
    return nearestFromMillimetres(std::hypot(inMillimetres(vector.east), inMillimetres(vector.north)));
}

void Bearing::turn(Angle angle)
{
    const double whole = std::remainder(angle.inRadians(), 2.0 * std::numbers::pi);
    const double turned = std::round(whole / quarter);
    const double over = whole - turned * quarter;
    rest_ += std::abs(over) < noise ? 0.0 : over;
    const double carried = std::round(rest_ / quarter);
    rest_ -= carried * quarter;
    if (std::abs(rest_) < noise)
        rest_ = 0.0;
    const int quarters = quarters_ + static_cast<int>(turned + carried);
    quarters_ = ((quarters % 4) + 4) % 4;
}

double Bearing::east() const
{
    return cosine(quarters_, rest_);
}

double Bearing::north() const
{
    // sin x = cos(x − 90°)
    return cosine(quarters_ + 3, rest_);
}

PlanVector Bearing::step(Length length) const
{
    return {scaled(length, east()), scaled(length, north())};
}

} // namespace lapwright::site
