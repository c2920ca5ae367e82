#pragma once

#include "acts/words.h"

#include <QDateTime>
#include <QString>

#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::model {

[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return shown(lapwright::counted(count, what));
}

/// "2026-12-10 09:30" by the clock on this wall, of a time that is kept as ISO 8601 in UTC; as it is kept
/// where it is no time.
[[nodiscard]] inline QString localTime(std::string_view utc)
{
    const QDateTime time = QDateTime::fromString(shown(utc), Qt::ISODate);
    return time.isValid() ? time.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")) : shown(utc);
}

} // namespace lapwright::model
