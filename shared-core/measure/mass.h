#pragma once

#include <compare>

namespace lapwright {

/// How heavy something is. Kilograms inside and in files, pounds for those who measure in feet or inches.
class Mass {
public:
    constexpr Mass() = default;

    [[nodiscard]] static constexpr Mass kilograms(double value) { return Mass(value); }

    [[nodiscard]] constexpr double inKilograms() const { return kilograms_; }

    // clang-tidy 14 takes the defaulted comparison for a null pointer.
    constexpr auto operator<=>(const Mass&) const = default; // NOLINT(modernize-use-nullptr)

private:
    explicit constexpr Mass(double kilograms) : kilograms_(kilograms) {}

    double kilograms_ = 0.0;
};

} // namespace lapwright
