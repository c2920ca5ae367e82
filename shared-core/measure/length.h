#pragma once

#include <compare>
#include <cstdint>

namespace lapwright {

/// A signed length in whole nanometres.
///
/// Nanometres are exact in both tape systems (1/64 in = 396 875 nm, 0.1 mm = 100 000 nm), so sums of what
/// people measured never drift. There is no conversion from a floating-point number here: the functions that
/// round are named and stand in rounding.h.
class Length {
public:
    constexpr Length() = default;

    [[nodiscard]] static constexpr Length nanometres(std::int64_t count) { return Length(count); }
    [[nodiscard]] static constexpr Length micrometres(std::int64_t count) { return Length(count * 1'000); }
    [[nodiscard]] static constexpr Length millimetres(std::int64_t count)
    {
        return Length(count * 1'000'000);
    }
    [[nodiscard]] static constexpr Length sixtyFourths(std::int64_t count) { return Length(count * 396'875); }
    /// Thousandths of an inch ("mils"), the unit sheet thickness is quoted in.
    [[nodiscard]] static constexpr Length thousandths(std::int64_t count) { return Length(count * 25'400); }
    [[nodiscard]] static constexpr Length inches(std::int64_t count) { return Length(count * 25'400'000); }
    [[nodiscard]] static constexpr Length feet(std::int64_t count) { return Length(count * 304'800'000); }

    [[nodiscard]] constexpr std::int64_t inNanometres() const { return nanometres_; }

    // clang-tidy 14 takes the defaulted comparison for a null pointer.
    constexpr auto operator<=>(const Length&) const = default; // NOLINT(modernize-use-nullptr)

    constexpr Length& operator+=(Length other)
    {
        nanometres_ += other.nanometres_;
        return *this;
    }
    constexpr Length& operator-=(Length other)
    {
        nanometres_ -= other.nanometres_;
        return *this;
    }
    friend constexpr Length operator+(Length left, Length right) { return left += right; }
    friend constexpr Length operator-(Length left, Length right) { return left -= right; }
    friend constexpr Length operator-(Length value) { return Length(-value.nanometres_); }
    friend constexpr Length operator*(Length value, std::int64_t factor)
    {
        return Length(value.nanometres_ * factor);
    }
    friend constexpr Length operator*(std::int64_t factor, Length value) { return value * factor; }
    /// How many whole `right` fit into `left`, towards zero.
    friend constexpr std::int64_t operator/(Length left, Length right)
    {
        return left.nanometres_ / right.nanometres_;
    }
    /// Division by a count, towards zero; what is left over is `value % count`.
    friend constexpr Length operator/(Length value, std::int64_t count)
    {
        return Length(value.nanometres_ / count);
    }
    friend constexpr Length operator%(Length left, Length right)
    {
        return Length(left.nanometres_ % right.nanometres_);
    }
    friend constexpr Length operator%(Length value, std::int64_t count)
    {
        return Length(value.nanometres_ % count);
    }

private:
    explicit constexpr Length(std::int64_t nanometres) : nanometres_(nanometres) {}

    std::int64_t nanometres_ = 0;
};

[[nodiscard]] constexpr Length magnitude(Length value)
{
    return value < Length() ? -value : value;
}

} // namespace lapwright
