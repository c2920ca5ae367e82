#include "measure/entry.h"
#include "measure/reading.h"
#include "measure/rounding.h"

#include <algorithm>
#include <array>

namespace lapwright {

namespace {

using entry::Entry;
using entry::Fraction;
using entry::Mark;
using entry::Number;
using entry::Token;

constexpr std::int64_t largestNanometres = 1'000'000'000'000'000;
static_assert(static_cast<double>(largestNanometres) == largestMillimetres * 1e6);

/// How a "3,820" is taken.
enum class Comma { Decimal, Thousands };

enum class Unit { Feet, Inches, Millimetres, Centimetres, Metres };

constexpr std::int64_t nanometresIn(Unit unit)
{
    switch (unit) {
    case Unit::Feet:
        return 304'800'000;
    case Unit::Inches:
        return 25'400'000;
    case Unit::Millimetres:
        return 1'000'000;
    case Unit::Centimetres:
        return 10'000'000;
    case Unit::Metres:
        break;
    }
    return 1'000'000'000;
}

std::optional<Unit> unitOf(const Token& token)
{
    if (token.is(Mark::Prime))
        return Unit::Feet;
    if (token.is(Mark::DoublePrime))
        return Unit::Inches;
    const entry::Word* word = token.word();
    if (word == nullptr)
        return std::nullopt;
    struct Row {
        std::string_view letters;
        Unit unit;
    };
    constexpr std::array<Row, 18> rows{{
        {"ft", Unit::Feet},
        {"foot", Unit::Feet},
        {"feet", Unit::Feet},
        {"in", Unit::Inches},
        {"inch", Unit::Inches},
        {"inches", Unit::Inches},
        {"mm", Unit::Millimetres},
        {"millimetre", Unit::Millimetres},
        {"millimetres", Unit::Millimetres},
        {"millimeter", Unit::Millimetres},
        {"millimeters", Unit::Millimetres},
        {"cm", Unit::Centimetres},
        {"centimetres", Unit::Centimetres},
        {"centimeters", Unit::Centimetres},
        {"m", Unit::Metres},
        {"metre", Unit::Metres},
        {"metres", Unit::Metres},
        {"meters", Unit::Metres},
    }};
    for (const Row& row : rows)
        if (row.letters == word->letters)
            return row.unit;
    return std::nullopt;
}

Phrase unitsExpected()
{
    return {"a unit: ' ft \" in mm cm m", {}};
}

/// One way of taking an entry: the lengths it may mean, or why it means none.
struct Meaning {
    Length value;
    LengthUnit unit;
};
using Interpretation = std::variant<std::vector<Meaning>, Misreading>;

/// Reads the tokens from left to right once, taking each comma one way.
class LengthParser {
public:
    LengthParser(const Entry& read, const LengthField& field, Comma comma)
        : entry_(read), field_(field), comma_(comma)
    {
    }

    Interpretation run()
    {
        const bool negative = takeSign();
        if (problem_)
            return *problem_;
        takeFeet();
        if (!problem_)
            takeRest();
        if (!problem_ && at_ < entry_.tokens.size())
            fail(at_, {"the end of the measure", {}});
        if (problem_)
            return *problem_;
        std::vector<Meaning> lengths = meanings();
        if (problem_)
            return *problem_;
        if (negative)
            for (Meaning& one : lengths)
                one.value = -one.value;
        return lengths;
    }

private:
    [[nodiscard]] const Token* peek(std::size_t ahead = 0) const
    {
        return at_ + ahead < entry_.tokens.size() ? &entry_.tokens[at_ + ahead] : nullptr;
    }
    void fail(std::size_t index, Phrase expected)
    {
        if (!problem_)
            problem_ = entry_.misreadAt(index, std::move(expected));
    }

    bool takeSign()
    {
        const Token* first = peek();
        if (first == nullptr || !first->is(Mark::Dash))
            return false;
        if (!field_.negativeAllowed)
            fail(at_, {"a length that is not negative", {}});
        ++at_;
        return true;
    }

    /// A dash may stand between two parts (12'-6 3/8", 6-3/8), nowhere else.
    void takeDash()
    {
        const Token* dash = peek();
        if (dash == nullptr || !dash->is(Mark::Dash))
            return;
        const Token* next = peek(1);
        if (next == nullptr || (next->number() == nullptr && next->fraction() == nullptr))
            fail(at_ + 1, {"a number", {}});
        ++at_;
    }

