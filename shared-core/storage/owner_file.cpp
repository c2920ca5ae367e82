#include "storage/owner_file.h"

#include <QFile>
#include <QSaveFile>
#include <QScopeGuard>

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

bool makeForOwner(const QString& path)
{
    QFile::remove(path);
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::NewOnly, QFile::ReadOwner | QFile::WriteOwner);
}

} // namespace

bool fillInPlace(const QString& target, const std::function<void(const QString&)>& fill)
{
    const QString scratch = target + ".part";
    if (!makeForOwner(scratch))
        return false;
    const auto noRest = qScopeGuard([&scratch] { QFile::remove(scratch); });
    fill(scratch);
    std::error_code failed;
    if (flush(scratch))
        std::filesystem::rename(QFile::encodeName(scratch).toStdString(),
                                QFile::encodeName(target).toStdString(), failed);
    else
        failed = std::make_error_code(std::errc::io_error);
    return !failed;
}

bool putInPlace(QSaveFile& file)
{
    // commit() by itself writes what is still buffered, and does not look whether that went well.
    return file.flush() && ::fsync(file.handle()) == 0 && file.commit();
}

} // namespace lapwright::storage
