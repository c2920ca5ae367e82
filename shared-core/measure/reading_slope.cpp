#include "measure/entry.h"
#include "measure/reading.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lapwright {

namespace {

using entry::Entry;
using entry::Fraction;
using entry::Mark;
using entry::Token;

/// numerator / denominator, both small enough that a product of two such is safe.
struct Ratio {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
};

constexpr std::int64_t largestPart = 1'000'000;

class SlopeParser {
public:
    SlopeParser(const Entry& read, const SlopeField& field) : entry_(read), field_(field) {}

    Reading<Slope> run()
    {
        if (isPlainRatio())
            return ratio({entry_.tokens[0].fraction()->numerator, 1},
                         {entry_.tokens[0].fraction()->denominator, 1}, 0);
        const std::optional<Ratio> first = takeQuantity();
        if (!first)
            return *problem_;
        const Token* next = peek();
        if (next == nullptr)
            return bare(*first);
        if (isDegree(*next))
            return ends(1) ? degrees(*first) : *problem_;
        if (isPercent(*next))
            return ends(1) ? ratio(*first, {100, 1}, 0) : *problem_;
        const bool cutInThree = at_ == 1 && entry_.tokens[0].fraction() != nullptr &&
                                !entry_.tokens[0].fraction()->oneCharacter && next->is(Mark::Slash);
        if (cutInThree)
            fail(at_, slopeExpected());
        if (cutInThree || !takeSeparator())
            return *problem_;
        const std::size_t secondAt = at_;
        const std::optional<Ratio> second = takeQuantity();
        if (second && peek() != nullptr && peek()->is(Mark::DoublePrime))
            ++at_;
        if (!second || !ends(0))
            return *problem_;
        return ratio(*first, *second, secondAt);
    }

private:
    [[nodiscard]] const Token* peek(std::size_t ahead = 0) const
    {
        return at_ + ahead < entry_.tokens.size() ? &entry_.tokens[at_ + ahead] : nullptr;
    }
    void fail(std::size_t index, Phrase expected) { problem_ = entry_.misreadAt(index, std::move(expected)); }

    static Phrase slopeExpected() { return {"a slope such as 6/12, 6 in 12, 26.6° or 50%", {}}; }

    /// "6/12" alone is rise over run, not half a unit; "½" is half a unit.
    [[nodiscard]] bool isPlainRatio() const
    {
        const Fraction* only = entry_.tokens.size() == 1 ? entry_.tokens[0].fraction() : nullptr;
        return only != nullptr && !only->oneCharacter;
    }

    static bool isDegree(const Token& token)
    {
        const entry::Word* word = token.word();
        return token.is(Mark::Degree) ||
               (word != nullptr &&
                (word->letters == "deg" || word->letters == "degree" || word->letters == "degrees"));
    }
    static bool isPercent(const Token& token)
    {
        const entry::Word* word = token.word();
        return token.is(Mark::Percent) || (word != nullptr && word->letters == "percent");
    }

    bool ends(std::size_t ahead)
    {
        if (peek(ahead) == nullptr)
            return true;
        fail(at_ + ahead, {"the end of the slope", {}});
        return false;
    }

    /// "/", ":", "in", "on" or "to". In 6" in 12" the marks are passed over.
    bool takeSeparator()
    {
        if (peek()->is(Mark::DoublePrime))
            ++at_;
        const Token* token = peek();
        const entry::Word* word = token == nullptr ? nullptr : token->word();
        const bool separates =
            token != nullptr &&
            (token->is(Mark::Slash) || token->is(Mark::Colon) ||
             (word != nullptr && (word->letters == "in" || word->letters == "on" || word->letters == "to")));
        if (!separates)
            fail(at_, slopeExpected());
        ++at_;
        return separates;
    }

