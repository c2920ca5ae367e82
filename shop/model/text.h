#pragma once

#include "acts/words.h"
#include "drawing/text.h"
#include "measure/result.h"
#include "speech/days.h"
#include "speech/spoken.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::model {

/// As a screen shows it: what would turn the words around it, or shows nothing, is a space
/// (drawing::harmlessLines).
[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromStdString(drawing::harmlessLines(std::string(text)));
}

/// What the program says itself, in the language that is spoken.
[[nodiscard]] inline QString said(std::string_view english)
{
    return shown(spoken(std::string(english)));
}

/// What a document of reference data says: ours in the language that is spoken, the shop's own as it wrote
/// it.
[[nodiscard]] inline QString saidWhole(std::string_view english)
{
    return shown(spokenWhole(std::string(english)));
}

/// One below the other.
[[nodiscard]] inline QString shown(const std::vector<Error>& errors)
{
    QStringList lines;
    for (const Error& error : errors)
        lines.append(said(error.sentence()));
    return lines.join(u'\n');
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return said(lapwright::counted(count, what));
}

} // namespace lapwright::model