    [[nodiscard]] Number taken(const Number& number) const
    {
        if (comma_ == Comma::Thousands && number.ifThousands)
            return {*number.ifThousands, 0, false, std::nullopt};
        return number;
    }

    /// The feet of "12' 6" and "12 6": there if a second number follows, or nothing.
    void takeFeet()
    {
        const Token* first = peek();
        if (first == nullptr || first->number() == nullptr)
            return;
        std::size_t ahead = 1;
        const Token* mark = peek(1);
        const bool marked = mark != nullptr && unitOf(*mark) == Unit::Feet;
        if (marked)
            ++ahead;
        if (const Token* dash = peek(ahead); dash != nullptr && dash->is(Mark::Dash))
            ++ahead;
        const Token* next = peek(ahead);
        const bool inchesFollow =
            next != nullptr && (next->number() != nullptr || (marked && next->fraction() != nullptr));
        if (!inchesFollow)
            return;
        const Number feet = taken(*first->number());
        if (feet.hasDecimals)
            fail(at_, {"whole feet before inches", {}});
        feet_ = feet;
        feetMarked_ = marked;
        feetAt_ = at_;
        at_ += marked ? 2 : 1;
        takeDash();
    }

    /// [number] [fraction] [unit], or number, inch mark, fraction.
    void takeRest()
    {
        restAt_ = at_;
        if (const Token* token = peek(); token != nullptr && token->number() != nullptr) {
            number_ = taken(*token->number());
            ++at_;
            takeDash();
        }
        takeFraction();
        if (problem_)
            return;
        if (!number_ && !fraction_) {
            fail(at_, {"a number", {}});
            return;
        }
        takeUnit();
        if (unit_ == Unit::Inches && !fraction_ && peek() != nullptr && peek()->fraction() != nullptr)
            takeFraction();
    }

    void takeFraction()
    {
        const Token* token = peek();
        if (token == nullptr || token->fraction() == nullptr)
            return;
        fraction_ = *token->fraction();
        fractionAt_ = at_;
        if (fraction_->numerator >= fraction_->denominator)
            fail(at_, {"a fraction below 1, such as 1 1/4", {}});
        else if (number_ && number_->hasDecimals)
            fail(at_, {"either decimals or a fraction", {}});
        ++at_;
    }

    void takeUnit()
    {
        const Token* token = peek();
        if (token == nullptr || token->number() != nullptr || token->fraction() != nullptr)
            return;
        unit_ = unitOf(*token);
        if (!unit_)
            fail(at_, unitsExpected());
        else if (feet_ && unit_ != Unit::Inches)
            fail(at_, {"inches after feet", {}});
        ++at_;
    }

    [[nodiscard]] std::vector<Meaning> meanings()
    {
        if (feet_)
            return feetAndInches();
        if (unit_)
            return {Meaning{amount(*unit_), styleOf(*unit_)}};
        if (fraction_)
            return {Meaning{amount(Unit::Inches), LengthUnit::Inches}};
        return bareNumber();
    }

    [[nodiscard]] std::vector<Meaning> feetAndInches()
    {
        const Length inches = amount(Unit::Inches);
        if (inches >= Length::feet(1))
            fail(restAt_, {"less than 12 inches after feet", {}});
        const bool unmarked = !feetMarked_ && !unit_ && !fraction_;
        if (unmarked && field_.unit == LengthUnit::Millimetres)
            fail(restAt_, {"one number of millimetres, or feet and inches with their marks", {}});
        const Length feet = inUnit(*feet_, Unit::Feet, feetAt_);
        if (feet + inches > Length::nanometres(largestNanometres))
            fail(feetAt_, {"at most 1 000 km", {}});
        return {Meaning{feet + inches, LengthUnit::FeetInches}};
    }

    [[nodiscard]] std::vector<Meaning> bareNumber()
    {
        // Both readings are worked out even where only one is asked for: a number too large for feet is not
        // quietly taken as inches.
        if (field_.unit == LengthUnit::Millimetres)
            return {Meaning{amount(Unit::Millimetres), LengthUnit::Millimetres}};
        const Meaning inches{amount(Unit::Inches), LengthUnit::Inches};
        if (field_.unit == LengthUnit::Inches)
            return {inches};
        if (field_.unit == LengthUnit::FeetInches)
            return {Meaning{amount(Unit::Feet), LengthUnit::FeetInches}, inches};
        return {Meaning{amount(Unit::Millimetres), LengthUnit::Millimetres}, inches};
    }

