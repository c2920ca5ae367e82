#include "print/lines.h"

#include "drawing/text.h"

#include <cstddef>

namespace lapwright::print {

namespace {

/// How many bytes of `text` from `from` on fit; at least one character.
std::size_t fittingPart(const std::string& text, std::size_t from, double size, double width, bool bold)
{
    std::size_t to = from;
    while (to < text.size()) {
        std::size_t next = to + 1;
        while (next < text.size() && (static_cast<unsigned char>(text[next]) & 0xC0U) == 0x80U)
            ++next;
        if (to > from && drawing::textWidth(text.substr(from, next - from), size, bold) > width)
            break;
        to = next;
    }
    return to - from;
}

} // namespace

std::vector<std::string> linesOf(const std::string& text, double size, double width, bool bold)
{
    const std::string clean = drawing::harmless(text);
    std::vector<std::string> lines;
    std::string line;
    const auto fits = [&](const std::string& words) {
        return drawing::textWidth(words, size, bold) <= width;
    };
    for (std::size_t at = 0; at < clean.size();) {
        const std::size_t end = drawing::endOfWord(clean, at);
        std::string word = clean.substr(at, end - at);
        at = end + 1;
        if (word.empty())
            continue;
        if (fits(line.empty() ? word : line + " " + word)) {
            line += (line.empty() ? "" : " ") + word;
            continue;
        }
        if (!line.empty())
            lines.push_back(line);
        while (!fits(word)) {
            const std::size_t part = fittingPart(word, 0, size, width, bold);
            if (part == word.size())
                break;
            lines.push_back(word.substr(0, part));
            word.erase(0, part);
        }
        line = word;
    }
    if (!line.empty() || lines.empty())
        lines.push_back(line);
    return lines;
}

double sizeOfWholeLengths(const std::string& text, double size, double width, bool bold)
{
    // So much that rounding does not make it wider than the line again.
    constexpr double spare = 0.01;
    const std::string clean = drawing::harmless(text);
    double whole = size;
    for (std::size_t at = 0; at < clean.size();) {
        const std::size_t end = drawing::endOfWord(clean, at);
        const std::string word = clean.substr(at, end - at);
        at = end + 1;
        // Only a length is a word of several parts.
        if (word.find(' ') != std::string::npos)
            whole = drawing::fittingSize(word, whole, width - spare, bold);
    }
    return whole;
}

std::vector<std::string> fewLinesOf(const std::string& text, double size, double width, std::size_t most,
                                    bool bold)
{
    std::vector<std::string> lines = linesOf(text, size, width, bold);
    if (lines.size() <= most)
        return lines;
    lines[most - 1] += " " + lines[most];
    lines.resize(most);
    // The line cannot take the next one's first word, so this always ends it in an ellipsis.
    lines.back() = drawing::shortened(lines.back(), size, width, bold);
    return lines;
}

} // namespace lapwright::print
