// Guards nothing by itself: fills a shop with a long history (50 000 orders, 100 000 pieces, one in fifty of
// them still open) and with a tenth of it, and prints how long each list a screen needs takes on both, and
// their ratio; then how many orders a second are received, beside how many single-row transactions a second
// the same database commits in the same run. Every commit is on the disk. Ends with 1 if a list takes more
// than 50 ms or more than twice as long on ten times the history, or orders are received at less than 0.4 of
// the commit rate. Usage: bench_storage [ADDRESS-OF-A-NEW-DATABASE ADDRESS-OF-ANOTHER]   (SQLite files in a
// temporary folder otherwise)
#include "storage/find_orders.h"
#include "storage/lists.h"
#include "storage/orders.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <string>
#include <utility>
#include <vector>

using namespace lapwright;
using namespace lapwright::storage;
using schedule::PieceEvent;
using schedule::PieceState;

namespace {

const Stamp stamp{"2026-01-05T08:00:00Z", "desk", "bench"};
constexpr int marksEach = 2;
constexpr int openOneIn = 50;

double seconds(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

std::string wantedBy(int number)
{
    const int day = number % 3'000;
    char text[16];
    std::snprintf(text, sizeof text, "20%02d-%02d-%02d", 18 + day / 336, 1 + day / 28 % 12, 1 + day % 28);
    return text;
}

IncomingOrder order(int number, int marks = marksEach)
{
    const std::string name = std::to_string(number);
    IncomingOrder order{"order-" + name,         1,
                        "hash-" + name,          "",
                        "House " + name,         "Customer " + std::to_string(number % 500),
                        wantedBy(number),        std::string(2'000, 'd'),
                        std::string(2'000, 'e'), {}};
    for (int mark = 1; mark <= marks; ++mark)
        order.pieces.push_back({"E1." + std::to_string(mark), "E1", "P1", "steel", "26 ga",
                                "colour " + std::to_string(number % 12), Length::inches(6 + number % 8),
                                Length::inches(120), 900, 1, "a"});
    return order;
}

/// The history is written without waiting for the disk; what is timed later waits.
void fill(const Database& database, int orders)
{
    for (int number = 0; number < orders; ++number) {
        (void)receiveOrder(database, order(number), stamp, false);
        if (number % openOneIn == 0)
            continue;
        database.write([&] {
            for (int mark = 1; mark <= marksEach; ++mark)
                for (const PieceState state : {PieceState::Cut, PieceState::Folded, PieceState::Bundled,
                                               PieceState::Loaded, PieceState::Received}) {
                    const std::string id = std::to_string(number) + "/" + std::to_string(mark) + "/" +
                                           std::string(schedule::name(state));
                    (void)logEvent(database,
                                   {id,
                                    "order-" + std::to_string(number),
                                    "E1." + std::to_string(mark),
                                    {PieceEvent::Kind::Advance, state, 1},
                                    ""},
                                   stamp);
                }
        });
        if (number % 20 == 0)
            (void)saveLoad(database, "load-" + std::to_string(number), std::string(2'000, 'l'),
                           {wantedBy(number), "", ""}, {"Truck", {3, 0, 40, 120.0, Length::feet(12)}});
    }
}

using List = std::pair<const char*, std::function<void(const Database&)>>;

const std::vector<List>& lists()
{
    static const std::vector<List> all = {
        {"orders not finished", [](const Database& d) { (void)listOrders(d, OrdersShown::Unfinished, {}); }},
        {"all orders", [](const Database& d) { (void)listOrders(d, OrdersShown::All, {}); }},
        {"all orders, from the middle",
         [](const Database& d) {
             (void)listOrders(d, OrdersShown::All, {"2022-06-15\x1fHouse\x1f", 100});
         }},
        {"loads", [](const Database& d) { (void)listLoads(d, {}); }},
        {"orders found by a mark", [](const Database& d) { (void)findOrders(d, {"e1.1"}, 100); }},
        {"what waits for a person", [](const Database& d) { (void)listWaiting(d, {}); }},
        {"events", [](const Database& d) { (void)listEvents(d, "", "", {}); }},
        {"events of one order", [](const Database& d) { (void)listEvents(d, "order-1001", "", {}); }},
        {"arrivals", [](const Database& d) { (void)listArrivals(d, {}); }},
        {"stock events", [](const Database& d) { (void)listStockEvents(d, "", {}); }},
        {"counts of the shop", [](const Database& d) { (void)shopCounts(d); }},
        {"data version", [](const Database& d) { (void)d.dataVersion(); }}};
    return all;
}

/// Milliseconds, the best of several.
double timeOf(const Database& database, const List& list)
{
    double best = 1e9;
    for (int trial = 0; trial < 7; ++trial)
        best = std::min(best, 1e3 * seconds([&] { list.second(database); }));
    return best;
}

bool printLists(const Database& small, const Database& large)
{
    bool good = true;
    std::printf("%-30s %12s %12s %8s\n", "list, 100 rows", "a tenth, ms", "all, ms", "ratio");
    for (const List& list : lists()) {
        const double few = timeOf(small, list);
        const double many = timeOf(large, list);
        // Below a twentieth of a millisecond the clock says more than the list.
        const double ratio = std::max(many, 0.05) / std::max(few, 0.05);
        good = good && many <= 50.0 && ratio <= 2.0;
        std::printf("%-30s %12.3f %12.3f %8.2f\n", list.first, few, many, ratio);
    }
    return good;
}

bool printRates(const Database& database)
{
    constexpr int count = 400;
    database.run("CREATE TABLE bench_rows (number INTEGER)");
    double commits = 0.0;
    double received = 0.0;
    // Turn and turn about, so that both meet the same disk.
    for (int round = 0; round < 4; ++round) {
        commits += seconds([&] {
            for (int number = 0; number < count / 4; ++number) {
                database.run("BEGIN");
                database.run("INSERT INTO bench_rows (number) VALUES (?)", {number});
                database.run("COMMIT");
            }
        });
        received += seconds([&] {
            for (int number = 0; number < count / 4; ++number)
                (void)receiveOrder(database, order(1'000'000 + round * count + number, 20), stamp, false);
        });
    }
    const double ratio = commits / received;
    std::printf("commits %.0f a second, orders of 20 marks received %.0f a second, ratio %.2f\n",
                count / commits, count / received, ratio);
    return ratio >= 0.4;
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QTemporaryDir folder;
    const bool given = argc == 3;
    const auto at = [&](int index) {
        return given ? std::string(argv[index]) : folder.filePath(QString("%1.db").arg(index)).toStdString();
    };
    const Database small = Database::open(at(1)).value();
    const Database large = Database::open(at(2)).value();
    const char* fast = given ? "SET synchronous_commit = off" : "PRAGMA synchronous = OFF";
    const char* safe = given ? "SET synchronous_commit = on" : "PRAGMA synchronous = FULL";
    for (const Database* database : {&small, &large}) {
        database->run(fast);
        fill(*database, database == &small ? 5'000 : 50'000);
        database->run(safe);
        if (given)
            database->run("ANALYZE");
    }
    const bool listsGood = printLists(small, large);
    const bool ratesGood = printRates(large);
    return listsGood && ratesGood ? 0 : 1;
}
