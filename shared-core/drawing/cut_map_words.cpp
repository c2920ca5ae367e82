#include "drawing/cut_map_words.h"

#include <cmath>
#include <cstdint>

namespace lapwright::drawing {

CutMapWords::CutMapWords(const cutting::Problem& problem, const cutting::Plan& plan, std::size_t pattern,
                         const CutMapPicture& picture)
    : problem_(problem), plan_(plan), index_(pattern), pattern_(plan.patterns[pattern]),
      stock_(problem.stocks()[pattern_.stock]), picture_(picture)
{
}

std::string CutMapWords::said(const std::string& english) const
{
    return translated(english, picture_.style);
}

std::string CutMapWords::lengthOf(Length length) const
{
    return write(length, picture_.style);
}

std::string CutMapWords::sizeOf(Length wide, Length longPart) const
{
    return lengthOf(wide) + " \xC3\x97 " + lengthOf(longPart);
}

std::string CutMapWords::nameOf(std::size_t blank) const
{
    return blank < picture_.names.size() && !picture_.names[blank].empty() ? picture_.names[blank]
                                                                           : problem_.blanks()[blank].key;
}

std::string CutMapWords::number() const
{
    return said("Cut map " + std::to_string(index_ + 1) + " of " + std::to_string(plan_.patterns.size()));
}

std::string CutMapWords::title() const
{
    std::string title = number() + ": " + stock_.key;
    if (pattern_.count > 1)
        title += ", " + say({"cut {count} alike", {{"count", pattern_.count}}}, picture_.style);
    return title;
}

std::string CutMapWords::facts() const
{
    const bool coil = stock_.kind == cutting::StockKind::Coil;
    std::string facts =
        sizeOf(stock_.width, pattern_.length) + (coil ? " " + said("off the coil") : std::string());
    if (!picture_.material.empty())
        facts += " \xC2\xB7 " + picture_.material;
    return facts;
}

std::string CutMapWords::orderOfCuts() const
{
    return said(pattern_.order == cutting::CutOrder::LengthsFirst
                    ? "crosscut first, then slit each part"
                    : "slit first, then crosscut each strip from the lead end");
}

std::string CutMapWords::stretched(double times) const
{
    return say({"width drawn {times} times as large", {{"times", std::int64_t{std::lround(times)}}}},
               picture_.style);
}

std::string CutMapWords::description() const
{
    std::string text = stock_.key + ", " + sizeOf(stock_.width, pattern_.length) + ":";
    for (std::size_t i = 0; i < pattern_.strips.size(); ++i) {
        const cutting::Strip& strip = pattern_.strips[i];
        text += " " + said("strip") + " " + std::to_string(i + 1) + ", " + lengthOf(strip.width) + ":";
        for (const cutting::Crosscut& cut : strip.crosscuts)
            text += " " + std::to_string(cut.count) + " " + said("of") + " " + nameOf(cut.blank) + " " +
                    lengthOf(problem_.blanks()[cut.blank].length) + ";";
    }
    return text;
}

} // namespace lapwright::drawing
