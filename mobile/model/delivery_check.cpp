#include "model/delivery_check.h"

#include "documents/job.h"
#include "model/guarded.h"
#include "model/words.h"
#include "schedule/label_text.h"
#include "site/closure.h"
#include "speech/days.h"
#include "store/deliveries.h"
#include "store/jobs.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace lapwright::field {

namespace {

using schedule::PieceState;

PieceState stateOf(DeliveryCheck::Found found)
{
    switch (found) {
    case DeliveryCheck::Found::Received:
        return PieceState::Received;
    case DeliveryCheck::Found::Short:
        return PieceState::Short;
    case DeliveryCheck::Found::Damaged:
        return PieceState::Damaged;
    case DeliveryCheck::Found::Wrong:
        break;
    }
    return PieceState::Wrong;
}

std::size_t slotOf(PieceState state)
{
    return state == PieceState::Received  ? 0
           : state == PieceState::Short   ? 1
           : state == PieceState::Damaged ? 2
                                          : 3;
}

} // namespace

DeliveryCheck::DeliveryCheck(const Tablet& tablet, Settings& settings, QObject* parent)
    : QAbstractListModel(parent), tablet_(tablet), settings_(settings)
{
}

int DeliveryCheck::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant DeliveryCheck::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = at(index.row());
    const schedule::Bundle& bundle = load_.bundles[row.bundle];
    switch (role) {
    case Qt::DisplayRole:
    case MarkRole:
        return field::shown(row.piece.mark);
    case BundleRole:
        return field::shown(bundle.label);
    case JobRole:
        return field::shown(bundle.job);
    case RunRole:
        return field::shown(row.piece.run);
    case LengthRole:
        return field::shown(write(row.piece.length, settings_.style()));
    case ExpectedRole:
        return static_cast<int>(row.piece.count);
    case ReceivedRole:
        return static_cast<int>(row.found[0]);
    case ShortRole:
        return static_cast<int>(row.found[1]);
    case DamagedRole:
        return static_cast<int>(row.found[2]);
    case WrongRole:
        return static_cast<int>(row.found[3]);
    case LeftRole:
        return static_cast<int>(row.left());
    case NoteRole:
        return field::shown(row.note);
    case HeavyRole:
        return bundle.twoPeople;
    case InHandRole:
        return inHand_ == shown_[static_cast<std::size_t>(index.row())];
    default:
        return {};
    }
}

QHash<int, QByteArray> DeliveryCheck::roleNames() const
{
    return {{MarkRole, "mark"},         {BundleRole, "bundle"},  {JobRole, "job"},
            {RunRole, "run"},           {LengthRole, "length"},  {ExpectedRole, "expected"},
            {ReceivedRole, "received"}, {ShortRole, "missing"},  {DamagedRole, "damaged"},
            {WrongRole, "wrong"},       {LeftRole, "uncounted"}, {NoteRole, "note"},
            {HeavyRole, "heavy"},       {InHandRole, "inHand"}};
}

QString DeliveryCheck::load() const
{
    return exact(load_.id);
}

QString DeliveryCheck::truck() const
{
    return field::shown(load_.truck);
}

std::int64_t DeliveryCheck::sum(std::int64_t (*of)(const Row&)) const
{
    return std::accumulate(rows_.begin(), rows_.end(), std::int64_t{0},
                           [of](std::int64_t total, const Row& row) { return total + of(row); });
}

int DeliveryCheck::expected() const
{
    return static_cast<int>(sum([](const Row& row) { return row.piece.count; }));
}

int DeliveryCheck::received() const
{
    return static_cast<int>(sum([](const Row& row) { return row.found[0]; }));
}

int DeliveryCheck::faulty() const
{
    return static_cast<int>(sum([](const Row& row) { return row.found[1] + row.found[2] + row.found[3]; }));
}

int DeliveryCheck::missing() const
{
    return static_cast<int>(sum([](const Row& row) { return row.left(); }));
}

