#include "metal/find_gauge.h"

#include "measure/entry.h"
#include "measure/rounding.h"
#include "metal/gauge.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace lapwright::metal {

namespace {

using entry::Entry;
using entry::Mark;
using entry::Number;
using entry::Token;

enum class Measure { GaugeNumber, Ounces, Pounds, Inches, Millimetres, Bare };

const Style inThousandths{LengthUnit::Inches, 64, 1};

std::string wordsFor(const std::string& name, const Sheet& sheet)
{
    return name + " " + sheet.gauge + ", " + writeThickness(sheet.thickness, inThousandths);
}

std::optional<Measure> measureOf(const Token& token)
{
    if (token.is(Mark::DoublePrime))
        return Measure::Inches;
    struct Row {
        std::string_view letters;
        Measure measure;
    };
    constexpr std::array<Row, 15> rows{{
        {"ga", Measure::GaugeNumber},
        {"gauge", Measure::GaugeNumber},
        {"gage", Measure::GaugeNumber},
        {"gauges", Measure::GaugeNumber},
        {"no", Measure::GaugeNumber},
        {"number", Measure::GaugeNumber},
        {"oz", Measure::Ounces},
        {"ounce", Measure::Ounces},
        {"ounces", Measure::Ounces},
        {"lb", Measure::Pounds},
        {"pound", Measure::Pounds},
        {"pounds", Measure::Pounds},
        {"in", Measure::Inches},
        {"inch", Measure::Inches},
        {"mm", Measure::Millimetres},
    }};
    if (const entry::Word* word = token.word())
        for (const Row& row : rows)
            if (row.letters == word->letters)
                return row.measure;
    return std::nullopt;
}

bool isFiller(const entry::Word& word)
{
    return word.letters == "of" || word.letters == "sheet" || word.letters == "metal" ||
           word.letters == "the";
}

/// Words of a name in lower case and one spelling, digits kept: "Aluminium 3105" → aluminium, 3105.
std::vector<std::string> wordsOf(std::string_view name)
{
    std::vector<std::string> words(1);
    for (const char character : name) {
        const bool capital = character >= 'A' && character <= 'Z';
        const bool kept =
            capital || (character >= 'a' && character <= 'z') || (character >= '0' && character <= '9');
        if (kept)
            words.back() += static_cast<char>(capital ? character - 'A' + 'a' : character);
        else if (!words.back().empty())
            words.emplace_back();
    }
    if (words.back().empty())
        words.pop_back();
    return words;
}

/// American spellings to the ones the library is written in.
std::string oneSpelling(std::string word)
{
    if (word.rfind("aluminum", 0) == 0)
        word.replace(0, 8, "aluminium");
    for (std::size_t at = word.find("iz"); at != std::string::npos && at > 3; at = word.find("iz", at + 1))
        word[at + 1] = 's';
    return word;
}

/// "zinc" is zinc before it is aluminium-zinc coated steel.
bool isFirstNamedBy(const Metal& metal, const std::string& word)
{
    const std::vector<std::string> words = wordsOf(metal.name);
    return !words.empty() && oneSpelling(words.front()).rfind(word, 0) == 0;
}

bool isNamedBy(const Metal& metal, const std::string& word)
{
    const auto starts = [&](const std::string& own) { return oneSpelling(own).rfind(word, 0) == 0; };
    const std::vector<std::string> fromName = wordsOf(metal.name), fromId = wordsOf(metal.id);
    return std::any_of(fromName.begin(), fromName.end(), starts) ||
           std::any_of(fromId.begin(), fromId.end(), starts);
}

std::string namesOf(const std::map<std::string, Metal>& metals)
{
    std::string names;
    for (const auto& [id, metal] : metals)
        names += (names.empty() ? "" : ", ") + metal.name;
    return names;
}

std::string gaugesOf(const std::vector<const Metal*>& metals)
{
    std::string gauges;
    for (const Metal* metal : metals) {
        gauges += (gauges.empty() ? "" : "; ") + metal->name + " ";
        for (std::size_t i = 0; i < metal->sheets.size(); ++i)
            gauges += (i == 0 ? "" : ", ") + metal->sheets[i].gauge;
    }
    return gauges;
}

/// What a person typed, taken apart: a number with its measure, and words that name a metal.
class Designation {
public:
    static std::variant<Designation, Misreading> from(const Entry& read)
    {
        Designation result;
        std::optional<std::size_t> at = numberWithMeasure(read, result.measure_);
        if (!at)
            at = onlyNumber(read);
        if (!at)
            return read.misreadAt(0, {"a gauge such as 26 ga, 16 oz, 0.032 in or 0.7 mm, and a metal", {}});
        result.number_ = *read.tokens[*at].number();
        for (std::size_t i = 0; i < read.tokens.size(); ++i) {
            const Token& token = read.tokens[i];
            const bool belongsToNumber = i == *at || measureOf(token).has_value() || token.is(Mark::Dash);
            if (belongsToNumber || (token.word() != nullptr && isFiller(*token.word())))
                continue;
            if (token.word() == nullptr && token.number() == nullptr)
                return read.misreadAt(i, {"a gauge and a metal only", {}});
            result.words_.push_back(i);
        }
        return result;
    }

