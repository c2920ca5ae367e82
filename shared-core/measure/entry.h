#pragma once

#include "measure/reading.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What a person typed, cut into numbers, fractions, marks and words: the first half of every reader.
namespace lapwright::entry {

/// A number, exactly as written: `whole` and `billionths`.
struct Number {
    std::int64_t whole = 0;
    std::int64_t billionths = 0;
    bool hasDecimals = false;
    /// "3,820": read as a decimal comma above; read as a thousands comma it is this whole number.
    std::optional<std::int64_t> ifThousands;
};

struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    /// Typed as one character, such as ½.
    bool oneCharacter = false;
};

enum class Mark { Prime, DoublePrime, Degree, Percent, Dash, Plus, Slash, Colon };

/// Letters, in lower case, without the full stop of an abbreviation.
struct Word {
    std::string letters;
};

struct Token {
    std::variant<Number, Fraction, Mark, Word> what;
    /// First character, counted from 1.
    std::size_t position = 1;
    std::string text;

    [[nodiscard]] const Number* number() const { return std::get_if<Number>(&what); }
    [[nodiscard]] const Fraction* fraction() const { return std::get_if<Fraction>(&what); }
    [[nodiscard]] const Word* word() const { return std::get_if<Word>(&what); }
    [[nodiscard]] bool is(Mark mark) const
    {
        const Mark* own = std::get_if<Mark>(&what);
        return own != nullptr && *own == mark;
    }
};

struct Entry {
    /// What was typed, made printable: at most `longestEntry` characters, control characters as "?".
    std::string shown;
    std::vector<Token> tokens;
    /// Position just past the last character.
    std::size_t end = 1;

    /// The misreading at token `index`, or past the end if there is no such token.
    [[nodiscard]] Misreading misreadAt(std::size_t index, Phrase expected) const;
};

/// Largest whole number that is taken; with any unit of a metre or less it stays inside 64 bits only after
/// the reader's own check.
inline constexpr std::int64_t largestWhole = 1'000'000'000'000'000;

/// Precondition: none; any bytes. Errors: not UTF-8, too long, empty, a character that has no place in a
/// measure, a number with too many digits or decimals, a fraction with denominator 0.
[[nodiscard]] std::variant<Entry, Misreading> cut(std::string_view text);

} // namespace lapwright::entry