void DeliveryCheck::setOnlyMissing(bool only)
{
    if (only == onlyMissing_)
        return;
    onlyMissing_ = only;
    filter();
    emit changed();
}

void DeliveryCheck::showLoads()
{
    std::vector<Choice> loads;
    for (const store::LoadLine& line : store::loads(tablet_.database()))
        loads.push_back({exact(line.id),
                         line.truck.empty() ? tr("Load without a truck") : field::shown(line.truck),
                         dayWords(line.madeAt), line.id == load_.id});
    loads_.show(std::move(loads));
}

void DeliveryCheck::refresh()
{
    guarded(*this, [&] {
        showLoads();
        if (load_.id.empty() && !loads_.choices().empty())
            setLoad(loads_.choices().front().key);
        else if (const auto text = store::loadText(tablet_.database(), load_.id)) {
            readTrust(*text); // a shop may be trusted no longer, or the language be another
            emit changed();
        }
    });
}

void DeliveryCheck::reload()
{
    beginResetModel();
    load_ = {};
    rows_.clear();
    shown_.clear();
    endResetModel();
    undoWords_.clear();
    trust_ = {};
    putDown();
    emit changed();
    refresh();
}

void DeliveryCheck::setLoad(const QString& id)
{
    guarded(*this, [&] {
        if (const auto text = store::loadText(tablet_.database(), kept(id)))
            readLoad(*text);
        showLoads();
    });
}

void DeliveryCheck::readLoad(const std::string& text)
{
    const auto read = documents::readLoad(text);
    if (!read.ok()) {
        emit failed(field::shown(read.errors().front().sentence()));
        return;
    }
    beginResetModel();
    load_ = read->value;
    rows_.clear();
    shown_.clear();
    for (std::size_t bundle = 0; bundle < load_.bundles.size(); ++bundle)
        for (const schedule::LoadedPiece& piece : load_.bundles[bundle].pieces)
            rows_.push_back({bundle, piece, {}, {}});
    endResetModel();
    putDown();
    readTrust(text);
    readEvents();
}

/// A mark may stand in several bundles: what was counted fills them one after another.
void DeliveryCheck::readEvents()
{
    for (Row& row : rows_) {
        row.found = {};
        row.note.clear();
    }
    undoWords_.clear();
    for (const schedule::ReceiptEvent& event : store::eventsOf(tablet_.database(), load_.id)) {
        std::int64_t rest = event.count;
        Row* last = nullptr;
        for (Row& row : rows_) {
            if (row.piece.mark != event.mark || load_.bundles[row.bundle].order != event.order)
                continue;
            last = &row;
            const std::int64_t taken = std::min(rest, std::max<std::int64_t>(row.left(), 0));
            row.found[slotOf(event.found)] += taken;
            rest -= taken;
            if (taken > 0 && !event.note.empty())
                row.note = event.note;
        }
        if (last != nullptr)
            last->found[slotOf(event.found)] += rest;
        undoWords_ = tr("%1 of %2 counted").arg(event.count).arg(field::shown(event.mark));
    }
    filter();
    emit changed();
}

void DeliveryCheck::filter()
{
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!onlyMissing_ || rows_[i].left() != 0)
            shown.push_back(i);
    if (shown == shown_) {
        if (!shown_.empty())
            emit dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    shown_ = std::move(shown);
    endResetModel();
}

schedule::ReceiptEvent DeliveryCheck::eventOf(const Row& row, Found found, std::int64_t pieces,
                                              const QString& note) const
{
    return {tablet_.newId(), load_.bundles[row.bundle].order, row.piece.mark,         stateOf(found), pieces,
            tablet_.now(),   kept(settings_.person()),        kept(note.simplified())};
}

bool DeliveryCheck::keep(const std::vector<schedule::ReceiptEvent>& events)
{
    return guarded(*this, [&] {
        store::addEvents(tablet_.database(), load_.id, events);
        readEvents();
        emit acted();
    });
}

