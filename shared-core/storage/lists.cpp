#include "storage/lists.h"

#include "storage/piece_totals.h"
#include "storage/rows.h"

#include <QStringList>

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <utility>

namespace lapwright::storage {

namespace {

/// Between the parts of a page's end; no name or time contains it.
constexpr QChar separator(0x1f);

QString joined(const QStringList& parts)
{
    return parts.join(separator);
}

/// A statement that gives one page in one order of its columns: "SELECT … WHERE … AND (key) > (?, …)".
struct PageQuery {
    QString select; ///< up to and with FROM and its joins
    QStringList conditions;
    QVariantList values;
    QStringList key; ///< columns the page is ordered by, unique together
    bool latestFirst = false;

    [[nodiscard]] Rows run(const Database& database, const From& from, const QVariantList& start) const
    {
        QStringList all = conditions;
        QVariantList given = values;
        if (!from.after.empty()) {
            all.append("(" + key.join(", ") + ")" + (latestFirst ? " < (" : " > (") +
                       QStringList(key.size(), "?").join(", ") + ")");
            given += start;
        }
        const QString descending = latestFirst ? " DESC" : "";
        // One more than asked for tells whether another page follows.
        given.append(qint64(from.most + 1));
        return database.query(select + (all.isEmpty() ? QString() : " WHERE " + all.join(" AND ")) +
                                  " ORDER BY " + key.join(descending + ", ") + descending + " LIMIT ?",
                              given);
    }
};

/// The values a page goes on after; text unless it is one of `numbers`.
QVariantList startOf(const From& from, std::initializer_list<int> numbers = {})
{
    QVariantList start;
    const QStringList parts = text(from.after).split(separator);
    for (int index = 0; index < parts.size(); ++index) {
        const bool isNumber = std::find(numbers.begin(), numbers.end(), index) != numbers.end();
        start.append(isNumber ? QVariant(parts[index].toLongLong()) : QVariant(parts[index]));
    }
    return start;
}

template <class Row>
Page<Row> pageOf(Rows rows, std::int64_t most, const std::function<Row(const Rows&)>& read,
                 const std::function<QString(const Row&)>& end)
{
    Page<Row> page;
    while (rows.next()) {
        if (static_cast<std::int64_t>(page.rows.size()) == most) {
            page.next = page.rows.empty() ? std::string() : end(page.rows.back()).toStdString();
            break;
        }
        page.rows.push_back(read(rows));
    }
    return page;
}

std::vector<std::string> lines(const std::string& text)
{
    std::vector<std::string> result;
    if (text.empty())
        return result;
    for (const QString& line : storage::text(text).split('\n'))
        result.push_back(line.toStdString());
    return result;
}

QString dueOf(const std::string& wantedBy)
{
    return wantedBy.empty() ? QString("9999") : text(wantedBy);
}

/// Lists of a log that numbers its rows.
template <class Row>
Page<Row> logPage(const Database& database, PageQuery query, const From& from,
                  const std::function<Row(const Rows&)>& read)
{
    query.key = {"seq"};
    query.latestFirst = true;
    return pageOf<Row>(query.run(database, from, startOf(from, {0})), from.most, read,
                       [](const Row& row) { return QString::number(row.number); });
}

/// The columns that eventAt() reads, of piece_events as `e`.
constexpr const char* eventColumns =
    "e.seq, e.id, e.order_id, e.mark, e.kind, e.state, e.count, e.note, e.at, e.station, e.person";

EventRow eventAt(const Rows& rows)
{
    const schedule::PieceEvent event{schedule::pieceEventKind(rows.text(4)).value(),
                                     schedule::pieceState(rows.text(5)).value(), rows.number(6)};
    return {rows.number(0),
            {rows.text(1), rows.text(2), rows.text(3), event, rows.text(7)},
            {rows.text(8), rows.text(9), rows.text(10)}};
}

/// What was done last to each mark of `marks`, a relation of order_id and mark that takes one value.
std::vector<EventRow> lastWorkOn(const Database& database, const char* marks, const QString& value)
{
    Rows rows = database.query(QString("SELECT ") + eventColumns + " FROM " + marks +
                                   " c JOIN piece_events e ON e.seq = (SELECT MAX(x.seq)"
                                   " FROM piece_events x WHERE x.order_id = c.order_id AND x.mark = c.mark"
                                   " AND x.kind NOT IN ('order', 'withdraw'))",
                               {value});
    std::vector<EventRow> found;
    while (rows.next())
        found.push_back(eventAt(rows));
    return found;
}

} // namespace

Page<OrderRow> listOrders(const Database& database, OrdersShown shown, const From& from)
{
    PageQuery query{
        "SELECT " + summaryColumns() + " FROM current_orders o", {}, {}, {"o.due", "o.job_name", "o.id"}};
    if (shown == OrdersShown::Unfinished)
        query.conditions.append("o.unfinished > 0");
    if (shown == OrdersShown::Held)
        query.conditions.append("o.held > 0");
    Page<OrderRow> page = pageOf<OrderRow>(
        query.run(database, from, startOf(from)), from.most,
        [](const Rows& rows) {
            return OrderRow{summaryAt(rows, 0), {}};
        },
        [](const OrderRow& row) {
            return joined({dueOf(row.order.wantedBy), text(row.order.jobName), text(row.order.id)});
        });
    for (OrderRow& row : page.rows)
        row.counts = orderCounts(database, row.order.id);
    return page;
}

std::optional<OrderRow> orderRow(const Database& database, const std::string& order)
{
    Rows rows =
        database.query("SELECT " + summaryColumns() + " FROM current_orders o WHERE o.id = ?", {text(order)});
    if (!rows.next())
        return std::nullopt;
    return OrderRow{summaryAt(rows, 0), orderCounts(database, order)};
}

Page<LoadRow> listLoads(const Database& database, const From& from)
{
    const PageQuery query{"SELECT id, made_at, truck, bundles, pieces, kilograms, longest_nm FROM loads",
                          {},
                          {},
                          {"made_at", "id"},
                          true};
    return pageOf<LoadRow>(
        query.run(database, from, startOf(from)), from.most,
        [](const Rows& rows) {
            return LoadRow{rows.text(0),
                           rows.text(1),
                           rows.text(2),
                           rows.number(3),
                           rows.number(4),
                           rows.real(5),
                           Length::nanometres(rows.number(6))};
        },
        [](const LoadRow& row) {
            return joined({text(row.madeAt), text(row.id)});
        });
}

Page<EventRow> listEvents(const Database& database, const std::string& order, const std::string& mark,
                          const From& from)
{
    PageQuery query{QString("SELECT ") + eventColumns + " FROM piece_events e", {}, {}, {}};
    if (!order.empty()) {
        query.conditions.append("order_id = ?");
        query.values.append(text(order));
    }
    if (!mark.empty()) {
        query.conditions.append("mark = ?");
        query.values.append(text(mark));
    }
    return logPage<EventRow>(database, query, from, eventAt);
}

std::vector<EventRow> lastWork(const Database& database, schedule::PieceState state)
{
    return lastWorkOn(database, "(SELECT order_id, mark FROM piece_counts WHERE state = ? AND count > 0)",
                      text(schedule::name(state)));
}

std::vector<EventRow> lastWork(const Database& database, const std::string& order)
{
    return lastWorkOn(database, "(SELECT DISTINCT order_id, mark FROM piece_events WHERE order_id = ?)",
                      text(order));
}

Page<WaitingOrder> listWaiting(const Database& database, const From& from)
{
    const PageQuery query{"SELECT hash, order_id, revision, reason, received_at FROM quarantine",
                          {"dismissed = 0"},
                          {},
                          {"received_at", "hash"}};
    return pageOf<WaitingOrder>(
        query.run(database, from, startOf(from)), from.most,
        [](const Rows& rows) {
            return WaitingOrder{rows.text(0), rows.text(1), rows.number(2), lines(rows.text(3)),
                                rows.text(4)};
        },
        [](const WaitingOrder& row) {
            return joined({text(row.receivedAt), text(row.hash)});
        });
}

std::int64_t countWaiting(const Database& database)
{
    Rows rows = database.query("SELECT COUNT(*) FROM quarantine WHERE dismissed = 0");
    return rows.next() ? rows.number(0) : 0;
}

std::string waitingDocument(const Database& database, const std::string& hash)
{
    Rows rows =
        database.query("SELECT document FROM quarantine WHERE hash = ? AND dismissed = 0", {text(hash)});
    return rows.next() ? rows.text(0) : std::string();
}

bool isHere(const Database& database, const std::string& order, std::int64_t revision,
            const std::string& hash)
{
    return database
        .query("SELECT 1 FROM orders WHERE id = ? AND revision = ? AND hash = ?",
               {text(order), qint64(revision), text(hash)})
        .next();
}

bool isSetAside(const Database& database, const std::string& hash)
{
    return database.query("SELECT 1 FROM quarantine WHERE hash = ?", {text(hash)}).next();
}

bool dismissWaiting(const Database& database, const std::string& hash, const Stamp& stamp)
{
    return database.write([&] {
        const bool waited =
            database
                .query("UPDATE quarantine SET dismissed = 1 WHERE hash = ? AND dismissed = 0", {text(hash)})
                .changed() > 0;
        if (waited)
            database.run(
                "INSERT INTO arrivals (order_id, revision, hash, outcome, reasons, at, station, person)"
                " SELECT order_id, revision, hash, 'dismissed', reason, CAST(? AS TEXT),"
                " CAST(? AS TEXT), CAST(? AS TEXT) FROM quarantine WHERE hash = ?",
                {text(stamp.at), text(stamp.station), text(stamp.person), text(hash)});
        return waited;
    });
}

Page<ArrivalRow> listArrivals(const Database& database, const From& from)
{
    const PageQuery query{
        "SELECT seq, order_id, revision, outcome, reasons, at, station, person FROM arrivals", {}, {}, {}};
    return logPage<ArrivalRow>(database, query, from, [](const Rows& rows) {
        return ArrivalRow{rows.number(0), rows.text(1),        rows.number(2),
                          rows.text(3),   lines(rows.text(4)), {rows.text(5), rows.text(6), rows.text(7)}};
    });
}

Page<StockEventRow> listStockEvents(const Database& database, const std::string& key, const From& from)
{
    PageQuery query{
        "SELECT seq, key, kind, count, length_nm, note, at, station, person FROM stock_events", {}, {}, {}};
    if (!key.empty()) {
        query.conditions.append("key = ?");
        query.values.append(text(key));
    }
    return logPage<StockEventRow>(database, query, from, [](const Rows& rows) {
        return StockEventRow{rows.number(0),
                             rows.text(1),
                             rows.text(2),
                             rows.number(3),
                             Length::nanometres(rows.number(4)),
                             rows.text(5),
                             {rows.text(6), rows.text(7), rows.text(8)}};
    });
}

schedule::PieceCounts shopCounts(const Database& database)
{
    return countsFrom(database.query("SELECT state, count FROM shop_counts"));
}

} // namespace lapwright::storage
