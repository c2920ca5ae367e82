#pragma once

#include <QByteArray>
#include <QFile>
#include <QString>

namespace lapwright::tests {

/// Makes the page of an SQLite file that holds these words unreadable, as a bad sector does; nobody has the
/// file open. False if there is none.
[[nodiscard]] inline bool spoilPage(const QString& path, const QByteArray& words)
{
    constexpr qsizetype page = 4096; // bytes; SQLite's default
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite))
        return false;
    const qsizetype place = file.readAll().indexOf(words);
    return place >= page && file.seek(place / page * page) && file.write(QByteArray(page, '\xff')) == page;
}

} // namespace lapwright::tests
