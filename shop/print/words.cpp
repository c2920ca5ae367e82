#include "print/words.h"

#include "schedule/load.h"

#include <algorithm>

namespace lapwright::print {

std::string writeBothMasses(double kilograms, const Style& style)
{
    const std::string metric = writeKilograms(kilograms);
    return style.unit == LengthUnit::Millimetres ? metric : writeMass(kilograms, style) + " (" + metric + ")";
}

bool isForTwo(double kilograms, Length length)
{
    const schedule::BundleLimits limits;
    return kilograms > limits.onePersonKilograms || length > limits.onePersonLength;
}

std::string metalInWords(const site::Material& material)
{
    std::string metal = material.metal;
    std::replace(metal.begin(), metal.end(), '-', ' ');
    return material.gauge + " " + metal;
}

std::string materialInWords(const site::Material& material)
{
    return material.colour.empty() ? metalInWords(material)
                                   : material.colour + " \xC2\xB7 " + metalInWords(material);
}

const std::string& cautionAtTheMachine()
{
    static const std::string text =
        "Sheet edges cut: wear gloves. Keep hands clear when a clamp or hem closes: stop with the clamp just open, "
        "look, then close. The machine's own manual and guards rule; Lapwright does not control a machine. Long or "
        "heavy bundles: two people.";
    return text;
}

const std::string& cautionOnFoldTickets()
{
    static const std::string text =
        "Lapwright does not control a machine. Long or heavy bundles: two people.";
    return text;
}

const std::string& cautionForCarriers()
{
    static const std::string text =
        "Sheet edges cut: wear gloves. Long or heavy bundles: two people. Fall protection on roofs by the local rule.";
    return text;
}

const std::string& cautionAboutCodes()
{
    static const std::string text = "Codes differ: the local code and a licensed professional decide.";
    return text;
}

} // namespace lapwright::print
