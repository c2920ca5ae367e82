#include "storage/document_file.h"

#include "storage/owner_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <algorithm>
#include <cerrno>
#include <cstdio>

namespace lapwright::storage {

namespace {

Error unreadable(const std::string& path, const QString& why, const std::string& expected)
{
    return {path, why.toStdString(), expected};
}

/// Of a file that was written to with errno at 0 before. Where only part of it went Qt knows no reason, but
/// the system's last word is one.
QString whyNotWritten(const QFileDevice& file)
{
    const int reason = errno;
    return reason != 0 ? qt_error_string(reason) : file.errorString();
}

Result<std::string> readAll(QIODevice& device, const std::string& path)
{
    // One step reads a file whole, and one more byte would tell that it has grown; a pipe comes in large
    // pieces.
    constexpr qint64 large = 1 << 20;
    const qint64 step = device.isSequential() ? large : std::clamp<qint64>(device.size() + 1, 4096, large);
    const Error tooLarge{path, "more than 256 MiB", "a document of at most 256 MiB"};
    if (!device.isSequential() && device.size() > largestDocument)
        return tooLarge;
    std::string text;
    for (;;) {
        const std::size_t before = text.size();
        text.resize(before + static_cast<std::size_t>(step));
        const qint64 read = device.read(text.data() + before, step);
        if (read < 0)
            return unreadable(path, device.errorString(), "a file that can be read to its end");
        text.resize(before + static_cast<std::size_t>(read));
        if (read == 0)
            return text;
        if (static_cast<std::int64_t>(text.size()) > largestDocument)
            return tooLarge;
    }
}

} // namespace

Result<std::string> readDocument(const std::string& path)
{
    QFile file;
    if (path == "-") {
        if (!file.open(stdin, QIODevice::ReadOnly))
            return unreadable("standard input", file.errorString(), "a document");
        return readAll(file, "standard input");
    }
    file.setFileName(QString::fromStdString(path));
    if (QFileInfo(file).isDir())
        return Error{path, "a folder", "a file"};
    if (!file.open(QIODevice::ReadOnly))
        return unreadable(path, file.errorString(), "a file that can be read");
    return readAll(file, path);
}

Result<bool> writeDocument(const std::string& path, const std::string& text)
{
    const auto size = static_cast<qint64>(text.size());
    if (size > largestDocument)
        return Error{path, std::to_string(size >> 20) + " MiB to write",
                     "at most 256 MiB, or it is not read back"};
    errno = 0;
    if (path == "-") {
        QFile out;
        const bool written =
            out.open(stdout, QIODevice::WriteOnly) && out.write(text.data(), size) == size && out.flush();
        if (!written)
            return unreadable("standard output", whyNotWritten(out), "room to write");
        return true;
    }
    QSaveFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::WriteOnly))
        return unreadable(path, file.errorString(), "a place that can be written");
    errno = 0;
    if (file.write(text.data(), size) != size || !putInPlace(file))
        return unreadable(path, whyNotWritten(file), "a place that can be written");
    return true;
}

Result<std::vector<std::string>> documentsAt(const std::string& path, const std::vector<std::string>& endings)
{
    const QFileInfo info(QString::fromStdString(path));
    if (path == "-" || !info.isDir())
        return std::vector<std::string>{path};
    const QDir folder(info.filePath());
    if (!folder.isReadable())
        return Error{path, "a folder that cannot be read", "a folder that can be read"};
    std::vector<std::string> files;
    QStringList patterns;
    for (const std::string& ending : endings)
        patterns << "*" + QString::fromStdString(ending);
    for (const QString& name : folder.entryList(patterns, QDir::Files, QDir::Name))
        files.push_back(folder.filePath(name).toStdString());
    return files;
}

} // namespace lapwright::storage
