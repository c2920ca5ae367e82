#include "acts/drop_folder.h"

#include "storage/document_file.h"

#include <QDateTime>
#include <QFileInfo>

namespace lapwright::acts {

namespace {

/// Whether the text ends where a JSON object does: enough to tell a copy that was broken off from one that is
/// whole; what is wrong inside is for the reader to say.
bool endsWhole(const std::string& path)
{
    const auto text = storage::readDocument(path);
    if (!text.ok())
        return false;
    const std::size_t last = text->find_last_not_of(" \t\r\n");
    return last != std::string::npos && (*text)[last] == '}';
}

} // namespace

Result<std::vector<std::string>> DropFolder::look(const std::string& folder)
{
    if (!QFileInfo(QString::fromStdString(folder)).isDir())
        return Error{folder, "no folder", "a folder that can be read"};
    const auto paths = storage::documentsAt(folder, ".json");
    if (!paths.ok())
        return paths.errors();
    std::vector<std::string> ready;
    for (const std::string& path : *paths) {
        const QFileInfo info(QString::fromStdString(path));
        Seen& seen = seen_[path];
        const Seen now{info.size(), info.lastModified().toMSecsSinceEpoch(), seen.given};
        const bool stands = now.size == seen.size && now.changed == seen.changed;
        if (!stands)
            seen = {now.size, now.changed, false};
        else if (!seen.given && endsWhole(path)) {
            seen.given = true;
            ready.push_back(path);
        }
    }
    return ready;
}

} // namespace lapwright::acts
