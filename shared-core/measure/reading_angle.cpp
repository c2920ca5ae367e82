#include "measure/entry.h"
#include "measure/reading.h"

namespace lapwright {

namespace {

using entry::Entry;
using entry::Fraction;
using entry::Mark;
using entry::Number;
using entry::Token;

constexpr std::int64_t largestDegrees = 360;

double inUnits(const Number& number)
{
    return static_cast<double>(number.whole) + static_cast<double>(number.billionths) * 1e-9;
}

class AngleParser {
public:
    AngleParser(const Entry& read, const AngleField& field) : entry_(read), field_(field) {}

    Reading<Angle> run()
    {
        takeSign();
        takeDegrees();
        if (!problem_ && !fraction_ && peek() != nullptr)
            takeMinutes();
        if (!problem_ && minutes_ && peek() != nullptr)
            takeSeconds();
        if (!problem_ && peek() != nullptr)
            fail(at_, {"the end of the angle", {}});
        if (!problem_ && inDegrees() > static_cast<double>(largestDegrees))
            fail(0, {"at most 360°", {}});
        if (problem_)
            return *problem_;
        if (minutes_ && !seconds_ && !marked_)
            return minutesOrDecimals();
        return signedAngle(inDegrees());
    }

private:
    [[nodiscard]] const Token* peek() const
    {
        return at_ < entry_.tokens.size() ? &entry_.tokens[at_] : nullptr;
    }
    void fail(std::size_t index, Phrase expected)
    {
        if (!problem_)
            problem_ = entry_.misreadAt(index, std::move(expected));
    }
    bool takeMark(Mark mark)
    {
        if (peek() == nullptr || !peek()->is(mark))
            return false;
        ++at_;
        return true;
    }

    void takeSign()
    {
        negative_ = takeMark(Mark::Dash);
        if (negative_ && !field_.negativeAllowed)
            fail(0, {"an angle that is not negative", {}});
        if (!negative_)
            takeMark(Mark::Plus);
    }

    std::optional<Number> takeNumber()
    {
        if (peek() == nullptr || peek()->number() == nullptr) {
            fail(at_, {"a number", {}});
            return std::nullopt;
        }
        return *entry_.tokens[at_++].number();
    }

    /// number [fraction] [degree mark], or fraction and mark.
    void takeDegrees()
    {
        const bool startsWithFraction = peek() != nullptr && peek()->fraction() != nullptr;
        if (!startsWithFraction) {
            const std::optional<Number> number = takeNumber();
            if (!number)
                return;
            degrees_ = *number;
        }
        std::size_t dash = at_;
        if (dash + 1 < entry_.tokens.size() && entry_.tokens[dash].is(Mark::Dash) &&
            entry_.tokens[dash + 1].fraction() != nullptr)
            ++at_;
        if (peek() != nullptr && peek()->fraction() != nullptr) {
            fraction_ = *peek()->fraction();
            if (fraction_->numerator >= fraction_->denominator)
                fail(at_, {"a fraction below 1, such as 22 1/2", {}});
            else if (degrees_.hasDecimals)
                fail(at_, {"either decimals or a fraction", {}});
            ++at_;
        }
        const entry::Word* word = peek() == nullptr ? nullptr : peek()->word();
        const bool spelled = word != nullptr && (word->letters == "deg" || word->letters == "degree" ||
                                                 word->letters == "degrees");
        if (spelled)
            ++at_;
        marked_ = spelled || takeMark(Mark::Degree);
    }

    std::optional<Number> takeSixtieth(const char* expected)
    {
        if (takeMark(Mark::Dash))
            marked_ = true;
        const std::size_t index = at_;
        const std::optional<Number> number = takeNumber();
        if (number && number->whole >= 60)
            fail(index, {expected, {}});
        return number;
    }

    void takeMinutes()
    {
        if (degrees_.hasDecimals)
            fail(at_, {"whole degrees before minutes, or nothing more", {}});
        minutesAt_ = at_;
        minutes_ = takeSixtieth("minutes below 60");
        if (takeMark(Mark::Prime))
            marked_ = true;
    }

    void takeSeconds()
    {
        if (minutes_->hasDecimals)
            fail(at_, {"whole minutes before seconds, or nothing more", {}});
        seconds_ = takeSixtieth("seconds below 60");
        takeMark(Mark::DoublePrime);
    }

    [[nodiscard]] double inDegrees() const
    {
        double value = inUnits(degrees_);
        if (fraction_)
            value += static_cast<double>(fraction_->numerator) / static_cast<double>(fraction_->denominator);
        if (minutes_)
            value += inUnits(*minutes_) / 60.0;
        if (seconds_)
            value += inUnits(*seconds_) / 3600.0;
        return value;
    }

    [[nodiscard]] Angle signedAngle(double degrees) const
    {
        return Angle::degrees(negative_ ? -degrees : degrees);
    }

    /// "26 33": the second number may be minutes, or decimals whose point was lost.
    [[nodiscard]] Reading<Angle> minutesOrDecimals() const
    {
        const std::string sign = negative_ ? "-" : "";
        const std::string whole = std::to_string(degrees_.whole);
        const std::string& second = entry_.tokens[minutesAt_].text;
        if (minutes_->hasDecimals)
            return signedAngle(inDegrees());
        double decimals = static_cast<double>(minutes_->whole);
        for (std::size_t i = 0; i < second.size(); ++i)
            decimals /= 10.0;
        const Candidate<Angle> asMinutes{signedAngle(inDegrees()), sign + whole + "°" + second + "'"};
        const Candidate<Angle> asDecimals{signedAngle(inUnits(degrees_) + decimals),
                                          sign + whole + "." + second + "°"};
        if (asMinutes.value == asDecimals.value)
            return asMinutes.value;
        return {entry_.shown, {asMinutes, asDecimals}};
    }

    const Entry& entry_;
    const AngleField& field_;
    std::size_t at_ = 0;
    std::optional<Misreading> problem_;

    bool negative_ = false;
    /// Something says that the second number is minutes.
    bool marked_ = false;
    Number degrees_;
    std::optional<Fraction> fraction_;
    std::optional<Number> minutes_;
    std::size_t minutesAt_ = 0;
    std::optional<Number> seconds_;
};

} // namespace

Reading<Angle> readAngle(std::string_view text, const AngleField& field)
{
    const std::variant<Entry, Misreading> read = entry::cut(text);
    if (const auto* misreading = std::get_if<Misreading>(&read))
        return *misreading;
    return AngleParser(std::get<Entry>(read), field).run();
}

} // namespace lapwright
