#include "acts/shop_library.h"

#include "acts/catalogue.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/rules.h"
#include "documents/trim.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>
#include <optional>

namespace lapwright::acts {

namespace {

using storage::LibraryKind;

template <class Document>
Result<std::string> idFrom(const Result<Document>& document)
{
    if (!document.ok())
        return document.errors();
    return document->value.id;
}

Result<std::string> idOf(LibraryKind kind, const std::string& text)
{
    switch (kind) {
    case LibraryKind::Metals:
        return idFrom(documents::readMetal(text));
    case LibraryKind::Trims:
        return idFrom(documents::readTrim(text));
    case LibraryKind::RuleSets:
        return idFrom(documents::readRules(text));
    case LibraryKind::Machines:
        return idFrom(documents::readMachine(text));
    }
    return Error{"", "a kind of document that no library has", "a metal, a trim, rules or a machine"};
}

/// The file of this id.
Result<std::optional<storage::LibraryFile>> fileOf(LibraryKind kind, const std::string& id,
                                                   const std::vector<std::string>& shopFolders)
{
    auto files = storage::libraryFiles(kind, shopFolders);
    if (!files.ok())
        return files.errors();
    for (storage::LibraryFile& file : *files)
        if (const auto here = idOf(kind, file.text); here.ok() && *here == id)
            return std::optional(std::move(file));
    return std::optional<storage::LibraryFile>();
}

bool isPlainName(const std::string& id)
{
    return !id.empty() && id.size() <= 60 && std::all_of(id.begin(), id.end(), [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') || letter == '-';
    });
}

/// Errors where the library with this file in it does not hold together.
Result<bool> tried(LibraryKind kind, const std::string& name, const std::string& text,
                   std::vector<std::string> folders)
{
    const QTemporaryDir scratch;
    const QString place = scratch.filePath(storage::libraryFolder(kind));
    if (!QDir().mkpath(place))
        return Error{place.toStdString(), "a place that cannot be written", "room for temporary files"};
    if (auto written = storage::writeDocument(place.toStdString() + "/" + name, text); !written.ok())
        return written.errors();
    folders.push_back(scratch.path().toStdString());
    if (const auto catalogue = storage::loadCatalogue(folders); !catalogue.ok())
        return catalogue.errors();
    if (const auto machines = loadMachines(folders); !machines.ok())
        return machines.errors();
    return true;
}

} // namespace

Result<std::string> libraryDocument(LibraryKind kind, const std::string& id,
                                    const std::vector<std::string>& shopFolders)
{
    const auto file = fileOf(kind, id, shopFolders);
    if (!file.ok())
        return file.errors();
    if (!file->has_value())
        return Error{id, "nothing of that name", "an id of the library"};
    return (*file)->text;
}

Result<std::string> addToLibrary(LibraryKind kind, const std::string& text,
                                 const std::vector<std::string>& shopFolders)
{
    const auto id = idOf(kind, text);
    if (!id.ok())
        return id.errors();
    if (!isPlainName(*id))
        return Error{"id", *id, "at most 60 of a-z, 0-9 and -"};
    if (shopFolders.empty())
        return Error{"library", "no folder of the shop's own", "--library with one"};
    const auto before = fileOf(kind, *id, shopFolders);
    if (!before.ok())
        return before.errors();
    // A file of the same name takes the place of the one that ships with the program.
    const std::string name = before->has_value()
                                 ? QFileInfo(QString::fromStdString((*before)->name)).fileName().toStdString()
                                 : *id + ".json";
    if (auto holds = tried(kind, name, text, shopFolders); !holds.ok())
        return holds.errors();
    const QString folder = QString::fromStdString(shopFolders.back()) + u'/' + storage::libraryFolder(kind);
    if (!QDir().mkpath(folder))
        return Error{folder.toStdString(), "a place that cannot be written", "a folder"};
    if (auto written = storage::writeDocument(folder.toStdString() + "/" + name, text); !written.ok())
        return written.errors();
    return *id;
}

} // namespace lapwright::acts
