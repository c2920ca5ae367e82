#include "storage/library.h"

#include "storage/document_file.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

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

namespace {

/// Nothing where the folder can be a shop's own data: one of the kinds is there, or nothing yet.
std::optional<Error> whyNoLibrary(const std::string& shop)
{
    const QDir folder(QString::fromStdString(shop));
    if (!folder.exists())
        return Error{shop, "no such folder", "a folder with the shop's own data"};
    QStringList kinds;
    for (const LibraryKind kind :
         {LibraryKind::Metals, LibraryKind::Trims, LibraryKind::RuleSets, LibraryKind::Machines})
        kinds << libraryFolder(kind);
    const bool has = std::any_of(kinds.begin(), kinds.end(), [&](const QString& kind) {
        return QFileInfo(folder.filePath(kind)).isDir();
    });
    if (has || folder.isEmpty())
        return std::nullopt;
    return Error{shop, "no folder of the library", "in it one of " + kinds.join(", ").toStdString()};
}

} // namespace

Result<std::vector<LibraryFile>> libraryFiles(LibraryKind kind, const std::vector<std::string>& shopFolders)
{
    std::vector<QString> folders = {":/lapwright/" + libraryFolder(kind)};
    for (const std::string& shop : shopFolders) {
        if (auto why = whyNoLibrary(shop))
            return *std::move(why);
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
