#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/phrase.h"
#include "measure/result.h"
#include "measure/slope.h"
#include "measure/writing.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// Reading measures the way people write them. Text goes straight to integers; what could mean two things is
/// handed back with both meanings and never guessed at. No function here throws, whatever the bytes.
namespace lapwright {

/// The longest entry that is looked at, in characters.
inline constexpr std::size_t longestEntry = 64;

/// One thing an entry can mean, and how to write it so that it can mean nothing else.
template <class T>
struct Candidate {
    T value;
    std::string words;

    friend bool operator==(const Candidate&, const Candidate&) = default;
};

/// An entry that means nothing: what was typed (made printable), what stood where, what was expected there.
struct Misreading {
    std::string entered;
    /// Character that could not be used, counted from 1; one past the last if something is missing.
    std::size_t position = 1;
    std::string found;
    Phrase expected;

    friend bool operator==(const Misreading&, const Misreading&) = default;
};

/// "{entered}: found {found} at character {position}, expected …" as one sentence.
[[nodiscard]] Phrase sentence(const Misreading& misreading);
/// "{entered} can be read as {reading1} or {reading2}: write the unit", or whatever settles it.
[[nodiscard]] Phrase ambiguitySentence(const std::string& entered, const std::vector<std::string>& readings,
                                       const std::string& settledBy);

/// What an entry turned out to be: one exact value, two or more possible values, or nothing.
template <class T>
class [[nodiscard]] Reading {
public:
    Reading(T value) : state_(std::move(value)) {}                    // NOLINT(google-explicit-constructor)
    Reading(Misreading misreading) : state_(std::move(misreading)) {} // NOLINT(google-explicit-constructor)
    /// Precondition: two or more candidates with different values. `settledBy`: what the person can do.
    Reading(std::string entered, std::vector<Candidate<T>> candidates,
            std::string settledBy = "write the unit")
        : state_(Ambiguity{std::move(entered), std::move(candidates), std::move(settledBy)})
    {
    }

    [[nodiscard]] bool isExact() const { return std::holds_alternative<T>(state_); }
    [[nodiscard]] bool isAmbiguous() const { return std::holds_alternative<Ambiguity>(state_); }
    [[nodiscard]] bool isNonsense() const { return std::holds_alternative<Misreading>(state_); }

    [[nodiscard]] std::optional<T> value() const
    {
        return isExact() ? std::optional<T>(std::get<T>(state_)) : std::nullopt;
    }
    /// The possible values of an ambiguous entry, otherwise none.
    [[nodiscard]] std::vector<Candidate<T>> candidates() const
    {
        return isAmbiguous() ? std::get<Ambiguity>(state_).candidates : std::vector<Candidate<T>>();
    }
    /// Why there is no value, for a person; an empty phrase if there is one.
    [[nodiscard]] Phrase problem() const
    {
        if (isNonsense())
            return sentence(std::get<Misreading>(state_));
        if (isAmbiguous())
            return ambiguitySentence(std::get<Ambiguity>(state_).entered, words(),
                                     std::get<Ambiguity>(state_).settledBy);
        return {};
    }
    /// The value, or an Error at `place` that quotes what was entered and says what was expected.
    [[nodiscard]] Result<T> result(const std::string& place) const
    {
        if (isExact())
            return std::get<T>(state_);
        if (isAmbiguous())
            return Error{place, std::get<Ambiguity>(state_).entered, "only one of " + joined(words())};
        const auto& wrong = std::get<Misreading>(state_);
        return Error{place, wrong.entered, say(wrong.expected, {})};
    }

private:
    struct Ambiguity {
        std::string entered;
        std::vector<Candidate<T>> candidates;
        std::string settledBy;
    };

    [[nodiscard]] std::vector<std::string> words() const
    {
        std::vector<std::string> all;
        for (const Candidate<T>& candidate : std::get<Ambiguity>(state_).candidates)
            all.push_back(candidate.words);
        return all;
    }
    static std::string joined(const std::vector<std::string>& all)
    {
        std::string text;
        for (const std::string& one : all)
            text += (text.empty() ? "" : " or ") + one;
        return text;
    }

    std::variant<T, Ambiguity, Misreading> state_;
};

/// What the field an entry was typed into says about it.
struct LengthField {
    /// Unit of a number written without one. FeetInches: the number is either feet or inches, hence
    /// ambiguous. None: it is inches or millimetres, hence ambiguous.
    std::optional<LengthUnit> unit;
    bool negativeAllowed = false;
};

/// Reads a length: 12' 6-3/8", 12 6 3/8, 12-6-3/8, 150.375", 150 3/8, 12.5', 12ft 6in, 3.82 m, 3820 mm,
/// 382 cm, 3,82 m, ½, 1 028 mm, with typographic or plain marks, dashes and spaces.
///
/// Two or more numbers without a mark are feet and inches; a number with a fraction is inches. Fractions of
/// an inch are in halves to sixty-fourths, tenths or hundredths and less than one. Inches after feet are less
/// than 12. "3,820" is 3820 or 3.82, hence ambiguous. At most nine decimals, nearest nanometre.
[[nodiscard]] Reading<Length> readLength(std::string_view text, const LengthField& field);

enum class SlopeUnit { RiseInTwelve, Degrees, Percent };

struct SlopeField {
    /// Unit of a number written alone. None: it is rise in 12 or degrees, hence ambiguous.
    std::optional<SlopeUnit> unit;
};

/// Reads a slope: 6/12, 6 in 12, 6:12, 6 on 12, 6 1/2:12, 26.6°, 26.6 deg, 50%. Written as a ratio it is rise
/// first and kept exactly; from degrees it is kept to one part in 10^12. Never negative, at most 1 000 in 1.
[[nodiscard]] Reading<Slope> readSlope(std::string_view text, const SlopeField& field);

struct AngleField {
    bool negativeAllowed = false;
};

/// Reads an angle in degrees: 90, 90°, 22.5, 22 1/2°, 90 deg, 26°33'54", 26-33-54, 26 33 54, 26°33'. Minutes
/// and seconds are below 60. "26 33" is 26°33' or 26.33°, hence ambiguous. At most 360° either way.
[[nodiscard]] Reading<Angle> readAngle(std::string_view text, const AngleField& field);

} // namespace lapwright
