#include "storage/owner_file.h"

#include <QFile>
#include <QSaveFile>

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>
#include <system_error>

namespace lapwright::storage {

namespace {

bool flush(const QString& path)
{
    const QByteArray name = QFile::encodeName(path);
    const int file = ::open(name.constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return false;
    const bool flushed = ::fsync(file) == 0;
    return ::close(file) == 0 && flushed;
}

} // namespace

bool makeForOwner(const QString& path)
{
    QFile::remove(path);
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::NewOnly, QFile::ReadOwner | QFile::WriteOwner);
}

bool putInPlace(const QString& path, const QString& target)
{
    std::error_code failed;
    if (flush(path))
        std::filesystem::rename(QFile::encodeName(path).toStdString(),
                                QFile::encodeName(target).toStdString(), failed);
    else
        failed = std::make_error_code(std::errc::io_error);
    if (failed)
        QFile::remove(path);
    return !failed;
}

bool putInPlace(QSaveFile& file)
{
    // commit() by itself writes what is still buffered, and does not look whether that went well.
    return file.flush() && ::fsync(file.handle()) == 0 && file.commit();
}

} // namespace lapwright::storage