bool DeliveryCheck::count(Found found, int pieces, const QString& note)
{
    if (!inHand_ || pieces < 1 || !mayCount())
        return false;
    const Row& row = rows_[*inHand_];
    if (pieces > row.left()) {
        emit failed(tr("Only %n are left to count of this mark.", "", static_cast<int>(row.left())));
        return false;
    }
    return keep({eventOf(row, found, pieces, note)});
}

bool DeliveryCheck::countBundle(const QString& label)
{
    if (!mayCount())
        return false;
    std::vector<schedule::ReceiptEvent> events;
    for (const Row& row : rows_)
        if (field::shown(load_.bundles[row.bundle].label) == label && row.left() > 0)
            events.push_back(eventOf(row, Found::Received, row.left(), {}));
    return !events.empty() && keep(events);
}

std::optional<std::size_t> DeliveryCheck::meantBy(const QString& typed) const
{
    const auto label = schedule::readLabelText(kept(typed));
    const auto same = [](const std::string& own, const QString& wanted) {
        return !own.empty() && field::shown(own).compare(wanted, Qt::CaseInsensitive) == 0;
    };
    const auto means = [&](const Row& row) {
        const schedule::Bundle& bundle = load_.bundles[row.bundle];
        if (!label.ok())
            return same(row.piece.mark, typed) || same(bundle.label, typed);
        return label->order == bundle.order &&
               (label->mark.empty() ? label->bundle == bundle.label : label->mark == row.piece.mark);
    };
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (means(rows_[i]) && (!found || (rows_[*found].left() == 0 && rows_[i].left() > 0)))
            found = i;
    return found;
}

int DeliveryCheck::rowOf(const QString& code)
{
    const QString typed = code.trimmed();
    const auto found = typed.isEmpty() ? std::nullopt : meantBy(typed);
    if (!found) {
        if (!typed.isEmpty())
            emit failed(tr("Not on this load: %1").arg(typed.left(80)));
        return -1;
    }
    if (!std::binary_search(shown_.begin(), shown_.end(), *found))
        setOnlyMissing(false);
    emit acted();
    return static_cast<int>(std::lower_bound(shown_.begin(), shown_.end(), *found) - shown_.begin());
}

bool DeliveryCheck::undo()
{
    return guarded(*this, [&] {
        if (!store::withdrawLast(tablet_.database(), load_.id)) {
            emit failed(
                tr("What a receipt has carried away cannot be taken back: count the piece again as it is."));
            return false;
        }
        readEvents();
        emit acted();
        return true;
    });
}

void DeliveryCheck::take(int row)
{
    if (row < 0 || row >= rowCount())
        return putDown();
    inHand_ = shown_[static_cast<std::size_t>(row)];
    guarded(*this, [&] { showPlace(rows_[*inHand_]); });
    showInHand();
}

void DeliveryCheck::putDown()
{
    inHand_.reset();
    plan_.clear();
    placeWords_.clear();
    showInHand();
}

void DeliveryCheck::showInHand()
{
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1), {InHandRole});
    emit placeChanged();
}

void DeliveryCheck::showPlace(const Row& row)
{
    plan_.clear();
    placeWords_ = tr("%1 goes on run %2 of %3")
                      .arg(field::shown(row.piece.mark), field::shown(row.piece.run),
                           field::shown(load_.bundles[row.bundle].job));
    const auto found = store::keptJob(tablet_.database(), load_.bundles[row.bundle].order);
    const auto job = found ? documents::readJob(found->document) : Result<documents::JobDocument>(Error{});
    if (!job.ok())
        return;
    for (const site::Chain& chain : job->value.chains)
        for (std::size_t run = 0; run < chain.runs.size(); ++run)
            if (chain.runs[run].id == row.piece.run)
                plan_.show(std::make_shared<const site::Chain>(chain),
                           site::closureReport(chain, job->value.tolerance), run, settings_.style(),
                           {{row.piece.run, row.piece.mark}});
}

} // namespace lapwright::field
