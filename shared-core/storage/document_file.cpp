#include "storage/document_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <cstdio>

namespace lapwright::storage {

namespace {

Error unreadable(const std::string& path, const QString& why, const std::string& expected)
{
    return {path, why.toStdString(), expected};
}

Result<std::string> readAll(QIODevice& device, const std::string& path)
{
    const QByteArray bytes = device.read(largestDocument + 1);
    if (bytes.size() > largestDocument)
        return Error{path, "more than 256 MiB", "a document of at most 256 MiB"};
    return bytes.toStdString();
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
    if (path == "-") {
        QFile out;
        const bool written =
            out.open(stdout, QIODevice::WriteOnly) && out.write(text.data(), size) == size && out.flush();
        if (!written)
            return unreadable("standard output", out.errorString(), "room to write");
        return true;
    }
    QSaveFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size || !file.commit())
        return unreadable(path, file.errorString(), "a place that can be written");
    return true;
}

Result<std::vector<std::string>> documentsAt(const std::string& path, const std::string& ending)
{
    const QFileInfo info(QString::fromStdString(path));
    if (path == "-" || !info.isDir())
        return std::vector<std::string>{path};
    const QDir folder(info.filePath());
    if (!folder.isReadable())
        return Error{path, "a folder that cannot be read", "a folder that can be read"};
    std::vector<std::string> files;
    const QStringList names =
        folder.entryList({"*" + QString::fromStdString(ending)}, QDir::Files, QDir::Name);
    for (const QString& name : names)
        files.push_back(folder.filePath(name).toStdString());
    return files;
}

} // namespace lapwright::storage
