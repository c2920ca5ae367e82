#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Characters as tablets and desks produce them, brought to the few that measures are written with.
namespace lapwright::entry {

/// The characters of UTF-8 text; nothing if it is not UTF-8 (over-long forms and surrogates included).
[[nodiscard]] std::optional<std::u32string> decode(std::string_view text);
/// UTF-8 of printable characters; control characters and what is not a character become "?".
[[nodiscard]] std::string printable(std::u32string_view characters);
/// The first `most` characters of any bytes, printable, with "…" if some were left off.
[[nodiscard]] std::string printable(std::string_view bytes, std::size_t most);

/// One of many spaces, dashes, primes, quotes, slashes, colons, degree signs → the plain one ( ' " - / : °).
[[nodiscard]] char32_t plain(char32_t character);
/// Characters that show nothing (zero-width spaces and joiners, direction marks), pasted in from elsewhere.
[[nodiscard]] bool isInvisible(char32_t character);

struct VulgarFraction {
    int numerator;
    int denominator;
};
/// ½, ⅜, … as a fraction.
[[nodiscard]] std::optional<VulgarFraction> vulgarFraction(char32_t character);

} // namespace lapwright::entry
