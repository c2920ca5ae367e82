#include "model/delivery_check.h"

#include "documents/identity.h"
#include "documents/job.h"
#include "documents/order.h"
#include "model/words.h"
#include "schedule/label_text.h"
#include "site/closure.h"
#include "storage/document_file.h"
#include "store/deliveries.h"
#include "store/jobs.h"
#include "store/orders.h"

#include <QDir>

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
            {HeavyRole, "heavy"}};
}

QString DeliveryCheck::load() const
{
    return field::shown(load_.id);
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
        loads.push_back({field::shown(line.id),
                         line.truck.empty() ? tr("Load without a truck") : field::shown(line.truck),
                         field::shown(line.madeAt).left(10), line.id == load_.id});
    loads_.show(std::move(loads));
}

void DeliveryCheck::refresh()
{
    try {
        showLoads();
        if (load_.id.empty() && !loads_.choices().empty())
            setLoad(loads_.choices().front().key);
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
    }
}

void DeliveryCheck::setLoad(const QString& id)
{
    try {
        if (const auto text = store::loadText(tablet_.database(), kept(id)))
            readLoad(*text);
        showLoads();
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
    }
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
    plan_.clear();
    placeWords_.clear();
    readEvents();
    emit placeChanged();
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

bool DeliveryCheck::openFile(const QString& path)
{
    const auto text = storage::readDocument(kept(path));
    if (!text.ok()) {
        emit failed(field::shown(text.errors().front().sentence()));
        return false;
    }
    const auto read = documents::readLoad(*text);
    if (!read.ok()) {
        emit failed(tr("This is no load list: %1").arg(field::shown(read.errors().front().sentence())));
        return false;
    }
    try {
        store::keepLoad(tablet_.database(), read->value,
                        documents::writeLoad(*read, documents::Layout::Canonical), tablet_.now());
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return false;
    }
    setLoad(field::shown(read->value.id));
    return true;
}

bool DeliveryCheck::mergeFile(const QString& path)
{
    const auto text = storage::readDocument(kept(path));
    const auto read = text.ok() ? documents::readReceipt(*text)
                                : Result<documents::Document<schedule::Receipt>>(text.errors());
    if (!read.ok()) {
        emit failed(tr("This is no receipt: %1").arg(field::shown(read.errors().front().sentence())));
        return false;
    }
    if (!store::loadText(tablet_.database(), read->value.load)) {
        emit failed(tr("This receipt is of a load that is not on this tablet. Open its load list first."));
        return false;
    }
    try {
        store::addEvents(tablet_.database(), read->value.load, read->value.events);
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return false;
    }
    setLoad(field::shown(read->value.load));
    return true;
}

schedule::ReceiptEvent DeliveryCheck::eventOf(const Row& row, Found found, std::int64_t pieces,
                                              const QString& note) const
{
    return {tablet_.newId(), load_.bundles[row.bundle].order, row.piece.mark,         stateOf(found), pieces,
            tablet_.now(),   kept(settings_.person()),        kept(note.simplified())};
}

bool DeliveryCheck::take(const std::vector<schedule::ReceiptEvent>& events)
{
    try {
        store::addEvents(tablet_.database(), load_.id, events);
        readEvents();
        return true;
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return false;
    }
}

bool DeliveryCheck::count(int row, Found found, int pieces, const QString& note)
{
    if (row < 0 || row >= rowCount() || pieces < 1)
        return false;
    if (pieces > at(row).left()) {
        emit failed(tr("Only %n are left to count of this mark.", "", static_cast<int>(at(row).left())));
        return false;
    }
    return take({eventOf(at(row), found, pieces, note)});
}

bool DeliveryCheck::countBundle(const QString& label)
{
    std::vector<schedule::ReceiptEvent> events;
    for (const Row& row : rows_)
        if (load_.bundles[row.bundle].label == kept(label) && row.left() > 0)
            events.push_back(eventOf(row, Found::Received, row.left(), {}));
    return !events.empty() && take(events);
}

int DeliveryCheck::rowOf(const QString& code) const
{
    const QString typed = code.trimmed();
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
    int found = -1;
    for (int row = 0; row < rowCount(); ++row)
        if (means(at(row)) && (found < 0 || (at(found).left() == 0 && at(row).left() > 0)))
            found = row;
    return found;
}

bool DeliveryCheck::undo()
{
    try {
        if (!store::withdrawLast(tablet_.database(), load_.id)) {
            emit failed(
                tr("What a receipt has carried away cannot be taken back: count the piece again as it is."));
            return false;
        }
        readEvents();
        return true;
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return false;
    }
}

void DeliveryCheck::showPlace(int row)
{
    plan_.clear();
    placeWords_.clear();
    if (row >= 0 && row < rowCount()) {
        const Row& piece = at(row);
        const std::string& id = load_.bundles[piece.bundle].order;
        placeWords_ = tr("%1 goes on run %2 of %3")
                          .arg(field::shown(piece.piece.mark), field::shown(piece.piece.run),
                               field::shown(load_.bundles[piece.bundle].job));
        const auto found = store::keptJob(tablet_.database(), id);
        const auto job =
            found ? documents::readJob(found->document) : Result<documents::JobDocument>(Error{});
        if (job.ok())
            for (const site::Chain& chain : job->value.chains)
                for (std::size_t run = 0; run < chain.runs.size(); ++run)
                    if (chain.runs[run].id == piece.piece.run)
                        plan_.show(chain, site::closureReport(chain, job->value.tolerance), run,
                                   settings_.style(), {{piece.piece.run, piece.piece.mark}});
    }
    emit placeChanged();
}

QString DeliveryCheck::writeReceipt(const QString& folder)
{
    try {
        // One tablet writes one receipt of a load; sent again it has grown, and its events count once.
        const schedule::Receipt receipt{tablet_.newId(), load_.id,
                                        store::eventsOf(tablet_.database(), load_.id)};
        if (receipt.events.empty()) {
            emit failed(tr("Nothing is counted yet."));
            return {};
        }
        const QString stamp = field::shown(tablet_.now()).left(16).remove(':').replace('T', '-');
        const QString path = QDir(folder).filePath(QString("receipt-%1.json").arg(stamp));
        const auto written = storage::writeDocument(kept(path), documents::writeReceipt({receipt, {}}));
        if (!written.ok()) {
            emit failed(field::shown(written.errors().front().sentence()));
            return {};
        }
        store::markSent(tablet_.database(), load_.id);
        settings_.setFolder(folder);
        readEvents();
        return path;
    } catch (const store::StoreFailure& failure) {
        emit failed(QString::fromUtf8(failure.what()));
        return {};
    }
}

} // namespace lapwright::field
