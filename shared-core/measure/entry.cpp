#include "measure/entry.h"

#include "measure/characters.h"

#include <algorithm>

namespace lapwright::entry {

namespace {

constexpr std::size_t mostDecimals = 9;
constexpr std::size_t mostWholeDigits = 15;
constexpr std::size_t mostFractionDigits = 6;

bool isDigit(char32_t character)
{
    return character >= U'0' && character <= U'9';
}
bool isLetter(char32_t character)
{
    return (character >= U'a' && character <= U'z') || (character >= U'A' && character <= U'Z');
}

/// Precondition: digits only, at most 18 of them.
std::int64_t toInteger(std::u32string_view digits)
{
    std::int64_t value = 0;
    for (const char32_t digit : digits)
        value = value * 10 + static_cast<std::int64_t>(digit - U'0');
    return value;
}

/// The digits of a number as typed, and what stood between its groups of digits.
struct Digits {
    std::vector<std::u32string> groups;
    std::u32string separators;
};

bool groupsOfThree(const Digits& digits, std::size_t groupCount)
{
    const std::u32string& first = digits.groups.front();
    if (first.empty() || first.size() > 3 || first.front() == U'0')
        return false;
    return std::all_of(digits.groups.begin() + 1,
                       digits.groups.begin() + static_cast<std::ptrdiff_t>(groupCount),
                       [](const std::u32string& group) { return group.size() == 3; });
}

std::optional<std::int64_t> wholeOf(const Digits& digits, std::size_t groupCount)
{
    std::u32string all;
    for (std::size_t i = 0; i < groupCount; ++i)
        all += digits.groups[i];
    all.erase(0, std::min(all.find_first_not_of(U'0'), all.size()));
    if (all.size() > mostWholeDigits)
        return std::nullopt;
    return toInteger(all);
}

/// Decides which separators part thousands and which one the decimals. Nothing if they do neither.
std::optional<std::size_t> countOfWholeGroups(const Digits& digits)
{
    const std::size_t count = digits.separators.size();
    if (count == 0)
        return 1;
    const char32_t last = digits.separators.back();
    const char32_t first = digits.separators.front();
    const bool lastIsDecimal = last != U' ' && (count == 1 || last != first);
    const std::size_t thousands = lastIsDecimal ? count - 1 : count;
    for (std::size_t i = 0; i < thousands; ++i)
        if (digits.separators[i] != first)
            return std::nullopt;
    if (thousands > 0 && !groupsOfThree(digits, thousands + 1))
        return std::nullopt;
    return thousands + 1;
}

class Cutter {
public:
    Cutter(std::u32string characters, std::vector<std::size_t> positions, std::string shown, std::size_t end)
        : characters_(std::move(characters)), positions_(std::move(positions))
    {
        entry_.shown = std::move(shown);
        entry_.end = end;
    }

    std::variant<Entry, Misreading> run()
    {
        while (at_ < characters_.size() && !problem_) {
            if (characters_[at_] == U' ')
                ++at_;
            else
                cutOne();
        }
        if (problem_)
            return *problem_;
        if (entry_.tokens.empty())
            return entry_.misreadAt(0, {"a measure, found nothing", {}});
        return std::move(entry_);
    }

private:
    [[nodiscard]] char32_t peek(std::size_t ahead = 0) const
    {
        return at_ + ahead < characters_.size() ? characters_[at_ + ahead] : U'\0';
    }

    void fail(std::size_t from, std::size_t to, Phrase expected)
    {
        problem_ = Misreading{entry_.shown, positions_[from],
                              printable(std::u32string_view(characters_).substr(from, to - from)),
                              std::move(expected)};
    }

    template <class What>
    void push(std::size_t from, What what)
    {
        entry_.tokens.push_back({std::move(what), positions_[from],
                                 printable(std::u32string_view(characters_).substr(from, at_ - from))});
    }

    void cutOne()
    {
        const char32_t character = peek();
        if (isDigit(character) || ((character == U'.' || character == U',') && isDigit(peek(1))))
            cutNumberOrFraction();
        else if (isLetter(character))
            cutWord();
        else if (const std::optional<VulgarFraction> fraction = vulgarFraction(character)) {
            ++at_;
            push(at_ - 1, Fraction{fraction->numerator, fraction->denominator, true});
        } else
            cutMark();
    }

    void cutMark()
    {
        const std::size_t from = at_;
        if (peek() == U'\'' && peek(1) == U'\'') {
            at_ += 2;
            push(from, Mark::DoublePrime);
            return;
        }
        constexpr std::u32string_view marks = U"'\"\u00B0%-+/:";
        const std::size_t index = marks.find(peek());
        ++at_;
        if (index == std::u32string_view::npos) {
            fail(from, at_, {"digits, fractions, units and their marks only", {}});
            return;
        }
        constexpr Mark inOrder[] = {Mark::Prime, Mark::DoublePrime, Mark::Degree, Mark::Percent,
                                    Mark::Dash,  Mark::Plus,        Mark::Slash,  Mark::Colon};
        push(from, inOrder[index]);
    }

    void cutWord()
    {
        const std::size_t from = at_;
        Word word;
        for (; isLetter(peek()); ++at_)
            word.letters += static_cast<char>(peek() < U'a' ? peek() - U'A' + U'a' : peek());
        if (peek() == U'.' && !isDigit(peek(1)))
            ++at_;
        push(from, std::move(word));
    }

