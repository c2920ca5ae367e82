#include "print/words.h"

#include "schedule/load.h"
#include "speech/spoken.h"

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
    return spokenWhole(material.gauge) + " " + spoken(metal);
}

std::string materialInWords(const site::Material& material)
{
    return material.colour.empty() ? metalInWords(material)
                                   : material.colour + " \xC2\xB7 " + metalInWords(material);
}

std::string cautionAtTheMachine()
{
    return spoken(
        "Sheet edges cut: wear gloves. Keep hands clear when a clamp or hem closes: stop with the clamp just open, "
        "look, then close. The machine's own manual and guards rule; Lapwright does not control a machine. Long or "
        "heavy bundles: two people.");
}

std::string cautionOnFoldTickets()
{
    return spoken("Lapwright does not control a machine. Long or heavy bundles: two people.");
}

std::string cautionForCarriers()
{
    return spoken(
        "Sheet edges cut: wear gloves. Long or heavy bundles: two people. Fall protection on roofs by the local rule.");
}

std::string cautionAboutCodes()
{
    return spoken("Codes differ: the local code and a licensed professional decide.");
}

} // namespace lapwright::print
