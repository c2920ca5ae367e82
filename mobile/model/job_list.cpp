#include "model/job_list.h"

#include "documents/job.h"
#include "model/guarded.h"
#include "model/words.h"
#include "speech/days.h"

#include <algorithm>
#include <utility>

namespace lapwright::field {

namespace {

constexpr int page = 60;

QString nameOf(const store::JobLine& line)
{
    return line.name.empty() ? JobList::tr("Job without a name") : field::shown(line.name);
}

QString stateWords(store::JobState state)
{
    switch (state) {
    case store::JobState::Measuring:
        return JobList::tr("Measuring");
    case store::JobState::Sent:
        return JobList::tr("Sent");
    case store::JobState::Changed:
        break;
    }
    return JobList::tr("Changed since sent");
}

} // namespace

JobList::JobList(const Tablet& tablet, QObject* parent) : QAbstractListModel(parent), tablet_(tablet)
{
    refresh();
}

int JobList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant JobList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const store::JobLine& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case IdRole:
        return exact(line.id);
    case Qt::DisplayRole:
    case NameRole:
        return nameOf(line);
    case CustomerRole:
        return field::shown(line.customer);
    case AddressRole:
        return field::shown(line.address);
    case WantedByRole:
        return dayWords(line.wantedBy);
    case RunsRole:
        return static_cast<int>(line.runs);
    case StateRole:
        return static_cast<int>(line.state);
    case StateWordsRole:
        return stateWords(line.state);
    case ChangedRole:
        return field::shown(line.changedAt);
    default:
        return {};
    }
}

QHash<int, QByteArray> JobList::roleNames() const
{
    return {{IdRole, "jobId"},          {NameRole, "name"},
            {CustomerRole, "customer"}, {AddressRole, "address"},
            {WantedByRole, "wantedBy"}, {RunsRole, "runs"},
            {StateRole, "jobState"},    {StateWordsRole, "stateWords"},
            {ChangedRole, "changed"}};
}

bool JobList::canFetchMore(const QModelIndex& parent) const
{
    return !parent.isValid() && static_cast<int>(lines_.size()) < total_;
}

void JobList::fetchMore(const QModelIndex& parent)
{
    if (!canFetchMore(parent))
        return;
    guarded(*this, [&] {
        const auto last = lines_.empty() ? std::nullopt : std::optional(lines_.back());
        std::vector<store::JobLine> more = store::jobPage(tablet_.database(), filter_, last, page);
        if (more.empty()) {
            total_ = static_cast<int>(lines_.size());
            emit totalChanged();
            return;
        }
        const int first = static_cast<int>(lines_.size());
        beginInsertRows({}, first, first + static_cast<int>(more.size()) - 1);
        std::move(more.begin(), more.end(), std::back_inserter(lines_));
        endInsertRows();
    });
}

void JobList::setWords(const QString& words)
{
    if (words == filter_.words)
        return;
    filter_.words = words;
    refresh();
    emit filterChanged();
}

void JobList::setShown(Shown shown)
{
    if (shown == shown_)
        return;
    shown_ = shown;
    filter_.shelf = shown == Shown::Archived  ? store::Shelf::Archived
                    : shown == Shown::Deleted ? store::Shelf::Deleted
                                              : store::Shelf::Open;
    filter_.state = shown == Shown::Measuring ? std::optional(store::JobState::Measuring)
                    : shown == Shown::Sent    ? std::optional(store::JobState::Sent)
                    : shown == Shown::Changed ? std::optional(store::JobState::Changed)
                                              : std::nullopt;
    refresh();
    emit filterChanged();
}

QString JobList::undoWords() const
{
    return lastMove_ ? lastMove_->words : QString();
}

void JobList::refresh()
{
    guarded(*this, [&] {
        std::vector<store::JobLine> lines = store::jobPage(tablet_.database(), filter_, std::nullopt, page);
        const auto total = static_cast<int>(store::countJobs(tablet_.database(), filter_));
        beginResetModel();
        lines_ = std::move(lines);
        endResetModel();
        total_ = total;
        emit totalChanged();
    });
}

QString JobList::duplicate(const QString& id)
{
    return guarded(*this, [&]() -> QString {
        const auto source = store::keptJob(tablet_.database(), kept(id));
        auto read = source ? documents::readJob(source->document) : Result<documents::JobDocument>(Error{});
        if (!read.ok()) {
            emit failed(tr("This job cannot be read any more: restore a backup."));
            return {};
        }
        documents::JobDocument& copy = read.value();
        copy.value.id = tablet_.newId();
        copy.value.name = kept(tr("%1 (copy)").arg(field::shown(copy.value.name)), longestName);
        copy.value.acknowledgements.clear();
        store::addJob(tablet_.database(), copy.value, documents::writeJob(copy, documents::Layout::Canonical),
                      {"job.copy", kept(tr("copied")), tablet_.now()});
        refresh();
        return exact(copy.value.id);
    });
}

void JobList::archive(const QString& id)
{
    move(id, store::Shelf::Archived, "job.archive", tr("%1 archived"));
}

void JobList::remove(const QString& id)
{
    move(id, store::Shelf::Deleted, "job.delete", tr("%1 deleted"));
}

void JobList::reopen(const QString& id)
{
    move(id, store::Shelf::Open, "job.reopen", tr("%1 opened again"));
}

void JobList::move(const QString& id, store::Shelf to, const char* kind, const QString& words)
{
    const bool moved = guarded(*this, [&] {
        const auto line = store::jobLine(tablet_.database(), kept(id));
        const QString said = words.arg(line ? nameOf(*line) : id);
        const store::Shelf from =
            store::moveJob(tablet_.database(), kept(id), to, {kind, kept(said), tablet_.now()});
        lastMove_ = Move{kept(id), from, said};
    });
    if (!moved)
        return;
    takeOut(kept(id), to);
    emit undoChanged();
}

void JobList::takeOut(const std::string& id, store::Shelf to)
{
    const auto line =
        std::find_if(lines_.begin(), lines_.end(), [&](const store::JobLine& one) { return one.id == id; });
    if (line == lines_.end() || to == filter_.shelf)
        return refresh();
    const int row = static_cast<int>(line - lines_.begin());
    --total_;
    beginRemoveRows({}, row, row);
    lines_.erase(line);
    endRemoveRows();
    emit totalChanged();
}

void JobList::undo()
{
    if (!lastMove_)
        return;
    const Move last = *lastMove_;
    const bool moved = guarded(*this, [&] {
        store::moveJob(tablet_.database(), last.id, last.from, {"job.back", kept(last.words), tablet_.now()});
    });
    if (!moved)
        return;
    lastMove_.reset();
    refresh();
    emit undoChanged();
}

void JobList::forgetUndo()
{
    lastMove_.reset();
    emit undoChanged();
}

} // namespace lapwright::field
