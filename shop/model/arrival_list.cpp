#include "arrival_list.h"

#include "arrivals.h"
#include "schedule/label_text.h"
#include "storage/find_orders.h"
#include "text.h"

#include <iterator>
#include <string>
#include <utility>

namespace lapwright::model {

namespace {

/// So many orders at most are found by a search: who wants another one types more of its name.
constexpr std::int64_t mostFound = 100;

/// All pages of a list.
template <class Row, class List>
std::vector<Row> allOf(const List& list)
{
    std::vector<Row> all;
    storage::From from;
    do {
        storage::Page<Row> page = list(from);
        std::move(page.rows.begin(), page.rows.end(), std::back_inserter(all));
        from.after = page.next;
    } while (!from.after.empty());
    return all;
}

QString stateOf(const schedule::PieceCounts& counts)
{
    QStringList parts;
    for (std::size_t state = 0; state < schedule::pieceStates; ++state)
        if (counts.in[state] > 0)
            parts.append(QStringLiteral("%1 %2")
                             .arg(counts.in[state])
                             .arg(said(schedule::name(static_cast<schedule::PieceState>(state)))));
    return parts.join(QStringLiteral(", "));
}

} // namespace

std::vector<storage::WaitingOrder> waitingOrders(const storage::Database& database)
{
    return allOf<storage::WaitingOrder>(
        [&](const storage::From& from) { return storage::listWaiting(database, from); });
}

Row orderRow(const storage::OrderRow& found)
{
    const storage::OrderSummary& order = found.order;
    Row row;
    row.id = exact(order.id);
    row.title = shown(order.jobName);
    row.detail = shown(order.customer) +
                 (order.revision > 1 ? Arrivals::tr(", revision %1").arg(order.revision) : QString());
    row.trailing = dayWords(order.wantedBy);
    row.trailingDetail = stateOf(found.counts);
    row.sign = order.held ? QStringLiteral("hold") : QStringLiteral("orders");
    return row;
}

std::vector<storage::OrderRow> openOrders(const storage::Database& database)
{
    return allOf<storage::OrderRow>([&](const storage::From& from) {
        return storage::listOrders(database, storage::OrdersShown::Unfinished, from);
    });
}

std::vector<storage::OrderRow> searched(const storage::Database& database, const QString& search)
{
    if (const auto label = schedule::readLabelText(search.toStdString()); label.ok()) {
        const auto found = storage::orderRow(database, label->order);
        return found ? std::vector{*found} : std::vector<storage::OrderRow>();
    }
    std::vector<std::string> words;
    for (const QString& word : search.split(u' ', Qt::SkipEmptyParts))
        words.push_back(word.toStdString());
    return storage::findOrders(database, words, mostFound);
}

} // namespace lapwright::model
