#pragma once

#include "acts/words.h"
#include "drawing/text.h"
#include "measure/reading.h"
#include "measure/result.h"
#include "measure/writing.h"
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

/// What something is known by, as it is: to be found again, not to be read.
[[nodiscard]] inline QString exact(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
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

/// The length that a person typed; without a unit in that of their style. Error at `place`: no length.
[[nodiscard]] inline Result<Length> typedLength(const QString& entered, const Style& style,
                                                const std::string& place)
{
    const LengthUnit plain =
        style.unit == LengthUnit::Millimetres ? LengthUnit::Millimetres : LengthUnit::Inches;
    return readLength(entered.toStdString(), {plain, false}).result(place);
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return said(lapwright::counted(count, what));
}

} // namespace lapwright::model
