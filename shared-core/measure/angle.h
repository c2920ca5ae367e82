#pragma once

#include <compare>
#include <numbers>

namespace lapwright {

/// A signed plane angle. Radians inside, degrees for people and files.
class Angle {
public:
    constexpr Angle() = default;

    [[nodiscard]] static constexpr Angle radians(double value) { return Angle(value); }
    [[nodiscard]] static constexpr Angle degrees(double value)
    {
        return Angle(value * std::numbers::pi / 180.0);
    }

    [[nodiscard]] constexpr double inRadians() const { return radians_; }
    [[nodiscard]] constexpr double inDegrees() const { return radians_ * 180.0 / std::numbers::pi; }

    // clang-tidy 14 takes the defaulted comparison for a null pointer.
    constexpr auto operator<=>(const Angle&) const = default; // NOLINT(modernize-use-nullptr)

    constexpr Angle& operator+=(Angle other)
    {
        radians_ += other.radians_;
        return *this;
    }
    constexpr Angle& operator-=(Angle other)
    {
        radians_ -= other.radians_;
        return *this;
    }
    friend constexpr Angle operator+(Angle left, Angle right) { return left += right; }
    friend constexpr Angle operator-(Angle left, Angle right) { return left -= right; }
    friend constexpr Angle operator-(Angle value) { return Angle(-value.radians_); }
    friend constexpr Angle operator*(Angle value, double factor) { return Angle(value.radians_ * factor); }
    friend constexpr Angle operator*(double factor, Angle value) { return value * factor; }
    friend constexpr Angle operator/(Angle value, double divisor) { return Angle(value.radians_ / divisor); }

private:
    explicit constexpr Angle(double radians) : radians_(radians) {}

    double radians_ = 0.0;
};

[[nodiscard]] constexpr Angle magnitude(Angle value)
{
    return value < Angle() ? -value : value;
}

inline constexpr Angle quarterTurn = Angle::degrees(90.0);
inline constexpr Angle halfTurn = Angle::degrees(180.0);
inline constexpr Angle fullTurn = Angle::degrees(360.0);

} // namespace lapwright
