#include "model/colours.h"

#include <QString>

namespace lapwright::field {

const std::vector<NamedColour>& offeredColours()
{
    static const std::vector<NamedColour> colours = {
        {"Slate", {74, 84, 94}},    {"Charcoal", {52, 54, 57}}, {"Black", {30, 30, 32}},
        {"White", {240, 240, 236}}, {"Bone", {222, 212, 190}},  {"Sand", {196, 176, 142}},
        {"Brown", {84, 62, 48}},    {"Red", {140, 44, 36}},     {"Green", {48, 84, 62}},
        {"Blue", {44, 78, 116}},    {"Copper", {168, 104, 66}}, {"Mill", {172, 178, 184}}};
    return colours;
}

drawing::Colour colourNamed(const std::string& name)
{
    const QString wanted = QString::fromStdString(name).trimmed();
    for (const NamedColour& offered : offeredColours())
        if (wanted.compare(
                QString::fromUtf8(offered.name.data(), static_cast<qsizetype>(offered.name.size())),
                Qt::CaseInsensitive) == 0)
            return offered.colour;
    return {150, 154, 160};
}

} // namespace lapwright::field