    /// Metals that every word names, and of these the ones whose name begins so; all metals if no word is
    /// there.
    [[nodiscard]] std::variant<std::vector<const Metal*>, Misreading>
    named(const Entry& read, const std::map<std::string, Metal>& metals) const
    {
        std::vector<const Metal*> left;
        left.reserve(metals.size());
        for (const auto& [id, metal] : metals)
            left.push_back(&metal);
        std::vector<const Metal*> begun = left;
        for (const std::size_t index : words_) {
            const Token& token = read.tokens[index];
            const std::string word =
                oneSpelling(token.word() == nullptr ? token.text : token.word()->letters);
            keep(left, [&](const Metal* metal) { return isNamedBy(*metal, word); });
            keep(begun, [&](const Metal* metal) {
                return index == words_.front() ? isFirstNamedBy(*metal, word) : isNamedBy(*metal, word);
            });
            if (left.empty())
                return read.misreadAt(index, {"a metal: {metals}", {{"metals", namesOf(metals)}}});
        }
        return begun.empty() ? left : begun;
    }

    [[nodiscard]] bool isGaugeNumber() const
    {
        return measure_ == Measure::GaugeNumber || (measure_ == Measure::Bare && !number_.hasDecimals);
    }
    [[nodiscard]] bool namesAMetal() const { return !words_.empty(); }
    [[nodiscard]] const Number& number() const { return number_; }

    [[nodiscard]] bool matches(const Sheet& sheet) const
    {
        if (isGaugeNumber())
            return isSoldAs(sheet, "ga");
        switch (measure_) {
        case Measure::Ounces:
            return isSoldAs(sheet, "oz");
        case Measure::Pounds:
            return isSoldAs(sheet, "lb");
        case Measure::Inches:
            return isThick(sheet, LengthUnit::Inches);
        case Measure::Millimetres:
            return isThick(sheet, LengthUnit::Millimetres);
        case Measure::GaugeNumber:
        case Measure::Bare:
            break;
        }
        return isThick(sheet, LengthUnit::Inches) || isThick(sheet, LengthUnit::Millimetres);
    }

private:
    template <class Test>
    static void keep(std::vector<const Metal*>& metals, Test test)
    {
        metals.erase(
            std::remove_if(metals.begin(), metals.end(), [&](const Metal* metal) { return !test(metal); }),
            metals.end());
    }

    /// The number in front of "ga", "oz", … or behind "No." or "gauge".
    static std::optional<std::size_t> numberWithMeasure(const Entry& read, Measure& measure)
    {
        const std::vector<Token>& tokens = read.tokens;
        for (std::size_t i = 0; i < tokens.size(); ++i) {
            const std::optional<Measure> found = measureOf(tokens[i]);
            if (!found)
                continue;
            measure = *found;
            std::size_t before = i;
            while (before > 0 && tokens[before - 1].is(Mark::Dash))
                --before;
            if (before > 0 && tokens[before - 1].number() != nullptr)
                return before - 1;
            const bool mayLead = *found == Measure::GaugeNumber;
            if (mayLead && i + 1 < tokens.size() && tokens[i + 1].number() != nullptr)
                return i + 1;
        }
        return std::nullopt;
    }

    static std::optional<std::size_t> onlyNumber(const Entry& read)
    {
        std::optional<std::size_t> only;
        for (std::size_t i = 0; i < read.tokens.size(); ++i) {
            if (read.tokens[i].number() == nullptr)
                continue;
            if (only)
                return std::nullopt;
            only = i;
        }
        return only;
    }

    [[nodiscard]] bool isSoldAs(const Sheet& sheet, std::string_view unit) const
    {
        const std::variant<Entry, Misreading> own = entry::cut(sheet.gauge);
        const Entry* read = std::get_if<Entry>(&own);
        if (read == nullptr || read->tokens.size() != 2)
            return false;
        const Number* number = read->tokens[0].number();
        const entry::Word* word = read->tokens[1].word();
        return number != nullptr && word != nullptr && word->letters == unit &&
               number->whole == number_.whole && number->billionths == number_.billionths;
    }