    static LengthUnit styleOf(Unit unit)
    {
        if (unit == Unit::Feet)
            return LengthUnit::FeetInches;
        return unit == Unit::Inches ? LengthUnit::Inches : LengthUnit::Millimetres;
    }

    /// Number and fraction of the last part, in `unit`; zero after a failure.
    [[nodiscard]] Length amount(Unit unit)
    {
        Length sum;
        if (number_)
            sum += inUnit(*number_, unit, restAt_);
        if (fraction_)
            sum += inUnit(*fraction_, unit);
        if (sum > Length::nanometres(largestNanometres))
            fail(restAt_, {"at most 1 000 km", {}});
        return problem_ ? Length() : sum;
    }

    [[nodiscard]] Length inUnit(const Number& number, Unit unit, std::size_t index)
    {
        constexpr std::int64_t billion = 1'000'000'000;
        const std::int64_t size = nanometresIn(unit);
        if (number.whole > largestNanometres / size) {
            fail(index, {"at most 1 000 km", {}});
            return {};
        }
        return Length::nanometres(number.whole * size + (number.billionths * size + billion / 2) / billion);
    }

    [[nodiscard]] Length inUnit(const Fraction& fraction, Unit unit)
    {
        constexpr std::array<std::int64_t, 8> inchDenominators{2, 4, 8, 16, 32, 64, 10, 100};
        const bool onTape = std::find(inchDenominators.begin(), inchDenominators.end(),
                                      fraction.denominator) != inchDenominators.end();
        if (unit == Unit::Inches && !onTape) {
            fail(fractionAt_, {"a fraction in halves, quarters, 8ths, 16ths, 32nds, 64ths or tenths", {}});
            return {};
        }
        const std::int64_t nanometres = fraction.numerator * nanometresIn(unit);
        if (nanometres % fraction.denominator != 0) {
            fail(fractionAt_, {"a fraction of a whole number of nanometres", {}});
            return {};
        }
        return Length::nanometres(nanometres / fraction.denominator);
    }

    const Entry& entry_;
    const LengthField& field_;
    Comma comma_;
    std::size_t at_ = 0;
    std::optional<Misreading> problem_;

    std::optional<Number> feet_;
    bool feetMarked_ = false;
    std::size_t feetAt_ = 0;
    std::optional<Number> number_;
    std::optional<Fraction> fraction_;
    std::optional<Unit> unit_;
    std::size_t restAt_ = 0;
    std::size_t fractionAt_ = 0;
};

void addDistinct(std::vector<Meaning>& all, const std::vector<Meaning>& more)
{
    for (const Meaning& one : more) {
        const bool known = std::any_of(all.begin(), all.end(),
                                       [&](const Meaning& other) { return other.value == one.value; });
        if (!known)
            all.push_back(one);
    }
}

bool hasTwoCommaReadings(const Entry& read)
{
    return std::any_of(read.tokens.begin(), read.tokens.end(), [](const Token& token) {
        return token.number() != nullptr && token.number()->ifThousands.has_value();
    });
}

} // namespace

Reading<Length> readLength(std::string_view text, const LengthField& field)
{
    const std::variant<Entry, Misreading> read = entry::cut(text);
    if (const auto* misreading = std::get_if<Misreading>(&read))
        return *misreading;
    const Entry& cut = std::get<Entry>(read);
    std::vector<Meaning> all;
    std::optional<Misreading> problem;
    for (const Comma comma : {Comma::Decimal, Comma::Thousands}) {
        if (comma == Comma::Thousands && !hasTwoCommaReadings(cut))
            continue;
        Interpretation one = LengthParser(cut, field, comma).run();
        if (auto* misreading = std::get_if<Misreading>(&one))
            problem = problem ? problem : std::move(*misreading);
        else
            addDistinct(all, std::get<0>(one));
    }
    if (all.empty())
        return *problem;
    if (all.size() == 1)
        return all.front().value;
    std::vector<Candidate<Length>> candidates;
    candidates.reserve(all.size());
    for (const Meaning& one : all)
        candidates.push_back({one.value, writeExact(one.value, one.unit)});
    return {cut.shown, std::move(candidates)};
}

} // namespace lapwright
