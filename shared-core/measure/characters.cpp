#include "measure/characters.h"

#include <array>
#include <cstdint>

namespace lapwright::entry {

namespace {

struct Lead {
    int following;
    std::uint32_t bits;
    std::uint32_t smallest;
};

std::optional<Lead> leadByte(unsigned char byte)
{
    if (byte < 0x80)
        return Lead{0, byte, 0};
    if (byte >= 0xC2 && byte < 0xE0)
        return Lead{1, byte & 0x1FU, 0x80};
    if (byte >= 0xE0 && byte < 0xF0)
        return Lead{2, byte & 0x0FU, 0x800};
    if (byte >= 0xF0 && byte < 0xF5)
        return Lead{3, byte & 0x07U, 0x10000};
    return std::nullopt;
}

/// One character from the front of `rest`, which is shortened by it; nothing and unshortened if ill-formed.
std::optional<char32_t> takeCharacter(std::string_view& rest)
{
    const std::optional<Lead> lead = leadByte(static_cast<unsigned char>(rest.front()));
    if (!lead || rest.size() <= static_cast<std::size_t>(lead->following))
        return std::nullopt;
    std::uint32_t value = lead->bits;
    for (int i = 1; i <= lead->following; ++i) {
        const auto byte = static_cast<unsigned char>(rest[static_cast<std::size_t>(i)]);
        if ((byte & 0xC0U) != 0x80)
            return std::nullopt;
        value = (value << 6U) | (byte & 0x3FU);
    }
    const bool surrogate = value >= 0xD800 && value < 0xE000;
    if (value < lead->smallest || value > 0x10FFFF || surrogate)
        return std::nullopt;
    rest.remove_prefix(static_cast<std::size_t>(lead->following) + 1);
    return static_cast<char32_t>(value);
}

void append(std::string& text, char32_t character)
{
    const auto value = static_cast<std::uint32_t>(character);
    const bool control = value < 0x20 || (value >= 0x7F && value < 0xA0);
    const bool surrogate = value >= 0xD800 && value < 0xE000;
    const bool steersDirection = (value >= 0x202A && value <= 0x202E) || (value >= 0x2066 && value <= 0x2069);
    if (control || surrogate || steersDirection || value > 0x10FFFF) {
        text += '?';
        return;
    }
    const auto tail = [&](unsigned shift) { text += static_cast<char>(0x80U | ((value >> shift) & 0x3FU)); };
    if (value < 0x80) {
        text += static_cast<char>(value);
    } else if (value < 0x800) {
        text += static_cast<char>(0xC0U | (value >> 6U));
        tail(0);
    } else if (value < 0x10000) {
        text += static_cast<char>(0xE0U | (value >> 12U));
        tail(6);
        tail(0);
    } else {
        text += static_cast<char>(0xF0U | (value >> 18U));
        tail(12);
        tail(6);
        tail(0);
    }
}

} // namespace

std::optional<std::u32string> decode(std::string_view text)
{
    std::u32string characters;
    while (!text.empty()) {
        const std::optional<char32_t> next = takeCharacter(text);
        if (!next)
            return std::nullopt;
        characters += *next;
    }
    return characters;
}

std::string printable(std::u32string_view characters)
{
    std::string text;
    for (const char32_t character : characters)
        append(text, character);
    return text;
}

std::string printable(std::string_view bytes, std::size_t most)
{
    std::string text;
    for (std::size_t count = 0; !bytes.empty(); ++count) {
        if (count == most)
            return text + "…";
        if (const std::optional<char32_t> next = takeCharacter(bytes)) {
            append(text, *next);
        } else {
            text += '?';
            bytes.remove_prefix(1);
        }
    }
    return text;
}

char32_t plain(char32_t character)
{
    constexpr std::u32string_view primes = U"\u2018\u2019\u201B\u2032\u02B9\u02BC\u00B4\u0060\uFF07";
    constexpr std::u32string_view doublePrimes = U"\u201C\u201D\u201F\u2033\u02BA\u02EE\u3003\uFF02";
    constexpr std::u32string_view dashes = U"\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE63\uFF0D";
    constexpr std::u32string_view slashes = U"\u2044\u2215\u2571\uFF0F";
    constexpr std::u32string_view degrees = U"\u00BA\u02DA\u2218";
    constexpr std::u32string_view spaces = U"\t\u00A0\u1680\u202F\u205F\u3000";
    const auto isIn = [character](std::u32string_view set) {
        return set.find(character) != std::u32string_view::npos;
    };
    if (isIn(spaces) || (character >= 0x2000 && character <= 0x200A))
        return U' ';
    if (isIn(primes))
        return U'\'';
    if (isIn(doublePrimes))
        return U'"';
    if (isIn(dashes))
        return U'-';
    if (isIn(slashes))
        return U'/';
    if (isIn(degrees))
        return U'\u00B0';
    return character == U'\u2236' || character == U'\uFF1A' ? U':' : character;
}

bool isInvisible(char32_t character)
{
    return character == U'\u200B' || character == U'\u200C' || character == U'\u200D' ||
           character == U'\u200E' || character == U'\u200F' || character == U'\u2060' ||
           character == U'\uFEFF' || character == U'\uFE0E' || character == U'\uFE0F';
}

std::optional<VulgarFraction> vulgarFraction(char32_t character)
{
    struct Row {
        char32_t character;
        VulgarFraction fraction;
    };
    constexpr std::array<Row, 18> rows{{
        {U'\u00BC', {1, 4}},
        {U'\u00BD', {1, 2}},
        {U'\u00BE', {3, 4}},
        {U'\u2150', {1, 7}},
        {U'\u2151', {1, 9}},
        {U'\u2152', {1, 10}},
        {U'\u2153', {1, 3}},
        {U'\u2154', {2, 3}},
        {U'\u2155', {1, 5}},
        {U'\u2156', {2, 5}},
        {U'\u2157', {3, 5}},
        {U'\u2158', {4, 5}},
        {U'\u2159', {1, 6}},
        {U'\u215A', {5, 6}},
        {U'\u215B', {1, 8}},
        {U'\u215C', {3, 8}},
        {U'\u215D', {5, 8}},
        {U'\u215E', {7, 8}},
    }};
    for (const Row& row : rows)
        if (row.character == character)
            return row.fraction;
    return std::nullopt;
}

} // namespace lapwright::entry
