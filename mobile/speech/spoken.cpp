#include "speech/spoken.h"

#include "measure/writing.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>
#include <string_view>

namespace lapwright {

namespace {

/// Names whose values the core puts together itself; every other text is found whole or left alone.
constexpr std::array<std::string_view, 6> namesPutTogether{"names", "kinds", "what", "line", "part", "error"};

std::optional<std::string> translation(const std::string& text)
{
    const std::string found = QCoreApplication::translate("core", text.c_str()).toStdString();
    return found == text ? std::nullopt : std::optional(found);
}

bool isOfWord(char character)
{
    const auto byte = static_cast<unsigned char>(character);
    return byte >= 0x80 || std::isalnum(byte) != 0;
}

/// Where the word, the {name} or the single sign that begins at `at` ends.
std::size_t endOfWord(const std::string& text, std::size_t at)
{
    if (text[at] == '{')
        return std::min(text.find('}', at), text.size() - 1) + 1;
    if (!isOfWord(text[at]))
        return at + 1;
    while (at < text.size() && isOfWord(text[at]))
        ++at;
    return at;
}

struct Part {
    std::size_t end = 0;
    std::string words;
};

/// The longest part from `at` on that ends with a word and has a translation; the word there itself if none
/// has.
Part partAt(const std::string& text, std::size_t at)
{
    const std::size_t word = endOfWord(text, at);
    if (isOfWord(text[at]) || text[at] == '{')
        for (std::size_t end = text.size(); end >= word; --end) {
            const bool ends = end == text.size() || !isOfWord(text[end - 1]) || !isOfWord(text[end]);
            if (!ends || text[end - 1] == ' ')
                continue;
            if (std::optional<std::string> found = translation(text.substr(at, end - at)))
                return {end, *std::move(found)};
        }
    return {word, text.substr(at, word - at)};
}

std::string partByPart(const std::string& text)
{
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        Part part = partAt(text, at);
        result += part.words;
        at = part.end;
    }
    return result;
}

/// What the core says is English already.
bool isEnglish()
{
    const QLocale::Language language = QLocale().language();
    return language == QLocale::English || language == QLocale::C;
}

} // namespace

std::string spokenWhole(const std::string& text)
{
    return isEnglish() || text.empty() ? text : translation(text).value_or(text);
}

std::string spoken(const std::string& text)
{
    if (isEnglish() || text.empty())
        return text;
    const std::optional<std::string> whole = translation(text);
    return whole ? *whole : partByPart(text);
}

Phrase spoken(Phrase phrase)
{
    if (isEnglish())
        return phrase;
    phrase.text = spoken(phrase.text);
    for (auto& [name, value] : phrase.values) {
        const bool together =
            std::find(namesPutTogether.begin(), namesPutTogether.end(), name) != namesPutTogether.end();
        if (std::string* text = std::get_if<std::string>(&value))
            *text = together ? spoken(*text) : spokenWhole(*text);
        else if (const Slope* slope = std::get_if<Slope>(&value))
            value = spoken(write(*slope));
    }
    return phrase;
}

Derivation spoken(Derivation derivation)
{
    derivation.statement = spoken(std::move(derivation.statement));
    for (Derivation& reason : derivation.because)
        reason = spoken(std::move(reason));
    return derivation;
}

} // namespace lapwright
