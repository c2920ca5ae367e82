#include "storage/piece_events.h"

#include "storage/piece_totals.h"
#include "storage/rows.h"
#include "storage/shop_state.h"

#include <limits>

namespace lapwright::storage {

namespace {

std::vector<PieceInState> select(const Database& database, const QString& countExpression,
                                 const QString& where, const QVariantList& values)
{
    Rows rows = database.query("SELECT p.order_id, " + countExpression + " AS standing, " + pieceColumns() +
                                   " FROM " + where,
                               values);
    std::vector<PieceInState> found;
    while (rows.next())
        found.push_back({rows.text(0), pieceAt(rows, 2), rows.number(1)});
    return found;
}

/// Pieces `p` with how many `w.standing` wait to be made again; behind FROM.
const QString& awaitingRemake()
{
    static const QString from =
        "(SELECT a.order_id, a.mark, CAST(SUM(CASE WHEN a.state = 'remade' THEN -a.count"
        " ELSE a.count END) AS BIGINT) AS standing FROM piece_counts a"
        " WHERE a.state IN ('short', 'damaged', 'wrong', 'remade') AND a.count > 0"
        " GROUP BY a.order_id, a.mark) w"
        " JOIN pieces p ON p.order_id = w.order_id AND p.mark = w.mark WHERE w.standing > 0";
    return from;
}

/// The error of a station that came too late, with what was done to the mark last.
std::vector<Error> withLastEvent(const Database& database, const LoggedEvent& event,
                                 std::vector<Error> errors)
{
    Rows last = database.query("SELECT kind, state, at, station, person FROM piece_events"
                               " WHERE order_id = ? AND mark = ? ORDER BY seq DESC LIMIT 1",
                               {text(event.order), text(event.mark)});
    if (!last.next())
        return errors;
    const std::string& done = last.text(0) == "advance" ? last.text(1) : last.text(0);
    std::string told = "; last: " + done + ", " + last.text(2);
    for (const int column : {3, 4})
        if (!last.text(column).empty())
            told += (column == 3 ? " at " : " by ") + last.text(column);
    for (Error& error : errors)
        error.found += told;
    return errors;
}

} // namespace

void append(const Database& database, const LoggedEvent& event, const schedule::PieceCounts& before,
            const schedule::PieceCounts& now, const Stamp& stamp)
{
    database.run(
        "INSERT INTO piece_events (id, order_id, mark, kind, state, count, at, station, person, note)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {text(event.id), text(event.order), text(event.mark), text(schedule::name(event.event.kind)),
         text(schedule::name(event.event.state)), qint64(event.event.count), text(stamp.at),
         text(stamp.station), text(stamp.person), text(event.note)});
    saveCounts(database, event.order, event.mark, before, now);
}

Result<bool> logEvent(const Database& database, const LoggedEvent& event, const Stamp& stamp)
{
    if (database.query("SELECT 1 FROM piece_events WHERE id = ?", {text(event.id)}).next())
        return false;
    if (!database
             .query("SELECT 1 FROM pieces WHERE order_id = ? AND mark = ?",
                    {text(event.order), text(event.mark)})
             .next())
        return Error{"mark " + event.mark, "no such piece in order " + event.order, "a mark of that order"};
    const schedule::PieceCounts before = pieceCounts(database, event.order, event.mark);
    const auto now = schedule::after(before, event.event);
    if (!now.ok())
        return withLastEvent(database, event, now.errorsWithin("mark " + event.mark));
    append(database, event, before, *now, stamp);
    PieceTotals totals;
    totals.add(event.order, before, *now);
    totals.save(database);
    return true;
}

schedule::PieceCounts pieceCounts(const Database& database, const std::string& order, const std::string& mark)
{
    return countsFrom(database.query("SELECT state, count FROM piece_counts WHERE order_id = ? AND mark = ?",
                                     {text(order), text(mark)}));
}

schedule::PieceCounts orderCounts(const Database& database, const std::string& order)
{
    return countsFrom(
        database.query("SELECT state, count FROM order_counts WHERE order_id = ?", {text(order)}));
}

