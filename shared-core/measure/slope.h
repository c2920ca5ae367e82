#pragma once

#include "measure/angle.h"

#include <cmath>
#include <cstdint>
#include <optional>

namespace lapwright {

/// A roof slope, kept as the exact ratio that was entered: rise in run, both in millionths of a unit.
///
/// `Slope()` is level. A slope is never negative and never vertical, so every function of it has a value.
class Slope {
public:
    /// The steepest slope that is still a roof and not a wall: 1 000 in 1.
    static constexpr std::int64_t steepest = 1'000;
    static constexpr std::int64_t unit = 1'000'000;

    constexpr Slope() = default;

    /// `rise` in `run`, both in millionths. Nothing if run <= 0, rise < 0, either is over 10^15, or the slope
    /// is steeper than `steepest`.
    [[nodiscard]] static constexpr std::optional<Slope> fromMillionths(std::int64_t rise, std::int64_t run)
    {
        constexpr std::int64_t most = 1'000'000'000'000'000;
        if (run <= 0 || run > most || rise < 0 || rise > most || rise > run * steepest)
            return std::nullopt;
        return Slope(rise, run);
    }

    /// Rise in 12, the way roofs are spoken of: twelfths(6) is 6 in 12. Precondition: 0 <= rise <= 12 000.
    [[nodiscard]] static constexpr Slope twelfths(std::int64_t rise) { return Slope(rise * unit, 12 * unit); }

    [[nodiscard]] constexpr std::int64_t riseMillionths() const { return rise_; }
    [[nodiscard]] constexpr std::int64_t runMillionths() const { return run_; }

    [[nodiscard]] constexpr double ratio() const
    {
        return static_cast<double>(rise_) / static_cast<double>(run_);
    }
    [[nodiscard]] Angle angle() const { return Angle::radians(std::atan(ratio())); }
    [[nodiscard]] constexpr bool isLevel() const { return rise_ == 0; }

    /// Same steepness; 3 in 6 equals 6 in 12.
    friend constexpr bool operator==(Slope left, Slope right) { return compare(left, right) == 0; }
    friend constexpr bool operator<(Slope left, Slope right) { return compare(left, right) < 0; }

private:
    constexpr Slope(std::int64_t rise, std::int64_t run) : rise_(rise), run_(run) {}

    /// Exact comparison of two fractions by their continued fractions: no product that could overflow.
    static constexpr int compare(Slope left, Slope right)
    {
        std::int64_t a = left.rise_, b = left.run_, c = right.rise_, d = right.run_;
        int sign = 1;
        for (;;) {
            const std::int64_t whole = a / b, otherWhole = c / d;
            if (whole != otherWhole)
                return whole < otherWhole ? -sign : sign;
            a %= b;
            c %= d;
            if (a == 0 || c == 0)
                return a == c ? 0 : (a == 0 ? -sign : sign);
            const std::int64_t oldA = a, oldC = c;
            a = b;
            b = oldA;
            c = d;
            d = oldC;
            sign = -sign;
        }
    }

    std::int64_t rise_ = 0;
    std::int64_t run_ = unit;
};

} // namespace lapwright
