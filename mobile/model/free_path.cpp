#include "model/free_path.h"

#include "model/words.h"
#include "storage/document_file.h"

#include <QDir>
#include <QFileInfo>

namespace lapwright::field {

QString fileStamp(const std::string& time)
{
    return exact(time).left(19).remove(':').replace('T', '-');
}

QString freePath(const QString& folder, const QString& stem, const QString& ending,
                 const std::function<bool(const std::string&)>& mayReplace)
{
    QString path = QDir(folder).filePath(stem + ending);
    for (int number = 2; QFileInfo::exists(path); ++number) {
        const auto bytes = storage::readDocument(kept(path));
        if (bytes.ok() && mayReplace(*bytes))
            break;
        path = QDir(folder).filePath(QString("%1-%2%3").arg(stem).arg(number).arg(ending));
    }
    return path;
}

} // namespace lapwright::field
