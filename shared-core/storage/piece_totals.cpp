#include "storage/piece_totals.h"

#include "storage/rows.h"

#include <utility>

namespace lapwright::storage {

namespace {

/// Calls `changed(state, before, now)` for every count that differs.
template <class Changed>
void eachChange(const schedule::PieceCounts& before, const schedule::PieceCounts& now, const Changed& changed)
{
    for (std::size_t state = 0; state < schedule::pieceStates; ++state)
        if (before.in[state] != now.in[state])
            changed(std::string(schedule::name(static_cast<schedule::PieceState>(state))), before.in[state],
                    now.in[state]);
    if (before.remade != now.remade)
        changed(std::string(remadeKey), before.remade, now.remade);
}

/// What is not received, nor short, damaged or wrong and ordered again.
void saveUnfinished(const Database& database, const std::string& order)
{
    database.run("UPDATE current_orders SET unfinished ="
                 " (SELECT COALESCE(SUM(CASE WHEN c.state = 'received' THEN 0"
                 " WHEN c.state = 'remade' THEN -c.count ELSE c.count END), 0)"
                 " FROM order_counts c WHERE c.order_id = current_orders.id) WHERE id = ?",
                 {text(order)});
}

} // namespace

void PieceTotals::add(const std::string& order, const schedule::PieceCounts& before,
                      const schedule::PieceCounts& now)
{
    std::map<std::string, std::int64_t>& change = changes_[order];
    eachChange(before, now, [&](const std::string& state, std::int64_t old, std::int64_t count) {
        change[state] += count - old;
    });
}

void PieceTotals::save(const Database& database) const
{
    std::map<std::string, std::int64_t> ofShop;
    // A count is inserted as nothing first: what is inserted must itself not be negative.
    for (const auto& [order, states] : changes_) {
        for (const auto& [state, change] : states) {
            if (change == 0)
                continue;
            ofShop[state] += change;
            database.run("INSERT INTO order_counts (order_id, state, count) VALUES (?, ?, 0)"
                         " ON CONFLICT (order_id, state) DO NOTHING",
                         {text(order), text(state)});
            database.run("UPDATE order_counts SET count = count + ? WHERE order_id = ? AND state = ?",
                         {qint64(change), text(order), text(state)});
        }
        saveUnfinished(database, order);
    }
    for (const auto& [state, change] : ofShop) {
        if (change == 0)
            continue;
        database.run("INSERT INTO shop_counts (state, count) VALUES (?, 0) ON CONFLICT (state) DO NOTHING",
                     {text(state)});
        database.run("UPDATE shop_counts SET count = count + ? WHERE state = ?",
                     {qint64(change), text(state)});
    }
}

void saveCounts(const Database& database, const std::string& order, const std::string& mark,
                const schedule::PieceCounts& before, const schedule::PieceCounts& now)
{
    eachChange(before, now, [&](const std::string& state, std::int64_t, std::int64_t count) {
        database.run("INSERT INTO piece_counts (order_id, mark, state, count, due, number)"
                     " SELECT p.order_id, p.mark, CAST(? AS TEXT), CAST(? AS BIGINT), o.due, p.number"
                     " FROM pieces p, current_orders o"
                     " WHERE p.order_id = ? AND p.mark = ? AND o.id = p.order_id"
                     " ON CONFLICT (order_id, mark, state) DO UPDATE SET count = excluded.count",
                     {text(state), qint64(count), text(order), text(mark)});
    });
}

schedule::PieceCounts countsFrom(Rows rows)
{
    schedule::PieceCounts counts;
    while (rows.next()) {
        const std::string state = rows.text(0);
        if (state == remadeKey)
            counts.remade = rows.number(1);
        else
            counts.of(schedule::pieceState(state).value()) = rows.number(1);
    }
    return counts;
}

} // namespace lapwright::storage
