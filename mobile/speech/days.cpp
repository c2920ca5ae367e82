#include "speech/days.h"

#include <QDateTime>
#include <QLocale>

namespace lapwright {

QString dayWords(const std::string& day)
{
    const QString kept = QString::fromStdString(day);
    const QDate date = QDate::fromString(kept.left(10), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QStringLiteral("d MMM yyyy")) : kept;
}

QString timeWords(const std::string& utc)
{
    const QString kept = QString::fromStdString(utc);
    const QDateTime time = QDateTime::fromString(kept, Qt::ISODate);
    return time.isValid() ? QLocale().toString(time.toLocalTime(), QStringLiteral("d MMM yyyy HH:mm")) : kept;
}

} // namespace lapwright
