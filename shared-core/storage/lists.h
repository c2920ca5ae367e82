#pragma once

#include "schedule/piece_life.h"
#include "site/job.h"
#include "storage/database.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What screens show, page by page: each page costs the same however long the history is.
namespace lapwright::storage {

/// Where a page begins and how long it is.
struct From {
    std::string after; ///< Page::next of the page before; empty: from the start
    std::int64_t most = 100;
};

template <class Row>
struct Page {
    std::vector<Row> rows;
    std::string next; ///< empty: nothing follows
};

struct OrderRow {
    OrderSummary order;
    schedule::PieceCounts counts;
};

enum class OrdersShown { Unfinished, Held, All };
/// By wanted date, then name.
[[nodiscard]] Page<OrderRow> listOrders(const Database& database, OrdersShown shown, const From& from);

/// The order of this id.
[[nodiscard]] std::optional<OrderRow> orderRow(const Database& database, const std::string& order);

struct LoadRow {
    std::string id;
    std::string madeAt;
    std::string truck;
    std::int64_t bundles = 0;
    std::int64_t pieces = 0;
    double kilograms = 0.0;
    Length longest;
};
/// The latest first.
[[nodiscard]] Page<LoadRow> listLoads(const Database& database, const From& from);

struct EventRow {
    std::int64_t number = 0; ///< grows from event to event
    LoggedEvent event;
    Stamp stamp;
};
/// The latest first; with `order` only of that one, with `mark` only of that mark of it.
[[nodiscard]] Page<EventRow> listEvents(const Database& database, const std::string& order,
                                        const std::string& mark, const From& from);
/// What was done last to each mark that stands in `state`; that it is wanted, or not any more, is no work.
[[nodiscard]] std::vector<EventRow> lastWork(const Database& database, schedule::PieceState state);
/// The same of each mark of an order.
[[nodiscard]] std::vector<EventRow> lastWork(const Database& database, const std::string& order);

struct WaitingOrder {
    std::string hash;
    std::string order;
    std::int64_t revision = 1;
    std::vector<std::string> reasons;
    std::string receivedAt;
};
/// Orders that wait for a person, in the sequence they came.
[[nodiscard]] Page<WaitingOrder> listWaiting(const Database& database, const From& from);
/// How many they are.
[[nodiscard]] std::int64_t countWaiting(const Database& database);
/// The document of one that waits, as received; empty if there is none.
[[nodiscard]] std::string waitingDocument(const Database& database, const std::string& hash);
/// Whether this very revision was taken in: one whose document has this hash.
[[nodiscard]] bool isHere(const Database& database, const std::string& order, std::int64_t revision,
                          const std::string& hash);
/// Whether one of this hash waits or was dismissed.
[[nodiscard]] bool isSetAside(const Database& database, const std::string& hash);
/// A person says that it is not to be taken: it is kept, but waits no longer, unless it arrives again. False
/// if it does not wait.
[[nodiscard]] bool dismissWaiting(const Database& database, const std::string& hash, const Stamp& stamp);

struct ArrivalRow {
    std::int64_t number = 0;
    std::string order;
    std::int64_t revision = 1;
    std::string outcome;
    std::vector<std::string> reasons;
    Stamp stamp;
};
/// The latest first.
[[nodiscard]] Page<ArrivalRow> listArrivals(const Database& database, const From& from);

struct StockEventRow {
    std::int64_t number = 0;
    std::string key;
    std::string kind;
    std::int64_t count = 0;
    Length length;
    std::string note;
    Stamp stamp;
};
/// The latest first; with `key` only of that item.
[[nodiscard]] Page<StockEventRow> listStockEvents(const Database& database, const std::string& key,
                                                  const From& from);

/// How many pieces of the whole shop stand in each state.
[[nodiscard]] schedule::PieceCounts shopCounts(const Database& database);

} // namespace lapwright::storage
