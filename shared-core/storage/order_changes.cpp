#include "storage/order_changes.h"

#include "storage/piece_events.h"
#include "storage/rows.h"

#include <QUuid>

#include <set>
#include <string_view>
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

} // namespace

std::int64_t Change::begun() const
{
    std::int64_t sum = 0;
    for (std::size_t state = 1; state < schedule::pieceStates; ++state)
        sum += counts.in[state];
    return sum;
}

bool Change::samePiece() const
{
    if (!before || !now)
        return false;
    OrderedPiece likeNow = *before;
    likeNow.count = now->count;
    return likeNow == *now;
}

bool Change::harmless() const
{
    return begun() == 0 || (samePiece() && now->count >= before->count - counts.of(PieceState::Ordered));
}

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

std::vector<Change> changes(const Database& database, const IncomingOrder& order, bool known)
{
    const auto countsOf = [&](const std::string& mark) {
        return known ? pieceCounts(database, order.id, mark) : PieceCounts();
    };
    const auto before = standingPieces(database, order.id);
    std::set<std::string_view> now;
    for (const OrderedPiece& piece : order.pieces)
        now.insert(piece.mark);
    std::vector<Change> list;
    for (const auto& [mark, piece] : before)
        if (now.find(mark) == now.end())
            list.push_back({mark, piece, std::nullopt, countsOf(mark)});
    for (const OrderedPiece& piece : order.pieces) {
        const auto old = before.find(piece.mark);
        if (old == before.end())
            list.push_back({piece.mark, std::nullopt, piece, countsOf(piece.mark)});
        else if (!(old->second == piece))
            list.push_back({piece.mark, old->second, piece, countsOf(piece.mark)});
    }
    return list;
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

void OrderLog::scrapBegun(const std::string& mark, PieceCounts& counts)
{
    for (const PieceState state : {PieceState::Cut, PieceState::Folded, PieceState::Bundled})
        if (counts.of(state) > 0)
            log(mark, counts, {PieceEvent::Kind::Scrap, state, counts.of(state)});
}

void applyChange(const Database& database, const IncomingOrder& order, Change change, std::int64_t number,
                 OrderLog& log)
{
    const bool harmless = change.harmless();
    if (change.now)
        savePiece(database, order, *change.now, number);
    else
        database.run("UPDATE pieces SET withdrawn = 1 WHERE order_id = ? AND mark = ?",
                     {text(order.id), text(change.mark)});
    if (!harmless)
        log.scrapBegun(change.mark, change.counts);
    const std::int64_t before = change.before ? change.before->count : 0;
    const std::int64_t wanted = change.now ? change.now->count : 0;
    if (wanted > before)
        log.log(change.mark, change.counts, {PieceEvent::Kind::Order, PieceState::Ordered, wanted - before});
    if (wanted < before)
        log.log(change.mark, change.counts,
                {PieceEvent::Kind::Withdraw, PieceState::Ordered, before - wanted});
}

Obstacles obstacles(const std::vector<Change>& list)
{
    Obstacles found;
    for (const Change& change : list) {
        if (change.harmless())
            continue;
        std::int64_t gone = 0;
        for (std::size_t state = static_cast<std::size_t>(PieceState::Loaded); state < schedule::pieceStates;
             ++state)
            gone += change.counts.in[state];
        const std::string what = change.now ? "changes" : "is no longer wanted";
        if (gone > 0) {
            found.reasons.push_back(change.mark + " " + what + ", but " + std::to_string(gone) +
                                    " of it left on a truck: order the new piece under another mark");
            found.final = true;
        } else {
            found.reasons.push_back(change.mark + " " + what + ", but " + std::to_string(change.begun()) +
                                    " of it is cut or folded and would be scrap");
        }
    }
    return found;
}

} // namespace lapwright::storage
