#include "storage/orders.h"

#include "storage/piece_events.h"
#include "storage/rows.h"
#include "storage/shop_state.h"

#include <QUuid>

#include <map>

namespace lapwright::storage {

namespace {

using schedule::PieceCounts;
using schedule::PieceEvent;
using schedule::PieceState;

QString text(const std::string& value)
{
    return QString::fromStdString(value);
}

/// What a revision does to one mark.
struct Change {
    std::string mark;
    std::optional<OrderedPiece> before;
    std::optional<OrderedPiece> now;
    PieceCounts counts;

    /// Pieces past Ordered that the new revision no longer wants as they are.
    [[nodiscard]] std::int64_t begun() const
    {
        std::int64_t sum = 0;
        for (std::size_t state = 1; state < schedule::pieceStates; ++state)
            sum += counts.in[state];
        return sum;
    }
    [[nodiscard]] bool samePiece() const
    {
        if (!before || !now)
            return false;
        OrderedPiece likeNow = *before;
        likeNow.count = now->count;
        return likeNow == *now;
    }
    /// Nothing that is begun is touched: the piece stays as it is and no fewer are wanted than are begun.
    [[nodiscard]] bool harmless() const
    {
        return begun() == 0 || (samePiece() && now->count >= before->count - counts.of(PieceState::Ordered));
    }
};

std::map<std::string, OrderedPiece> standingPieces(const Database& database, const std::string& order)
{
    QSqlQuery query = database.query(
        "SELECT " + pieceColumns() + " FROM pieces p WHERE order_id = ? AND withdrawn = 0", {text(order)});
    std::map<std::string, OrderedPiece> pieces;
    while (query.next()) {
        OrderedPiece piece = pieceAt(query, 0);
        pieces[piece.mark] = std::move(piece);
    }
    return pieces;
}

std::vector<Change> changes(const Database& database, const IncomingOrder& order)
{
    const auto before = standingPieces(database, order.id);
    std::map<std::string, OrderedPiece> now;
    for (const OrderedPiece& piece : order.pieces)
        now[piece.mark] = piece;
    std::vector<Change> list;
    for (const auto& [mark, piece] : before)
        if (now.find(mark) == now.end())
            list.push_back({mark, piece, std::nullopt, pieceCounts(database, order.id, mark)});
    for (const OrderedPiece& piece : order.pieces) {
        const auto old = before.find(piece.mark);
        if (old == before.end())
            list.push_back({piece.mark, std::nullopt, piece, pieceCounts(database, order.id, piece.mark)});
        else if (!(old->second == piece))
            list.push_back({piece.mark, old->second, piece, pieceCounts(database, order.id, piece.mark)});
    }
    return list;
}

void log(const Database& database, const std::string& order, const std::string& mark, const PieceEvent& event,
         const Stamp& stamp)
{
    const std::string id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    const auto logged = logEvent(database, {id, order, mark, event, "revision"}, stamp);
    if (!logged.ok())
        throw StorageFailure(logged.errors().front().sentence());
}

void savePiece(const Database& database, const IncomingOrder& order, const OrderedPiece& piece)
{
    database.run(
        "INSERT INTO pieces (order_id, mark, revision, run, profile, metal, gauge, colour, girth_nm,"
        " length_nm, grams, count, make, withdrawn) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0)"
        " ON CONFLICT (order_id, mark) DO UPDATE SET revision = excluded.revision, run = excluded.run,"
        " profile = excluded.profile, metal = excluded.metal, gauge = excluded.gauge,"
        " colour = excluded.colour, girth_nm = excluded.girth_nm, length_nm = excluded.length_nm,"
        " grams = excluded.grams, count = excluded.count, make = excluded.make, withdrawn = 0",
        {text(order.id), text(piece.mark), qint64(order.revision), text(piece.run), text(piece.profile),
         text(piece.metal), text(piece.gauge), text(piece.colour), qint64(piece.girth.inNanometres()),
         qint64(piece.length.inNanometres()), qint64(piece.grams), qint64(piece.count), text(piece.make)});
}

/// Scraps what is begun and no longer wanted as it is, and brings the count of Ordered to what is wanted.
void applyChange(const Database& database, const IncomingOrder& order, const Change& change,
                 const Stamp& stamp)
{
    if (!change.harmless())
        for (const PieceState state : {PieceState::Cut, PieceState::Folded, PieceState::Bundled})
            if (change.counts.of(state) > 0)
                log(database, order.id, change.mark,
                    {PieceEvent::Kind::Scrap, state, change.counts.of(state)}, stamp);
    if (change.now)
        savePiece(database, order, *change.now);
    else
        database.run("UPDATE pieces SET withdrawn = 1 WHERE order_id = ? AND mark = ?",
                     {text(order.id), text(change.mark)});
    const std::int64_t before = change.before ? change.before->count : 0;
    const std::int64_t wanted = change.now ? change.now->count : 0;
    if (wanted > before)
        log(database, order.id, change.mark, {PieceEvent::Kind::Order, PieceState::Ordered, wanted - before},
            stamp);
    if (wanted < before)
        log(database, order.id, change.mark,
            {PieceEvent::Kind::Withdraw, PieceState::Ordered, before - wanted}, stamp);
}

/// Why this revision cannot be taken without a person; the flag says that not even a person's word helps.
struct Obstacles {
    std::vector<std::string> reasons;
    bool final = false;
};

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

Arrival wait(const Database& database, const IncomingOrder& order, const Stamp& stamp,
             std::vector<std::string> reasons)
{
    std::string all;
    for (const std::string& reason : reasons)
        all += (all.empty() ? "" : "\n") + reason;
    database.run("INSERT INTO quarantine (hash, order_id, revision, reason, received_at, document)"
                 " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO UPDATE SET reason = excluded.reason",
                 {text(order.hash), text(order.id), qint64(order.revision), text(all), text(stamp.at),
                  text(order.document)});
    return {Arrival::Outcome::Waits, std::move(reasons)};
}

void saveOrder(const Database& database, const IncomingOrder& order, const Stamp& stamp)
{
    database.run(
        "INSERT INTO orders (id, revision, hash, previous_hash, job_name, customer, wanted_by, received_at,"
        " document, derived) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {text(order.id), qint64(order.revision), text(order.hash), text(order.previousHash),
         text(order.jobName), text(order.customer), text(order.wantedBy), text(stamp.at),
         text(order.document), text(order.derived)});
    database.run("DELETE FROM quarantine WHERE hash = ?", {text(order.hash)});
}

/// Where the revisions just before and after, as far as they are here, are not the ones this one goes with: a
/// revision carries the hash of the one it was made from.
std::vector<std::string> brokenLinks(const Database& database, const IncomingOrder& order)
{
    const std::string number = std::to_string(order.revision);
    std::vector<std::string> reasons;
    QSqlQuery before = database.query("SELECT hash FROM orders WHERE id = ? AND revision = ?",
                                      {text(order.id), qint64(order.revision - 1)});
    if (before.next() && before.value(0).toString() != text(order.previousHash))
        reasons.push_back("revision " + number + " was made from another revision " +
                          std::to_string(order.revision - 1) + " than the one that is here");
    QSqlQuery after = database.query("SELECT previous_hash FROM orders WHERE id = ? AND revision = ?",
                                     {text(order.id), qint64(order.revision + 1)});
    if (after.next() && after.value(0).toString() != text(order.hash))
        reasons.push_back("revision " + std::to_string(order.revision + 1) +
                          ", which is here, was made from another revision " + number);
    return reasons;
}

/// Blanks of waiting cut plans are named "order/mark". True if a plan held pieces of the order.
bool takeBackPlans(const Database& database, const std::string& order)
{
    return database
               .query(
                   "UPDATE plans SET state = 'replaced' WHERE state = 'planned' AND instr(document, ?) > 0",
                   {text(order + "/")})
               .numRowsAffected() > 0;
}

Arrival receiveInside(const Database& database, const IncomingOrder& order, const Stamp& stamp, bool accept)
{
    QSqlQuery same = database.query("SELECT hash FROM orders WHERE id = ? AND revision = ?",
                                    {text(order.id), qint64(order.revision)});
    if (same.next()) {
        if (same.value(0).toString() == text(order.hash))
            return {Arrival::Outcome::AlreadyHere, {}};
        return wait(database, order, stamp,
                    {"revision " + std::to_string(order.revision) + " is here with another content"});
    }
    std::vector<std::string> broken = brokenLinks(database, order);
    if (!broken.empty() && !accept)
        return wait(database, order, stamp, std::move(broken));
    if (currentRevision(database, order.id).value_or(0) > order.revision) {
        saveOrder(database, order, stamp);
        return {Arrival::Outcome::Superseded, {}};
    }
    const std::vector<Change> list = changes(database, order);
    const Obstacles found = obstacles(list);
    if (!found.reasons.empty() && (found.final || !accept))
        return wait(database, order, stamp, found.reasons);
    saveOrder(database, order, stamp);
    for (const Change& change : list)
        applyChange(database, order, change, stamp);
    Arrival taken{Arrival::Outcome::Taken, {}};
    if (!list.empty() && takeBackPlans(database, order.id))
        taken.reasons.push_back("cut plans that held its pieces are taken back; plan again");
    return taken;
}

} // namespace

Arrival receiveOrder(const Database& database, const IncomingOrder& order, const Stamp& stamp, bool accept)
{
    return database.write([&] { return receiveInside(database, order, stamp, accept); });
}

std::vector<OrderSummary> currentOrders(const Database& database)
{
    QSqlQuery query =
        database.query("SELECT o.id, o.revision, o.job_name, o.customer, o.wanted_by,"
                       " (SELECT MIN(f.received_at) FROM orders f WHERE f.id = o.id) FROM orders o"
                       " WHERE o.revision = (SELECT MAX(revision) FROM orders m WHERE m.id = o.id)"
                       " ORDER BY o.wanted_by = '', o.wanted_by, o.job_name, o.id");
    std::vector<OrderSummary> orders;
    while (query.next()) {
        const auto string = [&](int column) { return query.value(column).toString().toStdString(); };
        orders.push_back(
            {string(0), query.value(1).toLongLong(), string(2), string(3), string(4), string(5)});
    }
    return orders;
}

} // namespace lapwright::storage