    [[nodiscard]] std::size_t skipSpaces(std::size_t index) const
    {
        while (index < characters_.size() && characters_[index] == U' ')
            ++index;
        return index;
    }
    [[nodiscard]] std::size_t skipDigits(std::size_t index) const
    {
        while (index < characters_.size() && isDigit(characters_[index]))
            ++index;
        return index;
    }
    [[nodiscard]] bool hasDecimalsAt(std::size_t index) const
    {
        return index + 1 < characters_.size() && (characters_[index] == U'.' || characters_[index] == U',') &&
               isDigit(characters_[index + 1]);
    }

    /// Index of the slash of "3/8" or "3 / 8" if one stands behind the digits that end at `index`.
    [[nodiscard]] std::optional<std::size_t> slashAfter(std::size_t index) const
    {
        index = skipSpaces(index);
        if (index < characters_.size() && characters_[index] == U'/')
            return index;
        return std::nullopt;
    }

    void cutNumberOrFraction()
    {
        const std::size_t from = at_;
        const std::size_t numeratorEnd = skipDigits(from);
        if (const std::optional<std::size_t> slash = slashAfter(numeratorEnd)) {
            const std::size_t denominator = skipSpaces(*slash + 1);
            const std::size_t denominatorEnd = skipDigits(denominator);
            if (denominatorEnd > denominator && !hasDecimalsAt(denominatorEnd)) {
                at_ = denominatorEnd;
                pushFraction(from, numeratorEnd, denominator);
                return;
            }
        }
        cutNumber(from);
    }

    void pushFraction(std::size_t from, std::size_t numeratorEnd, std::size_t denominator)
    {
        const std::u32string_view all = characters_;
        const std::u32string_view top = all.substr(from, numeratorEnd - from);
        const std::u32string_view bottom = all.substr(denominator, at_ - denominator);
        if (top.size() > mostFractionDigits || bottom.size() > mostFractionDigits)
            fail(from, at_, {"a fraction with fewer digits", {}});
        else if (toInteger(bottom) == 0)
            fail(from, at_, {"a fraction that divides by more than 0", {}});
        else
            push(from, Fraction{toInteger(top), toInteger(bottom), false});
    }

    /// " 028" behind "1" is a group of thousands; " 6" behind "12", or " 100/128", is the next number.
    [[nodiscard]] bool thousandsGroupAt(std::size_t index, const Digits& before) const
    {
        const bool spacesOnly = before.separators.find_first_not_of(U' ') == std::u32string::npos;
        const std::size_t first = index + 1;
        const std::size_t end = first < characters_.size() ? skipDigits(first) : first;
        return spacesOnly && characters_[index] == U' ' && end == first + 3 && !slashAfter(end) &&
               groupsOfThree(before, before.groups.size());
    }

    void cutNumber(std::size_t from)
    {
        Digits digits;
        for (;;) {
            const std::size_t end = skipDigits(at_);
            digits.groups.push_back(characters_.substr(at_, end - at_));
            at_ = end;
            if (at_ >= characters_.size() || (!hasDecimalsAt(at_) && !thousandsGroupAt(at_, digits)))
                break;
            digits.separators += characters_[at_];
            ++at_;
        }
        const std::optional<std::size_t> wholeGroups = countOfWholeGroups(digits);
        if (!wholeGroups) {
            fail(from, at_, {"a number such as 3820 or 3820.5", {}});
            return;
        }
        pushNumber(from, digits, *wholeGroups);
    }

    void pushNumber(std::size_t from, const Digits& digits, std::size_t wholeGroups)
    {
        Number number;
        number.hasDecimals = wholeGroups < digits.groups.size();
        const std::optional<std::int64_t> whole = wholeOf(digits, wholeGroups);
        if (!whole) {
            fail(from, at_, {"a smaller number", {}});
            return;
        }
        number.whole = *whole;
        if (number.hasDecimals) {
            std::u32string decimals = digits.groups.back();
            decimals.erase(decimals.find_last_not_of(U'0') + 1);
            if (decimals.size() > mostDecimals) {
                fail(from, at_, {"at most nine decimals", {}});
                return;
            }
            decimals.resize(mostDecimals, U'0');
            number.billionths = toInteger(decimals);
        }
        if (digits.separators == U"," && groupsOfThree(digits, digits.groups.size()))
            number.ifThousands = wholeOf(digits, digits.groups.size());
        push(from, number);
    }

    std::u32string characters_;
    std::vector<std::size_t> positions_;
    Entry entry_;
    std::size_t at_ = 0;
    std::optional<Misreading> problem_;
};

} // namespace

Misreading Entry::misreadAt(std::size_t index, Phrase expected) const
{
    if (index < tokens.size())
        return {shown, tokens[index].position, tokens[index].text, std::move(expected)};
    return {shown, end, "", std::move(expected)};
}

std::variant<Entry, Misreading> cut(std::string_view text)
{
    constexpr std::size_t mostBytes = longestEntry * 4;
    const std::string shown = printable(text.substr(0, mostBytes + 4), longestEntry);
    const std::optional<std::u32string> decoded =
        text.size() > mostBytes ? std::u32string(longestEntry + 1, U' ') : decode(text);
    if (!decoded)
        return Misreading{shown, 1, "", {"text in UTF-8", {}}};
    if (decoded->size() > longestEntry)
        return Misreading{
            shown,
            longestEntry + 1,
            "",
            {"at most {count} characters", {{"count", static_cast<std::int64_t>(longestEntry)}}}};
    std::u32string characters;
    std::vector<std::size_t> positions;
    for (std::size_t i = 0; i < decoded->size(); ++i) {
        if (isInvisible((*decoded)[i]))
            continue;
        characters += plain((*decoded)[i]);
        positions.push_back(i + 1);
    }
    return Cutter(std::move(characters), std::move(positions), shown, decoded->size() + 1).run();
}

} // namespace lapwright::entry
