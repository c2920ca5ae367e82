#pragma once

#include <QSqlError>
#include <QString>

#include <optional>

namespace lapwright::storage {

/// What a person can put right of a disk that does not take an SQLite file.
enum class DiskRefusal { Full, ReadOnly };

/// Why SQLite could not open or write the file, where that is the doing of its disk or folder: by the error's
/// code, and by what the file system says of the folder where the code does not tell.
[[nodiscard]] std::optional<DiskRefusal> diskRefusal(const QSqlError& error, const QString& file);

} // namespace lapwright::storage
