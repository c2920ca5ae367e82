#include "acts/drop_folder.h"

#include "parcel/parcel.h"
#include "storage/document_file.h"

#include <QDateTime>
#include <QFileInfo>

namespace lapwright::acts {

namespace {

/// Enough to tell a copy that was broken off from one that is whole; what is wrong inside is for the reader
/// to say.
bool endsWhole(const std::string& path)
{
    const auto bytes = storage::readDocument(path);
    return bytes.ok() && parcel::endsWhole(*bytes);
}

} // namespace

const std::vector<std::string>& orderEndings()
{
    static const std::vector<std::string> endings{".json", ".zip"};
    return endings;
}

Result<std::vector<std::string>> DropFolder::look(const std::string& folder)
{
    if (!QFileInfo(QString::fromStdString(folder)).isDir())
        return Error{folder, "no folder", "a folder that can be read"};
    const auto paths = storage::documentsAt(folder, orderEndings());
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
