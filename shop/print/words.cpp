#include "print/words.h"

#include "schedule/load.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace lapwright::print {

namespace {

/// Exact: the international pound of 1959 is 0.45359237 kg.
constexpr double kilogramsPerPound = 0.45359237;

std::string tenths(double value)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.1f", value);
    return text;
}

} // namespace

std::string counted(std::int64_t count, const std::string& what)
{
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

std::string writeMass(double kilograms, const Style& style)
{
    const std::string metric = tenths(kilograms) + " kg";
    if (style.unit == LengthUnit::Millimetres)
        return metric;
    return std::to_string(std::llround(kilograms / kilogramsPerPound)) + " lb (" + metric + ")";
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
