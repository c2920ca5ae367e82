#include "storage/piece_events.h"

#include "storage/rows.h"

namespace lapwright::storage {

namespace {

constexpr const char* remadeKey = "remade";

void saveCounts(const Database& database, const LoggedEvent& event, const schedule::PieceCounts& before,
                const schedule::PieceCounts& now)
{
    const auto save = [&](const QString& state, std::int64_t old, std::int64_t count) {
        if (old != count)
            database.run("INSERT INTO piece_counts (order_id, mark, state, count) VALUES (?, ?, ?, ?)"
                         " ON CONFLICT (order_id, mark, state) DO UPDATE SET count = excluded.count",
                         {text(event.order), text(event.mark), state, qint64(count)});
    };
    for (std::size_t state = 0; state < schedule::pieceStates; ++state)
        save(text(schedule::name(static_cast<schedule::PieceState>(state))), before.in[state], now.in[state]);
    save(remadeKey, before.remade, now.remade);
}

std::vector<PieceInState> select(const Database& database, const QString& countExpression,
                                 const QString& where, const QVariantList& values)
{
    QSqlQuery query = database.query("SELECT p.order_id, " + countExpression + " AS standing, " +
                                         pieceColumns() + " FROM " + where + " ORDER BY p.rowid",
                                     values);
    std::vector<PieceInState> found;
    while (query.next())
        found.push_back(
            {query.value(0).toString().toStdString(), pieceAt(query, 2), query.value(1).toLongLong()});
    return found;
}

/// Counts out of rows of state and count.
schedule::PieceCounts countsFrom(QSqlQuery query)
{
    schedule::PieceCounts counts;
    while (query.next()) {
        const QString state = query.value(0).toString();
        if (state == remadeKey)
            counts.remade = query.value(1).toLongLong();
        else
            counts.of(schedule::pieceState(state.toStdString()).value()) = query.value(1).toLongLong();
    }
    return counts;
}

} // namespace

Result<bool> logEvent(const Database& database, const LoggedEvent& event, const Stamp& stamp)
{
    QSqlQuery known = database.query("SELECT 1 FROM piece_events WHERE id = ?", {text(event.id)});
    if (known.next())
        return false;
    QSqlQuery piece = database.query("SELECT 1 FROM pieces WHERE order_id = ? AND mark = ?",
                                     {text(event.order), text(event.mark)});
    if (!piece.next())
        return Error{"mark " + event.mark, "no such piece in order " + event.order, "a mark of that order"};
    const schedule::PieceCounts before = pieceCounts(database, event.order, event.mark);
    const auto now = schedule::after(before, event.event);
    if (!now.ok())
        return now.errorsWithin("mark " + event.mark);
    database.run(
        "INSERT INTO piece_events (id, order_id, mark, kind, state, count, at, station, person, note)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {text(event.id), text(event.order), text(event.mark), text(schedule::name(event.event.kind)),
         text(schedule::name(event.event.state)), qint64(event.event.count), text(stamp.at),
         text(stamp.station), text(stamp.person), text(event.note)});
    saveCounts(database, event, before, *now);
    return true;
}

schedule::PieceCounts pieceCounts(const Database& database, const std::string& order, const std::string& mark)
{
    return countsFrom(database.query("SELECT state, count FROM piece_counts WHERE order_id = ? AND mark = ?",
                                     {text(order), text(mark)}));
}

schedule::PieceCounts orderCounts(const Database& database, const std::string& order)
{
    return countsFrom(database.query(
        "SELECT state, SUM(count) FROM piece_counts WHERE order_id = ? GROUP BY state", {text(order)}));
}

std::vector<PieceInState> piecesIn(const Database& database, schedule::PieceState state)
{
    return select(database, "c.count",
                  "piece_counts c JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
                  " WHERE c.state = ? AND c.count > 0",
                  {text(schedule::name(state))});
}

std::vector<PieceInState> piecesAwaitingRemake(const Database& database)
{
    return select(
        database,
        "(SELECT SUM(CASE WHEN a.state = 'remade' THEN -a.count ELSE a.count END) FROM piece_counts a"
        " WHERE a.order_id = p.order_id AND a.mark = p.mark"
        " AND a.state IN ('short', 'damaged', 'wrong', 'remade'))",
        "pieces p WHERE (p.order_id, p.mark) IN (SELECT order_id, mark FROM piece_counts"
        " WHERE count > 0 AND state IN ('short', 'damaged', 'wrong')) AND standing > 0",
        {});
}

} // namespace lapwright::storage
