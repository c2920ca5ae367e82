#include "model/folder_list.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

namespace lapwright::field {

FolderList::FolderList(QObject* parent) : QAbstractListModel(parent), path_(QDir::homePath())
{
    refresh();
}

int FolderList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant FolderList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case NameRole:
        return row.name;
    case PathRole:
        return row.path;
    case IsFolderRole:
        return row.isFolder;
    case DetailRole:
        return row.detail;
    default:
        return {};
    }
}

QHash<int, QByteArray> FolderList::roleNames() const
{
    return {{NameRole, "name"}, {PathRole, "path"}, {IsFolderRole, "isFolder"}, {DetailRole, "detail"}};
}

void FolderList::setPath(const QString& path)
{
    if (path == path_ || !QFileInfo(path).isDir())
        return;
    path_ = QDir(path).absolutePath();
    refresh();
}

void FolderList::setEndings(const QStringList& endings)
{
    if (endings == endings_)
        return;
    endings_ = endings;
    refresh();
}

bool FolderList::canGoUp() const
{
    return !QDir(path_).isRoot();
}

bool FolderList::writable() const
{
    return QFileInfo(path_).isWritable();
}

void FolderList::up()
{
    QDir folder(path_);
    if (folder.cdUp())
        setPath(folder.absolutePath());
}

void FolderList::refresh()
{
    beginResetModel();
    rows_.clear();
    const QDir folder(path_);
    const auto order = QDir::Name | QDir::IgnoreCase;
    for (const QFileInfo& info : folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, order))
        rows_.push_back({info.fileName(), info.filePath(), true, {}});
    QStringList patterns;
    for (const QString& ending : endings_)
        patterns << "*" + ending;
    if (!patterns.isEmpty())
        for (const QFileInfo& info : folder.entryInfoList(patterns, QDir::Files, order))
            rows_.push_back({info.fileName(), info.filePath(), false,
                             QLocale().toString(info.lastModified(), QLocale::ShortFormat) + ", " +
                                 QLocale().formattedDataSize(info.size())});
    endResetModel();
    emit changed();
}

} // namespace lapwright::field
