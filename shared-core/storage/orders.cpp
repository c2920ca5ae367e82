#include "storage/orders.h"

#include "storage/mark_change.h"
#include "storage/order_changes.h"
#include "storage/piece_events.h"
#include "storage/rows.h"
#include "storage/shop_state.h"

#include <array>
#include <map>
#include <set>
#include <string_view>
#include <utility>

namespace lapwright::storage {

namespace {

using schedule::PieceCounts;
using schedule::PieceEvent;
using schedule::PieceState;

Arrival wait(const Database& database, const IncomingOrder& order, const Stamp& stamp,
             std::vector<std::string> reasons)
{
    std::string all;
    for (const std::string& reason : reasons)
        all += (all.empty() ? "" : "\n") + reason;
    database.run("INSERT INTO quarantine (hash, order_id, revision, reason, received_at, document)"
                 " VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO UPDATE SET reason = excluded.reason,"
                 " dismissed = 0",
                 {text(order.hash), text(order.id), qint64(order.revision), text(all), text(stamp.at),
                  text(order.document)});
    return {Arrival::Outcome::Waits, std::move(reasons)};
}

/// An address to compare: letters and digits only, in lower case.
QString plain(const std::string& address)
{
    QString plain(""); // not null, which the database would take for missing
    for (const QChar letter : text(address).toCaseFolded())
        if (letter.isLetterOrNumber())
            plain.append(letter);
    return plain;
}

/// Orders without a wanted date come last.
QString dueOf(const IncomingOrder& order)
{
    return order.wantedBy.empty() ? QString("9999") : text(order.wantedBy);
}

/// From here on this revision counts.
void makeCurrent(const Database& database, const IncomingOrder& order, const Stamp& stamp)
{
    database.run(
        "INSERT INTO current_orders (id, revision, job_name, customer, address, wanted_by, due,"
        " first_received_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET revision = excluded.revision,"
        " job_name = excluded.job_name, customer = excluded.customer, address = excluded.address,"
        " wanted_by = excluded.wanted_by, due = excluded.due, cancelled = 0",
        {text(order.id), qint64(order.revision), text(order.jobName), text(order.customer),
         plain(order.address), text(order.wantedBy), dueOf(order), text(stamp.at)});
    database.run("UPDATE piece_counts SET due = ? WHERE order_id = ? AND due <> ?",
                 {dueOf(order), text(order.id), dueOf(order)});
}

void noteArrival(const Database& database, const IncomingOrder& order, const Arrival& arrival,
                 const Stamp& stamp)
{
    std::string reasons;
    for (const std::string& reason : arrival.reasons)
        reasons += (reasons.empty() ? "" : "\n") + reason;
    database.run("INSERT INTO arrivals (order_id, revision, hash, outcome, reasons, at, station, person)"
                 " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                 {text(order.id), qint64(order.revision), text(order.hash), text(name(arrival.outcome)),
                  text(reasons), text(stamp.at), text(stamp.station), text(stamp.person)});
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
    Rows before = database.query("SELECT hash FROM orders WHERE id = ? AND revision = ?",
                                 {text(order.id), qint64(order.revision - 1)});
    if (before.next() && before.text(0) != order.previousHash)
        reasons.push_back("revision " + number + " was made from another revision " +
                          std::to_string(order.revision - 1) + " than the one that is here");
    Rows after = database.query("SELECT previous_hash FROM orders WHERE id = ? AND revision = ?",
                                {text(order.id), qint64(order.revision + 1)});
    if (after.next() && after.text(0) != order.hash)
        reasons.push_back("revision " + std::to_string(order.revision + 1) +
                          ", which is here, was made from another revision " + number);
    return reasons;
}

/// What cancelling the order would make scrap, in words.
std::vector<std::string> begunOf(const Database& database, const std::string& order)
{
    std::vector<std::string> reasons;
    for (const auto& [mark, piece] : standingPieces(database, order)) {
        const PieceCounts counts = pieceCounts(database, order, mark);
        const std::int64_t begun =
            counts.of(PieceState::Cut) + counts.of(PieceState::Folded) + counts.of(PieceState::Bundled);
        if (begun > 0)
            reasons.push_back(std::to_string(begun) + " of " + mark + " is cut or folded and would be scrap");
    }
    return reasons;
}

/// Withdraws what is only ordered, scraps what is begun and not on a truck, and marks the order as cancelled.
void withdrawAll(const Database& database, const std::string& order, const Stamp& stamp)
{
    OrderLog log(database, order, stamp, "cancelled");
    for (const auto& [mark, piece] : standingPieces(database, order)) {
        PieceCounts counts = pieceCounts(database, order, mark);
        log.scrapBegun(mark, counts, piece.count);
        const std::int64_t ordered = counts.of(PieceState::Ordered);
        if (ordered == 0)
            continue;
        log.log(mark, counts, {PieceEvent::Kind::Withdraw, PieceState::Ordered, ordered});
        database.run("UPDATE pieces SET count = count - ? WHERE order_id = ? AND mark = ?",
                     {qint64(ordered), text(order), text(mark)});
    }
    log.save();
    database.run("UPDATE current_orders SET cancelled = 1 WHERE id = ?", {text(order)});
    takeBackPlans(database, order);
}

/// Takes the revision that cancels the order, unless what is begun stands in its way.
Arrival takeCancellation(const Database& database, const IncomingOrder& order, const Stamp& stamp,
                         bool accept)
{
    std::vector<std::string> begun = begunOf(database, order.id);
    if (!begun.empty() && !accept)
        return wait(database, order, stamp, std::move(begun));
    saveOrder(database, order, stamp);
    makeCurrent(database, order, stamp);
    withdrawAll(database, order.id, stamp);
    return {Arrival::Outcome::Taken, std::move(begun)};
}

/// Takes the revision that counts from now on, unless something stands in its way.
Arrival takeLatest(const Database& database, const IncomingOrder& order, const Stamp& stamp, bool accept)
{
    const std::vector<MarkChange> list = markChanges(database, order);
    const Obstacles found = obstacles(list);
    if (!found.reasons.empty() && (found.final || !accept))
        return wait(database, order, stamp, found.reasons);
    saveOrder(database, order, stamp);
    makeCurrent(database, order, stamp);
    std::map<std::string_view, std::int64_t> numbers;
    for (const OrderedPiece& piece : order.pieces)
        numbers.emplace(piece.mark, static_cast<std::int64_t>(numbers.size()) + 1);
    OrderLog log(database, order.id, stamp, "revision");
    for (const MarkChange& change : list)
        applyChange(database, order, change, change.now ? numbers.at(change.mark) : 0, log);
    log.save();
    Arrival taken{Arrival::Outcome::Taken, {}};
    if (!list.empty() && takeBackPlans(database, order.id))
        taken.reasons.emplace_back("cut plans that held its pieces are taken back; plan again");
    return taken;
}

Arrival receiveInside(const Database& database, const IncomingOrder& order, const Stamp& stamp, bool accept)
{
    Rows same = database.query("SELECT hash FROM orders WHERE id = ? AND revision = ?",
                               {text(order.id), qint64(order.revision)});
    if (same.next()) {
        if (same.text(0) == order.hash)
            return {Arrival::Outcome::AlreadyHere, {}};
        return wait(database, order, stamp,
                    {"revision " + std::to_string(order.revision) + " is here with another content"});
    }
    std::vector<std::string> reasons = order.doubts;
    for (std::string& broken : brokenLinks(database, order))
        reasons.push_back(std::move(broken));
    if (!reasons.empty() && !accept)
        return wait(database, order, stamp, std::move(reasons));
    const auto current = currentRevision(database, order.id);
    if (current.value_or(0) > order.revision) {
        saveOrder(database, order, stamp);
        return {Arrival::Outcome::Superseded, {}};
    }
    return order.cancelled ? takeCancellation(database, order, stamp, accept)
                           : takeLatest(database, order, stamp, accept);
}

constexpr const char* columnsOfSummary =
    "o.id, o.revision, o.job_name, o.customer, o.wanted_by, o.first_received_at, o.priority, o.held, o.cancelled,"
    " o.unfinished";

std::vector<OrderSummary> summaries(Rows rows)
{
    std::vector<OrderSummary> orders;
    while (rows.next())
        orders.push_back(summaryAt(rows, 0));
    return orders;
}

Result<Arrival> cancelInside(const Database& database, const std::string& order, const Stamp& stamp,
                             bool accept)
{
    if (!currentRevision(database, order))
        return Error{"", "no order " + order, "an order that is here"};
    Arrival cancelled{Arrival::Outcome::Taken, begunOf(database, order)};
    if (!cancelled.reasons.empty() && !accept) {
        cancelled.outcome = Arrival::Outcome::Waits;
        return cancelled;
    }
    withdrawAll(database, order, stamp);
    return cancelled;
}

} // namespace

