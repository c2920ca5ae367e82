#include "storage/order_changes.h"

#include "storage/piece_events.h"
#include "storage/rows.h"

#include <QUuid>

#include <algorithm>
#include <utility>

namespace lapwright::storage {

using schedule::PieceCounts;
using schedule::PieceEvent;
using schedule::PieceState;

namespace {

void savePiece(const Database& database, const IncomingOrder& order, const OrderedPiece& piece,
               std::int64_t number)
{
    database.run(
        "INSERT INTO pieces (order_id, mark, revision, run, profile, metal, gauge, colour, girth_nm,"
        " length_nm, grams, count, make, withdrawn, number)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, ?)"
        " ON CONFLICT (order_id, mark) DO UPDATE SET revision = excluded.revision, run = excluded.run,"
        " profile = excluded.profile, metal = excluded.metal, gauge = excluded.gauge,"
        " colour = excluded.colour, girth_nm = excluded.girth_nm, length_nm = excluded.length_nm,"
        " grams = excluded.grams, count = excluded.count, make = excluded.make, withdrawn = 0",
        {text(order.id), text(piece.mark), qint64(order.revision), text(piece.run), text(piece.profile),
         text(piece.metal), text(piece.gauge), text(piece.colour), qint64(piece.girth.inNanometres()),
         qint64(piece.length.inNanometres()), qint64(piece.grams), qint64(piece.count), text(piece.make),
         qint64(number)});
}

std::string wordsFor(const MarkChange& change)
{
    if (!change.now)
        return " is no longer wanted";
    return change.samePiece() ? " is wanted " + std::to_string(change.now->count) + " times" : " changes";
}

} // namespace

std::map<std::string, OrderedPiece> standingPieces(const Database& database, const std::string& order)
{
    Rows rows = database.query(
        "SELECT " + pieceColumns() + " FROM pieces p WHERE order_id = ? AND withdrawn = 0", {text(order)});
    std::map<std::string, OrderedPiece> pieces;
    while (rows.next()) {
        OrderedPiece piece = pieceAt(rows, 0);
        pieces[piece.mark] = std::move(piece);
    }
    return pieces;
}

OrderLog::OrderLog(const Database& database, std::string order, Stamp stamp, std::string note)
    : database_(database), order_(std::move(order)), stamp_(std::move(stamp)), note_(std::move(note))
{
}

void OrderLog::log(const std::string& mark, PieceCounts& counts, const PieceEvent& event)
{
    const auto now = schedule::after(counts, event);
    if (!now.ok())
        throw StorageFailure(now.errorsWithin("mark " + mark).front().sentence());
    const std::string id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    append(database_, {id, order_, mark, event, note_}, counts, *now, stamp_);
    totals_.add(order_, counts, *now);
    counts = *now;
}

void OrderLog::scrapBegun(const std::string& mark, PieceCounts& counts, std::int64_t count)
{
    for (const PieceState state : {PieceState::Cut, PieceState::Folded, PieceState::Bundled}) {
        const std::int64_t here = std::min(count, counts.of(state));
        if (here > 0)
            log(mark, counts, {PieceEvent::Kind::Scrap, state, here});
        count -= here;
    }
}

void applyChange(const Database& database, const IncomingOrder& order, MarkChange change, std::int64_t number,
                 OrderLog& log)
{
    if (change.now)
        savePiece(database, order, *change.now, number);
    else
        database.run("UPDATE pieces SET withdrawn = 1 WHERE order_id = ? AND mark = ?",
                     {text(order.id), text(change.mark)});
    log.scrapBegun(change.mark, change.counts, change.scrap());
    const std::int64_t before = change.before ? change.before->count : 0;
    const std::int64_t wanted = change.now ? change.now->count : 0;
    if (wanted > before)
        log.log(change.mark, change.counts, {PieceEvent::Kind::Order, PieceState::Ordered, wanted - before});
    if (wanted < before)
        log.log(change.mark, change.counts,
                {PieceEvent::Kind::Withdraw, PieceState::Ordered, before - wanted});
}

Obstacles obstacles(const std::vector<MarkChange>& list)
{
    Obstacles found;
    for (const MarkChange& change : list) {
        const std::int64_t surplus = change.surplus(), scrap = change.scrap();
        if (surplus == 0)
            continue;
        const std::string but = change.mark + wordsFor(change) + ", but ";
        if (surplus > scrap) {
            found.reasons.push_back(but + std::to_string(surplus - scrap) +
                                    " of it left on a truck: order the new piece under another mark");
            found.final = true;
        } else {
            found.reasons.push_back(but + std::to_string(scrap) +
                                    " of it is cut or folded and would be scrap");
        }
    }
    return found;
}

} // namespace lapwright::storage
