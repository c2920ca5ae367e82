#include "store/pictures.h"

#include "documents/identity.h"
#include "storage/owner_file.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>

namespace lapwright::store {

namespace {

std::string hashOf(const QByteArray& bytes)
{
    return documents::sha256({bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

} // namespace

Result<std::string> PictureFolder::keep(const QByteArray& bytes) const
{
    const std::string hash = hashOf(bytes);
    if (has(hash))
        return hash;
    if (!QDir().mkpath(folder_))
        return Error{folder_.toStdString(), "a folder that cannot be made", "a place for photos"};
    QSaveFile file(pathOf(hash));
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !storage::putInPlace(file))
        return Error{folder_.toStdString(), file.errorString().toStdString(), "room for a photo"};
    return hash;
}

Result<QByteArray> PictureFolder::read(const std::string& hash) const
{
    QFile file(pathOf(hash));
    if (!file.open(QIODevice::ReadOnly))
        return Error{file.fileName().toStdString(), "no such photo", "the photo that was taken"};
    QByteArray bytes = file.readAll();
    if (hashOf(bytes) != hash)
        return Error{file.fileName().toStdString(), "a photo that was altered", "the photo that was taken"};
    return bytes;
}

bool PictureFolder::has(const std::string& hash) const
{
    return QFile::exists(pathOf(hash));
}

QString PictureFolder::pathOf(const std::string& hash) const
{
    return folder_ + "/" + QString::fromStdString(hash) + ".jpg";
}

std::vector<std::string> PictureFolder::all() const
{
    std::vector<std::string> hashes;
    const QStringList names = QDir(folder_).entryList({"*.jpg"}, QDir::Files, QDir::Name);
    for (const QString& name : names)
        hashes.push_back(name.chopped(4).toStdString());
    return hashes;
}

} // namespace lapwright::store
