#pragma once

#include "measure/phrase.h"

#include <cstdint>
#include <string>
#include <string_view>

/// Measures as people write them.
namespace lapwright {

enum class LengthUnit { FeetInches, Inches, Millimetres };

/// How one reader wants to see measures, and in which language.
struct Style {
    LengthUnit unit = LengthUnit::FeetInches;
    /// Smallest fraction of an inch shown: 8, 16, 32 or 64.
    int inchDenominator = 16;
    /// Smallest step shown in millimetres, in tenths of a millimetre: 10 (1 mm), 5 (0.5 mm) or 1 (0.1 mm).
    int tenthsOfMillimetre = 5;
    /// Puts a sentence and the names among its values into the reader's language; none: English, as it is.
    Phrase (*translation)(Phrase) = nullptr;
};

/// The program's English in the reader's language.
[[nodiscard]] std::string translated(const std::string& english, const Style& style);

/// A name as files write it, for people: "slope change" for slope_change.
[[nodiscard]] std::string withSpaces(std::string_view name);

/// 12' 6 3/8", 6 3/8", 3820 mm. Rounded to the style's smallest step, nearest.
[[nodiscard]] std::string write(Length value, const Style& style);
/// Exactly, so that readLength gives back the same value: 12' 6 3/8" where it is a whole number of 64ths,
/// otherwise decimals of an inch (6.3701"), or millimetres with up to six decimals. A length in inches
/// without an end needs at most nine decimals to round back to its nanometre.
[[nodiscard]] std::string writeExact(Length value, LengthUnit unit);
/// Sheet thickness: 0.0276" or 0.70 mm.
[[nodiscard]] std::string writeThickness(Length value, const Style& style);
/// 12.3 kg.
[[nodiscard]] std::string writeKilograms(double kilograms);
/// 27 lb for those who measure in feet or inches, 12.3 kg for the others.
[[nodiscard]] std::string writeMass(double kilograms, const Style& style);
/// "1 piece", "3 pieces".
[[nodiscard]] std::string counted(std::int64_t count, const std::string& what);
[[nodiscard]] std::string counted(std::int64_t count, const std::string& what, const Style& style);
/// 26.57°, at most two decimals, none where they are zero.
[[nodiscard]] std::string write(Angle value);
/// 6 in 12; a slope entered otherwise is shown per 12 with at most two decimals.
[[nodiscard]] std::string write(Slope value);

/// The sentence in the reader's language with its values put in. A name without a value stays visible as
/// {name}.
[[nodiscard]] std::string say(const Phrase& english, const Style& style);

} // namespace lapwright
