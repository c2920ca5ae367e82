#include "storage/disk_refusal.h"

#include <QFileInfo>

namespace lapwright::storage {

namespace {

// sqlite.org/rescode.html; the primary code is the lowest byte.
constexpr int primary = 0xff;
constexpr int readOnly = 8, full = 13, cannotOpen = 14;
/// SQLITE_IOERR_SHMSIZE: the index of the write-ahead log, which a reader makes too, could not be given room.
constexpr int noRoomForIndex = 4874;

} // namespace

std::optional<DiskRefusal> diskRefusal(const QSqlError& error, const QString& file)
{
    const int code = error.nativeErrorCode().toInt();
    if ((code & primary) == full || code == noRoomForIndex)
        return DiskRefusal::Full;
    const QFileInfo folder(QFileInfo(file).absolutePath());
    const bool isReadOnly = folder.isDir() && !folder.isWritable();
    if ((code & primary) == readOnly || ((code & primary) == cannotOpen && isReadOnly))
        return DiskRefusal::ReadOnly;
    return std::nullopt;
}

} // namespace lapwright::storage
