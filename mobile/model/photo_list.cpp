#include "model/photo_list.h"

#include "model/photo_file.h"
#include "model/words.h"

#include <QUrl>

#include <algorithm>
#include <utility>

namespace lapwright::field {

namespace {

constexpr std::size_t mostPhotos = 1000; // job.schema.json

bool isOf(const site::Photo& photo, const std::string& code, const std::string& place)
{
    return photo.code == code && photo.place == place;
}

} // namespace

std::string photoPlace(const std::string& run)
{
    return "run " + run;
}

int photosOf(const site::Job& job, const std::string& code, const std::string& place)
{
    return static_cast<int>(
        std::count_if(job.photos.begin(), job.photos.end(),
                      [&](const site::Photo& photo) { return isOf(photo, code, place); }));
}

PhotoList::PhotoList(const Tablet& tablet, JobEditor& editor, QObject* parent)
    : QAbstractListModel(parent), tablet_(tablet), editor_(editor)
{
    connect(&editor, &JobEditor::jobChanged, this, &PhotoList::refresh);
}

int PhotoList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant PhotoList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const std::string& hash = editor_.job().photos[indexOf(index.row())].sha256;
    switch (role) {
    case UrlRole:
        return QUrl::fromLocalFile(tablet_.pictures().pathOf(hash));
    case MissingRole:
        return !tablet_.pictures().has(hash);
    case Qt::DisplayRole:
        return tr("Photo %1").arg(index.row() + 1);
    default:
        return {};
    }
}

QHash<int, QByteArray> PhotoList::roleNames() const
{
    return {{UrlRole, "url"}, {MissingRole, "missing"}, {Qt::DisplayRole, "words"}};
}

QString PhotoList::of() const
{
    return named(place_);
}

void PhotoList::showRun(const QString& run)
{
    show({}, photoPlace(kept(run)));
}

void PhotoList::showFinding(const QString& code, const QString& place)
{
    show(kept(code), kept(place));
}

void PhotoList::show(std::string code, std::string place)
{
    code_ = std::move(code);
    place_ = std::move(place);
    refresh();
}

void PhotoList::refresh()
{
    beginResetModel();
    shown_.clear();
    const std::vector<site::Photo>& photos = editor_.job().photos;
    for (std::size_t i = 0; i < photos.size(); ++i)
        if (isOf(photos[i], code_, place_))
            shown_.push_back(i);
    endResetModel();
    emit shownChanged();
}

std::string PhotoList::taken(const Result<QByteArray>& photo)
{
    const auto hash = photo.ok() ? tablet_.pictures().keep(*photo) : Result<std::string>(photo.errors());
    if (hash.ok())
        return *hash;
    emit failed(tr("The photo was not kept: %1").arg(field::shown(hash.errors().front().sentence())));
    return {};
}

bool PhotoList::add(const QString& path)
{
    return addPhoto([&path] { return photoFrom(path); });
}

bool PhotoList::addSeen(const QImage& seen)
{
    return addPhoto([&seen] { return photoFrom(seen); });
}

bool PhotoList::retake(int row, const QString& path)
{
    return retakePhoto(row, [&path] { return photoFrom(path); });
}

bool PhotoList::retakeSeen(int row, const QImage& seen)
{
    return retakePhoto(row, [&seen] { return photoFrom(seen); });
}

bool PhotoList::addPhoto(const Source& photo)
{
    if (!editor_.isOpen() || place_.empty())
        return false;
    if (editor_.job().photos.size() >= mostPhotos) {
        emit failed(tr("A job holds at most %1 photos.").arg(mostPhotos));
        return false;
    }
    const std::string hash = taken(photo());
    return !hash.empty() && editor_.act("photo.add", tr("photo of %1").arg(of()), [&](site::Job& job) {
        job.photos.push_back({hash, place_, code_});
    });
}

bool PhotoList::retakePhoto(int row, const Source& photo)
{
    if (row < 0 || row >= count())
        return false;
    const std::string hash = taken(photo());
    return !hash.empty() && editor_.act("photo.retake", tr("photo of %1 taken again").arg(of()),
                                        [&](site::Job& job) { job.photos[indexOf(row)].sha256 = hash; });
}

bool PhotoList::remove(int row)
{
    if (row < 0 || row >= count())
        return false;
    return editor_.act("photo.remove", tr("photo of %1 removed").arg(of()), [&](site::Job& job) {
        job.photos.erase(job.photos.begin() + static_cast<std::ptrdiff_t>(indexOf(row)));
    });
}

} // namespace lapwright::field