std::vector<PieceInState> piecesIn(const Database& database, schedule::PieceState state)
{
    return select(database, "c.count",
                  "piece_counts c JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
                  " WHERE c.state = ? AND c.count > 0 ORDER BY c.due, c.order_id, c.number",
                  {text(schedule::name(state))});
}

std::vector<PieceToCut> piecesToCut(const Database& database)
{
    Rows rows = database.query(
        "SELECT c.order_id, c.count, o.job_name, o.wanted_by, o.priority, o.held, h.mark, r.count, " +
            pieceColumns() +
            " FROM piece_counts c JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
            " JOIN current_orders o ON o.id = c.order_id"
            " LEFT JOIN held_pieces h ON h.order_id = c.order_id AND h.mark = c.mark"
            " LEFT JOIN piece_counts r ON r.order_id = c.order_id AND r.mark = c.mark AND r.state = 'remade'"
            " WHERE c.state = ? AND c.count > 0 ORDER BY c.due, c.order_id, c.number",
        {text(schedule::name(schedule::PieceState::Ordered))});
    std::vector<PieceToCut> found;
    while (rows.next())
        found.push_back({{rows.text(0), pieceAt(rows, 8), rows.number(1)},
                         rows.text(2),
                         rows.text(3),
                         rows.number(4),
                         rows.number(5) != 0,
                         !rows.missing(6),
                         rows.number(7) > 0});
    return found;
}

bool holdPiece(const Database& database, const std::string& order, const std::string& mark, bool held)
{
    const QVariantList piece = {text(order), text(mark)};
    return database.write([&] {
        if (!database.query("SELECT 1 FROM pieces WHERE order_id = ? AND mark = ?", piece).next())
            return false;
        if (!held) {
            database.run("DELETE FROM held_pieces WHERE order_id = ? AND mark = ?", piece);
            return true;
        }
        takeBackPlans(database, order, mark);
        database.run("INSERT INTO held_pieces (order_id, mark) VALUES (?, ?) ON CONFLICT DO NOTHING", piece);
        return true;
    });
}

std::vector<PieceInState> piecesAwaitingRemake(const Database& database)
{
    return select(database, "w.standing", awaitingRemake() + " ORDER BY p.order_id, p.number", {});
}

std::int64_t countAwaitingRemake(const Database& database)
{
    Rows rows = database.query("SELECT COUNT(*) FROM " + awaitingRemake());
    return rows.next() ? rows.number(0) : 0;
}

Result<std::map<std::pair<std::string, std::string>, schedule::PieceCounts>>
replay(const Database& database, std::optional<std::int64_t> last)
{
    Rows rows = database.query("SELECT order_id, mark, kind, state, count, seq FROM piece_events"
                               " WHERE seq <= ? ORDER BY seq",
                               {qint64(last.value_or(std::numeric_limits<std::int64_t>::max()))});
    std::map<std::pair<std::string, std::string>, schedule::PieceCounts> counts;
    while (rows.next()) {
        const auto kind = schedule::pieceEventKind(rows.text(2));
        const auto state = schedule::pieceState(rows.text(3));
        const std::string place = "event " + std::to_string(rows.number(5));
        if (!kind.ok() || !state.ok())
            return (kind.ok() ? state.errorsWithin(place) : kind.errorsWithin(place));
        schedule::PieceCounts& mark = counts[{rows.text(0), rows.text(1)}];
        const auto next = schedule::after(mark, {*kind, *state, rows.number(4)});
        if (!next.ok())
            return next.errorsWithin(place);
        mark = *next;
    }
    return counts;
}

Result<bool> rebuildCounts(const Database& database)
{
    return database.write([&]() -> Result<bool> {
        const auto counts = replay(database);
        if (!counts.ok())
            return counts.errors();
        for (const char* table : {"piece_counts", "order_counts", "shop_counts"})
            database.run(QString("UPDATE ") + table + " SET count = 0");
        database.run("UPDATE current_orders SET unfinished = 0");
        PieceTotals totals;
        for (const auto& [key, now] : *counts) {
            saveCounts(database, key.first, key.second, {}, now);
            totals.add(key.first, {}, now);
        }
        totals.save(database);
        return true;
    });
}

} // namespace lapwright::storage
