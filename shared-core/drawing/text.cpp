#include "drawing/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace lapwright::drawing {

namespace {

/// Font units to the em.
constexpr double unitsPerEm = 2048.0;

// Advance widths of U+0020 to U+007E, read from the hmtx tables of DejaVuSans.ttf and
// DejaVuSans-Bold.ttf, 2.37.
constexpr std::array<int, 95> regularAdvances = {
    651,  821,  942,  1716, 1303, 1946, 1597, 563,  799,  799,  1024, 1716, 651,  739,  651,  690,
    1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 690,  690,  1716, 1716, 1716, 1087,
    2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604,  604,  1343, 1141, 1767, 1532, 1612,
    1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799,  690,  799,  1716, 1024,
    1024, 1255, 1300, 1126, 1300, 1260, 721,  1300, 1298, 569,  569,  1186, 569,  1995, 1298, 1253,
    1300, 1300, 842,  1067, 803,  1298, 1212, 1675, 1212, 1212, 1075, 1303, 690,  1303, 1716};
constexpr std::array<int, 95> boldAdvances = {
    713,  934,  1067, 1716, 1425, 2052, 1786, 627,  936,  936,  1071, 1716, 778,  850,  778,  748,
    1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 819,  819,  1716, 1716, 1716, 1188,
    2048, 1585, 1561, 1503, 1700, 1399, 1399, 1681, 1714, 762,  762,  1587, 1305, 2038, 1714, 1741,
    1501, 1741, 1577, 1475, 1397, 1663, 1585, 2259, 1579, 1483, 1485, 936,  748,  936,  1716, 1024,
    1024, 1382, 1466, 1214, 1466, 1389, 891,  1466, 1458, 702,  702,  1362, 702,  2134, 1458, 1407,
    1466, 1466, 1010, 1219, 979,  1458, 1335, 1892, 1321, 1335, 1192, 1458, 748,  1458, 1716};

/// U+00C0 to U+00FF: a letter with an accent is as wide as the letter; a space where there is none.
constexpr std::string_view withoutAccents =
    "AAAAAA CEEEEIIII NOOOOO  UUUUY  aaaaaa ceeeeiiii nooooo  uuuuy y";

int advance(char32_t character, bool bold)
{
    if (character >= 0xC0 && character <= 0xFF && withoutAccents[character - 0xC0] != ' ')
        character = static_cast<unsigned char>(withoutAccents[character - 0xC0]);
    if (character >= 0x20 && character < 0x7F)
        return (bold ? boldAdvances : regularAdvances)[character - 0x20];
    switch (character) {
    case 0xA0: // no-break space
        return bold ? 713 : 651;
    case 0xA1: // inverted exclamation mark
        return bold ? 934 : 821;
    case 0xB7:   // middle dot
    case 0x2019: // apostrophe
        return bold ? 778 : 651;
    case 0xBF: // inverted question mark
        return bold ? 1188 : 1087;
    case 0xD7: // multiplication sign
        return 1716;
    case 0xB0: // degree
    case 0x2013:
        return 1024;
    default:
        return 2048;
    }
}

/// Length of the sequence that a first byte announces; 0 if it cannot be one.
std::size_t sequenceLength(unsigned char first)
{
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first < 0xE0)
        return 2;
    if (first >= 0xE0 && first < 0xF0)
        return 3;
    return first >= 0xF0 && first < 0xF5 ? 4 : 0;
}

/// The character at `at`, or U+FFFD; `at` moves on.
char32_t next(const std::string& text, std::size_t& at)
{
    const auto byte = [&](std::size_t index) { return static_cast<unsigned char>(text[index]); };
    const std::size_t length = sequenceLength(byte(at));
    const std::size_t start = at++;
    if (length == 1)
        return byte(start);
    if (length == 0 || start + length > text.size())
        return 0xFFFD;
    char32_t value = byte(start) & (0x7FU >> length);
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(start + i) & 0xC0U) != 0x80U)
            return 0xFFFD;
        value = (value << 6U) | (byte(start + i) & 0x3FU);
    }
    constexpr std::array<char32_t, 5> least = {0, 0, 0x80, 0x800, 0x10000};
    if (value < least[length] || value > 0x10FFFF || (value >= 0xD800 && value < 0xE000))
        return 0xFFFD;
    at = start + length;
    return value;
}

void append(std::string& text, char32_t character)
{
    const auto put = [&](char32_t bits) {
        text.push_back(static_cast<char>(static_cast<unsigned char>(bits)));
    };
    if (character < 0x80) {
        put(character);
    } else if (character < 0x800) {
        put(0xC0U | (character >> 6U));
        put(0x80U | (character & 0x3FU));
    } else if (character < 0x10000) {
        put(0xE0U | (character >> 12U));
        put(0x80U | ((character >> 6U) & 0x3FU));
        put(0x80U | (character & 0x3FU));
    } else {
        put(0xF0U | (character >> 18U));
        put(0x80U | ((character >> 12U) & 0x3FU));
        put(0x80U | ((character >> 6U) & 0x3FU));
        put(0x80U | (character & 0x3FU));
    }
}

