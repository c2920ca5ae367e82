#pragma once

#include "acts/words.h"
#include "measure/result.h"
#include "speech/spoken.h"

#include <QDateTime>
#include <QLocale>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::model {

[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// What the program says itself, in the language that is spoken.
[[nodiscard]] inline QString said(std::string_view english)
{
    return shown(spoken(std::string(english)));
}

/// One below the other.
[[nodiscard]] inline QString shown(const std::vector<Error>& errors)
{
    QStringList lines;
    for (const Error& error : errors)
        lines.append(said(error.sentence()));
    return lines.join(u'\n');
}

/// "10 Dec 2026" of "2026-12-10", as the language that is spoken writes it; what is no day stays.
[[nodiscard]] inline QString dayWords(const std::string& day)
{
    const QDate date = QDate::fromString(shown(day).left(10), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QStringLiteral("d MMM yyyy")) : shown(day);
}

/// The same with the time of the clock on the wall, of a time that is kept in UTC.
[[nodiscard]] inline QString timeWords(const std::string& utc)
{
    const QDateTime time = QDateTime::fromString(shown(utc), Qt::ISODate);
    return time.isValid() ? QLocale().toString(time.toLocalTime(), QStringLiteral("d MMM yyyy HH:mm"))
                          : shown(utc);
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return said(lapwright::counted(count, what));
}

} // namespace lapwright::model