    /// number [fraction], or fraction.
    std::optional<Ratio> takeQuantity()
    {
        const Token* token = peek();
        if (token == nullptr || (token->number() == nullptr && token->fraction() == nullptr)) {
            fail(at_, token != nullptr && token->is(Mark::Dash) ? Phrase{"a slope that is not negative", {}}
                                                                : Phrase{"a number", {}});
            return std::nullopt;
        }
        Ratio sum;
        const entry::Number* number = token->number();
        if (number != nullptr) {
            if (number->whole > largestPart || number->billionths % 1'000 != 0) {
                fail(at_, {"at most 1 000 000, with at most six decimals", {}});
                return std::nullopt;
            }
            sum = number->hasDecimals
                      ? Ratio{number->whole * 1'000'000 + number->billionths / 1'000, 1'000'000}
                      : Ratio{number->whole, 1};
            ++at_;
            if (peek() != nullptr && peek()->is(Mark::Dash) && peek(1) != nullptr &&
                peek(1)->fraction() != nullptr)
                ++at_;
        }
        if (!addFraction(sum, number))
            return std::nullopt;
        const std::int64_t divisor = std::max<std::int64_t>(std::gcd(sum.numerator, sum.denominator), 1);
        return Ratio{sum.numerator / divisor, sum.denominator / divisor};
    }

    bool addFraction(Ratio& sum, const entry::Number* number)
    {
        const Fraction* fraction = peek() == nullptr ? nullptr : peek()->fraction();
        if (fraction == nullptr)
            return true;
        if (number != nullptr && number->hasDecimals) {
            fail(at_, {"either decimals or a fraction", {}});
            return false;
        }
        if (fraction->numerator >= fraction->denominator || fraction->denominator > 1'000) {
            fail(at_, {"a fraction below 1, such as 1 1/4", {}});
            return false;
        }
        sum = {sum.numerator * fraction->denominator + fraction->numerator, fraction->denominator};
        ++at_;
        return true;
    }

    /// rise / run as an exact slope, in millionths of what was written where that is exact. `at` is the token
    /// that a slope out of range is reported at.
    Reading<Slope> ratio(Ratio rise, Ratio run, std::size_t at) const
    {
        constexpr std::int64_t largestScaled = 1'000'000'000;
        // Both parts are below 10^12 over 10^6, so that neither product passes 10^18.
        const std::int64_t up = rise.numerator * run.denominator;
        const std::int64_t along = run.numerator * rise.denominator;
        const std::int64_t common = rise.denominator * run.denominator;
        std::int64_t scale = Slope::unit % common == 0 ? Slope::unit / common : Slope::unit;
        if (up > largestScaled || along > largestScaled)
            scale = 1;
        const std::optional<Slope> slope = Slope::fromMillionths(up * scale, along * scale);
        if (!slope)
            return entry_.misreadAt(at, {"a run above 0 and a slope of at most 1 000 in 1", {}});
        return *slope;
    }

    Reading<Slope> degrees(Ratio value) const
    {
        constexpr double finest = 1e12;
        const double angle = static_cast<double>(value.numerator) / static_cast<double>(value.denominator);
        const double tangent = std::tan(Angle::degrees(angle).inRadians());
        if (angle >= 90.0 || tangent > static_cast<double>(Slope::steepest))
            return entry_.misreadAt(0, {"less than 90° and at most 1 000 in 1", {}});
        const auto rise = static_cast<std::int64_t>(std::llround(tangent * finest));
        const std::optional<Slope> slope = Slope::fromMillionths(rise, static_cast<std::int64_t>(finest));
        if (!slope)
            return entry_.misreadAt(0, {"less than 90° and at most 1 000 in 1", {}});
        return *slope;
    }

    Reading<Slope> bare(Ratio value) const
    {
        const SlopeUnit* unit = field_.unit ? &*field_.unit : nullptr;
        if (unit != nullptr && *unit == SlopeUnit::Percent)
            return ratio(value, {100, 1}, 0);
        if (unit != nullptr && *unit == SlopeUnit::Degrees)
            return degrees(value);
        Reading<Slope> inTwelve = ratio(value, {12, 1}, 0);
        if (unit != nullptr)
            return inTwelve;
        Reading<Slope> inDegrees = degrees(value);
        if (!inTwelve.value() || !inDegrees.value() || *inTwelve.value() == *inDegrees.value())
            return inTwelve.isExact() ? inTwelve : inDegrees;
        return {entry_.shown,
                {{*inTwelve.value(), write(*inTwelve.value())},
                 {*inDegrees.value(), write(Angle::degrees(static_cast<double>(value.numerator) /
                                                           static_cast<double>(value.denominator)))}}};
    }

    const Entry& entry_;
    const SlopeField& field_;
    std::size_t at_ = 0;
    std::optional<Misreading> problem_;
};

} // namespace

Reading<Slope> readSlope(std::string_view text, const SlopeField& field)
{
    const std::variant<Entry, Misreading> read = entry::cut(text);
    if (const auto* misreading = std::get_if<Misreading>(&read))
        return *misreading;
    return SlopeParser(std::get<Entry>(read), field).run();
}

} // namespace lapwright
