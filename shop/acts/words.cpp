#include "acts/words.h"

#include <QString>

namespace lapwright::acts {

std::string describe(const rules::Finding& finding, const Style& style)
{
    const char* weight = finding.weight == rules::Weight::Blocks  ? "BLOCKS  "
                         : finding.weight == rules::Weight::Warns ? "warns   "
                                                                  : "note    ";
    std::string line =
        weight + (finding.place.empty() ? "" : finding.place + ": ") + say(finding.statement, style);
    if (!finding.remedy.text.empty())
        line += "; " + say(finding.remedy, style);
    if (finding.clause) {
        line += " [" + finding.clause->number;
        line += finding.clause->edition.empty() ? "]" : ", " + finding.clause->edition + "]";
    }
    return line;
}

std::string massInWords(double kilograms, const Style& style)
{
    // The avoirdupois pound is 0.45359237 kg exactly (international yard and pound agreement, 1959).
    constexpr double kilogramsOfPound = 0.45359237;
    return style.unit == LengthUnit::Millimetres
               ? QString::number(kilograms, 'f', 1).toStdString() + " kg"
               : QString::number(kilograms / kilogramsOfPound, 'f', 0).toStdString() + " lb";
}

std::string counted(std::int64_t count, const std::string& what)
{
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

std::string describe(const site::Material& material)
{
    return material.gauge + " " + material.metal + ", " + material.colour;
}

} // namespace lapwright::acts
