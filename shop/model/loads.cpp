#include "loads.h"

#include "acts/last_done.h"
#include "acts/loading.h"
#include "acts/receipts.h"
#include "acts/words.h"
#include "documents/shop.h"
#include "done_words.h"
#include "schedule/batch.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/lists.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"
#include "text.h"

#include <map>
#include <string>

namespace lapwright::model {

namespace {

using schedule::PieceState;

/// The latest loads; older ones are history that nobody loads any more.
constexpr std::int64_t mostShown = 200;

Row rowOf(const storage::PieceInState& piece, const Shop& shop)
{
    Row row;
    row.id = exact(schedule::blankKey(piece.order, piece.piece.mark));
    row.title = shown(piece.piece.mark);
    row.detail = shop.describe(site::Material{piece.piece.metal, piece.piece.gauge, piece.piece.colour});
    row.trailing = counted(piece.count, "piece");
    row.trailingDetail = shown(write(piece.piece.length, shop.style()));
    return row;
}

/// "E1.1 to E1.4", "E2.1 ×2".
QString inWords(const schedule::MarkRange& range)
{
    const QString marks = range.first == range.last
                              ? shown(range.first)
                              : Loads::tr("%1 to %2").arg(shown(range.first), shown(range.last));
    return range.each == 1 ? marks : Loads::tr("%1 ×%2").arg(marks).arg(range.each);
}

/// behind() of what was done last to it; empty where it is not known.
template <class Key>
QString lastBehind(const std::map<Key, acts::Done>& done, const Key& key)
{
    const auto found = done.find(key);
    return found == done.end() ? QString() : behind(found->second);
}

} // namespace

Loads::Loads(Shop& shop) : Desk(shop) {}

void Loads::reload()
{
    QList<Row> loads, ready, remakes;
    for (const storage::LoadRow& load : storage::listLoads(shop().database(), {{}, mostShown}).rows) {
        Row row;
        row.id = exact(load.id);
        row.title = load.truck.empty() ? tr("Load") : shown(load.truck);
        row.detail = timeWords(load.madeAt);
        row.trailing = counted(load.bundles, "bundle");
        row.trailingDetail = shown(writeMass(load.kilograms, shop().style()));
        row.sign = QStringLiteral("loads");
        loads.append(row);
    }
    const auto done = acts::lastDone(shop().database(), PieceState::Folded);
    for (const storage::PieceInState& piece : storage::piecesIn(shop().database(), PieceState::Folded)) {
        ready.append(rowOf(piece, shop()));
        ready.back().detail += lastBehind(done, {piece.order, piece.piece.mark});
    }
    for (const storage::PieceInState& piece : storage::piecesAwaitingRemake(shop().database()))
        remakes.append(rowOf(piece, shop()));
    loads_.setRows(loads);
    ready_.setRows(ready);
    remakes_.setRows(remakes);
    if (loads_.indexOf(current_) < 0)
        current_ = loads_.idAt(0);
    showBundles();
}

void Loads::setCurrent(const QString& id)
{
    if (id == current_)
        return;
    current_ = id;
    shop().attempt([this] { showBundles(); });
}

void Loads::showBundles()
{
    QList<Row> rows;
    summary_.clear();
    const auto document = storage::loadDocument(shop().database(), current_.toStdString());
    const auto load =
        document ? documents::readLoad(*document) : Result<documents::Document<schedule::Load>>(Error{});
    if (load.ok()) {
        std::map<std::string, std::map<std::string, acts::Done>> done; // by order and mark
        for (const schedule::Bundle& bundle : load->value.bundles) {
            if (done.count(bundle.order) == 0)
                done[bundle.order] = acts::lastDone(shop().database(), bundle.order);
            QStringList marks;
            for (const schedule::MarkRange& range : schedule::markRanges(bundle))
                marks.append(inWords(range));
            Row row;
            row.id = exact(schedule::blankKey(bundle.order, bundle.label));
            row.title = tr("%1   %2").arg(shown(bundle.label), shown(bundle.job));
            row.detail = marks.join(QStringLiteral(", "));
            for (const schedule::LoadedPiece& piece : bundle.pieces)
                row.also += shown(piece.mark) + u' ';
            if (!bundle.pieces.empty())
                row.detail += lastBehind(done.at(bundle.order), bundle.pieces.front().mark);
            row.trailing = shown(writeMass(bundle.kilograms, shop().style()));
            row.trailingDetail = bundle.twoPeople ? tr("two people") : QString();
            row.swatch = shop().swatchOf(bundle.material.colour);
            rows.append(row);
        }
        summary_ = tr("%1, made %2")
                       .arg(load->value.truck.empty() ? tr("Load") : shown(load->value.truck),
                            timeWords(load->value.madeAt));
    }
    bundles_.setRows(rows);
    emit currentChanged();
}

void Loads::makeLoad(const QString& truck)
{
    if (!shop().letsMake())
        return;
    shop().act([&] {
        const auto load = acts::makeLoad(shop().database(), truck.trimmed().toStdString(), shop().stamp());
        if (!load)
            return shop().tellTrouble(tr("Nothing is folded and waiting to be loaded"));
        current_ = exact(load->id);
        shop().tell(
            tr("%1 on the load").arg(counted(static_cast<std::int64_t>(load->bundles.size()), "bundle")));
    });
}

void Loads::saveLoad(const QUrl& file)
{
    shop().attempt([&] {
        const auto document = storage::loadDocument(shop().database(), current_.toStdString());
        if (!document)
            return;
        const auto written = storage::writeDocument(file.toLocalFile().toStdString(), *document);
        if (!written.ok())
            return shop().tellTrouble(written.errors());
        shop().tell(tr("Load list written to %1").arg(file.toLocalFile()));
    });
}

void Loads::takeReceipt(const QUrl& file)
{
    if (!shop().letsMake())
        return;
    shop().act([&] {
        const auto text = storage::readDocument(file.toLocalFile().toStdString());
        if (!text.ok())
            return shop().tellTrouble(text.errors());
        const auto taken = acts::takeReceipt(shop().database(), *text, shop().stamp(), false);
        if (!taken.ok())
            return shop().tellTrouble(taken.errorsWithin(file.fileName().toStdString()));
        if (taken->doubt)
            return shop().tellTrouble(
                tr("%1: %2; nothing of it is taken").arg(file.fileName(), shown(*taken->doubt)));
        if (!taken->errors.empty())
            return shop().tellTrouble(taken->errors);
        const QString counted =
            tr("%1 received, %2 short, damaged or wrong").arg(taken->received).arg(taken->missing);
        shop().tell(taken->hereBefore ? tr("This receipt was here before. New: %1").arg(counted) : counted);
    });
}

void Loads::remakeAll()
{
    if (!shop().letsPlan())
        return;
    shop().act([&] {
        std::int64_t count = 0;
        for (const storage::PieceInState& piece : acts::remakeAll(shop().database(), shop().stamp()))
            count += piece.count;
        shop().tell(tr("%1 ordered again; plan to cut them").arg(counted(count, "piece")));
    });
}

} // namespace lapwright::model