std::string_view name(Arrival::Outcome outcome)
{
    constexpr std::array<std::string_view, 4> names = {"taken", "already here", "superseded", "waits"};
    return names[static_cast<std::size_t>(outcome)];
}

OrderSummary summaryAt(const Rows& rows, int first)
{
    const auto at = [&](int column) { return rows.text(first + column); };
    const auto number = [&](int column) { return rows.number(first + column); };
    return {at(0), number(1), at(2),          at(3),          at(4),
            at(5), number(6), number(7) != 0, number(8) != 0, number(9)};
}

QString summaryColumns()
{
    return columnsOfSummary;
}

Arrival receiveOrder(const Database& database, const IncomingOrder& order, const Stamp& stamp, bool accept)
{
    return database.write([&] {
        Arrival arrival = receiveInside(database, order, stamp, accept);
        noteArrival(database, order, arrival, stamp);
        return arrival;
    });
}

std::vector<OrderSummary> currentOrders(const Database& database)
{
    return summaries(database.query(QString("SELECT ") + columnsOfSummary +
                                    " FROM current_orders o ORDER BY o.due, o.job_name, o.id"));
}

std::vector<OrderSummary> unfinishedOrders(const Database& database)
{
    return summaries(database.query(QString("SELECT ") + columnsOfSummary +
                                    " FROM current_orders o WHERE o.unfinished > 0"
                                    " ORDER BY o.due, o.job_name, o.id"));
}

std::vector<OrderSummary> ordersOfSameHouse(const Database& database, const std::string& order)
{
    return summaries(database.query(QString("SELECT ") + columnsOfSummary +
                                        " FROM current_orders o JOIN current_orders one"
                                        " ON one.address = o.address AND one.id <> o.id"
                                        " WHERE one.id = ? AND o.address <> '' ORDER BY o.id",
                                    {text(order)}));
}

bool holdOrder(const Database& database, const std::string& order, bool held)
{
    return database.write([&] {
        if (held)
            takeBackPlans(database, order);
        return database.query("UPDATE current_orders SET held = ? WHERE id = ?", {held ? 1 : 0, text(order)})
                   .changed() > 0;
    });
}

bool setPriority(const Database& database, const std::string& order, std::int64_t priority)
{
    return database.write([&] {
        return database
                   .query("UPDATE current_orders SET priority = ? WHERE id = ?",
                          {qint64(priority), text(order)})
                   .changed() > 0;
    });
}

Result<Arrival> cancelOrder(const Database& database, const std::string& order, const Stamp& stamp,
                            bool accept)
{
    return database.write([&] { return cancelInside(database, order, stamp, accept); });
}

} // namespace lapwright::storage