/// Controls, line and paragraph separators, the marks that set, embed, override or isolate a direction, the
/// byte order mark, and what no XML 1.0 document may hold.
bool isHarmful(char32_t character)
{
    return character < 0x20 || (character >= 0x7F && character < 0xA0) || character == 0x61C ||
           (character >= 0x200B && character <= 0x200F) || (character >= 0x2028 && character <= 0x202E) ||
           (character >= 0x2060 && character <= 0x206F) || character == 0xFEFF || character == 0xFFFE ||
           character == 0xFFFF;
}

std::string cleaned(const std::string& text, bool keepsLines)
{
    const auto isPlain = [keepsLines](char byte) {
        return (byte >= 0x20 && byte < 0x7F) || (keepsLines && byte == '\n');
    };
    if (std::all_of(text.begin(), text.end(), isPlain))
        return text; // as most are: long lists and pictures are made of them
    std::string clean;
    for (const char32_t character : codePoints(text))
        append(clean, (keepsLines && character == U'\n') || !isHarmful(character) ? character : U' ');
    return clean;
}

} // namespace

std::u32string codePoints(const std::string& text)
{
    std::u32string characters;
    for (std::size_t at = 0; at < text.size();)
        characters.push_back(next(text, at));
    return characters;
}

std::string harmless(const std::string& text)
{
    return cleaned(text, false);
}

std::string harmlessLines(const std::string& lines)
{
    return cleaned(lines, true);
}

double widthInEm(const std::string& text, bool bold)
{
    std::int64_t units = 0;
    for (const char32_t character : codePoints(text))
        units += advance(character, bold);
    return static_cast<double>(units) / unitsPerEm;
}

double fittingSize(const std::string& text, double size, double width, bool bold)
{
    return std::min(size, width / std::max(widthInEm(text, bold), 1e-9));
}

double textWidth(const std::string& text, double size, bool bold)
{
    return widthInEm(text, bold) * size;
}

Box boxOf(const Text& text)
{
    const double width = textWidth(text.text, text.size, text.bold);
    const double shift = text.anchor == Anchor::Start ? width / 2.0
                         : text.anchor == Anchor::End ? -width / 2.0
                                                      : 0.0;
    const Point along = direction(-text.rotation);
    const double rise = (ascentInEm - descentInEm) / 2.0 * text.size;
    return {text.at + shift * along - rise * quarter(along), width / 2.0,
            (ascentInEm + descentInEm) / 2.0 * text.size, -text.rotation};
}

Text textIn(const Box& box, Role role, std::string words, double size, bool bold)
{
    const double rise = (ascentInEm - descentInEm) / 2.0 * size;
    return {role,         std::move(words), box.centre + rise * quarter(direction(box.rotation)),
            size,         Anchor::Middle,   bold,
            -box.rotation};
}

namespace {

bool isDigit(char sign)
{
    return sign >= '0' && sign <= '9';
}

/// Whether the space at `space` stands inside a length: 9' 4", 6 1/4".
bool isInLength(const std::string& text, std::size_t space)
{
    if (space == 0 || space + 1 >= text.size() || !isDigit(text[space + 1]))
        return false;
    const std::size_t after = std::min(text.find_first_not_of("0123456789", space + 1), text.size() - 1);
    return text[space - 1] == '\'' || (isDigit(text[space - 1]) && text[after] == '/');
}

} // namespace

std::size_t endOfWord(const std::string& text, std::size_t from)
{
    std::size_t end = text.find(' ', from);
    while (end != std::string::npos && end > from && isInLength(text, end))
        end = text.find(' ', end + 1);
    return std::min(end, text.size());
}

std::vector<std::string> wrapped(const std::string& text, double size, double width)
{
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = endOfWord(text, at);
        const std::string word = text.substr(at, end - at);
        at = end + 1;
        if (!line.empty() && textWidth(line, size) + textWidth(" ", size) + textWidth(word, size) > width) {
            lines.push_back(line);
            line.clear();
        }
        line += line.empty() ? "" : " ";
        line += word;
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

std::string shortened(const std::string& text, double size, double width, bool bold)
{
    if (textWidth(text, size, bold) <= width)
        return text;
    std::string kept;
    for (const char32_t character : codePoints(text)) {
        std::string longer = kept;
        append(longer, character);
        if (textWidth(longer + "...", size, bold) > width)
            break;
        kept = longer;
    }
    return kept + "...";
}

} // namespace lapwright::drawing
