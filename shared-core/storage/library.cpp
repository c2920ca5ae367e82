#include "storage/library.h"

#include "storage/document_file.h"

#include <QDir>
#include <QFileInfo>

#include <map>

namespace lapwright::storage {

QString libraryFolder(LibraryKind kind)
{
    switch (kind) {
    case LibraryKind::Metals:
        return "metal-library";
    case LibraryKind::Trims:
        return "trim-library";
    case LibraryKind::RuleSets:
        return "rule-sets";
    case LibraryKind::Machines:
        return "machines";
    }
    return {};
}

Result<std::vector<LibraryFile>> libraryFiles(LibraryKind kind, const std::vector<std::string>& shopFolders)
{
    std::vector<QString> folders = {":/lapwright/" + libraryFolder(kind)};
    for (const std::string& shop : shopFolders) {
        if (!QFileInfo(QString::fromStdString(shop)).isDir())
            return Error{shop, "no such folder", "a folder with the shop's own data"};
        const QDir folder(QString::fromStdString(shop) + "/" + libraryFolder(kind));
        if (folder.exists())
            folders.push_back(folder.path());
    }
    std::map<std::string, LibraryFile> byName;
    for (const QString& folder : folders) {
        const auto paths = documentsAt(folder.toStdString(), {".json"});
        if (!paths.ok())
            return paths.errors();
        for (const std::string& path : *paths) {
            auto text = readDocument(path);
            if (!text.ok())
                return text.errors();
            byName[QFileInfo(QString::fromStdString(path)).fileName().toStdString()] = {path,
                                                                                        *std::move(text)};
        }
    }
    std::vector<LibraryFile> files;
    files.reserve(byName.size());
    for (auto& [name, file] : byName)
        files.push_back(std::move(file));
    return files;
}

} // namespace lapwright::storage