    /// Within half of the last decimal that thicknesses are quoted in.
    [[nodiscard]] bool isThick(const Sheet& sheet, LengthUnit unit) const
    {
        constexpr std::int64_t billion = 1'000'000'000, thickest = 1'000;
        if (number_.whole > thickest)
            return false;
        const bool inches = unit == LengthUnit::Inches;
        const std::int64_t size = inches ? 25'400'000 : 1'000'000;
        const Length quoted =
            Length::nanometres(number_.whole * size + (number_.billionths * size + billion / 2) / billion);
        const Length half = inches ? Length::nanometres(1'270) : Length::micrometres(5);
        return magnitude(quoted - sheet.thickness) <= half;
    }

    Measure measure_ = Measure::Bare;
    Number number_;
    std::vector<std::size_t> words_;
};

/// Adds what the gauge rules make of a number, where no metal in the list gave that thickness.
void addByRule(std::int64_t number, std::vector<Candidate<SheetChoice>>& candidates)
{
    if (number > 100)
        return;
    const int gauge = static_cast<int>(number);
    const std::array<std::pair<const char*, std::optional<Length>>, 4> rules{{
        {"Manufacturers' Standard", manufacturersStandardThickness(gauge)},
        {"Galvanised sheet", galvanisedThickness(gauge)},
        {"US Standard", usStandardThickness(gauge)},
        {"American wire", americanWireThickness(gauge)},
    }};
    for (const auto& [name, thickness] : rules) {
        if (!thickness)
            continue;
        const bool known =
            std::any_of(candidates.begin(), candidates.end(), [&, &thick = *thickness](const auto& one) {
                return one.value.sheet.thickness == thick;
            });
        if (known)
            continue;
        Sheet sheet;
        sheet.gauge = std::to_string(gauge) + " ga";
        sheet.thickness = *thickness;
        candidates.push_back({{"", sheet}, wordsFor(name, sheet)});
    }
}

Reading<SheetChoice> choose(const Entry& read, const Designation& designation,
                            const std::vector<const Metal*>& metals)
{
    std::vector<Candidate<SheetChoice>> candidates;
    for (const Metal* metal : metals)
        for (const Sheet& sheet : metal->sheets)
            if (designation.matches(sheet))
                candidates.push_back({{metal->id, sheet}, wordsFor(metal->name, sheet)});
    const bool nameless = designation.isGaugeNumber() && !designation.namesAMetal();
    if (nameless)
        addByRule(designation.number().whole, candidates);
    if (candidates.empty())
        return read.misreadAt(0, {"a gauge that is sold: {gauges}", {{"gauges", gaugesOf(metals)}}});
    if (candidates.size() > 1)
        return {read.shown, std::move(candidates), "name the metal"};
    if (nameless)
        return read.misreadAt(0, {"a metal with the gauge number", {}});
    return candidates.front().value;
}

} // namespace

Reading<SheetChoice> findGauge(std::string_view text, const std::map<std::string, Metal>& metals)
{
    // "#26" is "No. 26"; the sign has no place in any other measure.
    std::string plain(text.substr(0, longestEntry * 4 + 1));
    std::replace(plain.begin(), plain.end(), '#', ' ');
    const std::variant<Entry, Misreading> read = entry::cut(plain);
    if (const auto* misreading = std::get_if<Misreading>(&read))
        return *misreading;
    const Entry& cut = std::get<Entry>(read);
    const std::variant<Designation, Misreading> designation = Designation::from(cut);
    if (const auto* misreading = std::get_if<Misreading>(&designation))
        return *misreading;
    const Designation& found = std::get<Designation>(designation);
    const auto named = found.named(cut, metals);
    if (const auto* misreading = std::get_if<Misreading>(&named))
        return *misreading;
    return choose(cut, found, std::get<0>(named));
}

Reading<Sheet> gaugeOfThickness(const Metal& metal, Length measured)
{
    constexpr std::int64_t usualTolerance = 20; // a twentieth, 5 %
    std::vector<Candidate<Sheet>> candidates;
    for (const Sheet& sheet : metal.sheets) {
        const Length tolerance = sheet.thicknessTolerance.value_or(sheet.thickness / usualTolerance);
        if (magnitude(measured - sheet.thickness) <= tolerance)
            candidates.push_back({sheet, wordsFor(metal.name, sheet)});
    }
    const std::string shown = writeThickness(measured, inThousandths);
    if (candidates.empty())
        return Misreading{shown, 1, shown, {"a thickness of {gauges}", {{"gauges", gaugesOf({&metal})}}}};
    if (candidates.size() > 1) {
        std::sort(candidates.begin(), candidates.end(), [&](const auto& left, const auto& right) {
            return magnitude(left.value.thickness - measured) < magnitude(right.value.thickness - measured);
        });
        return {shown, std::move(candidates), "measure again, or go by the label"};
    }
    return candidates.front().value;
}

} // namespace lapwright::metal
