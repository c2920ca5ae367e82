// Guards: pages of a list, one after the other, show every row once and in order, on both databases; filters
// show what they say; a plan is cut by one station only and says which orders it serves.
#include "storage/databases.h"
#include "storage/find_orders.h"
#include "storage/lists.h"
#include "storage/orders.h"
#include "storage/piece_events.h"
#include "storage/reports.h"
#include "storage/shop_state.h"

#include <set>

using namespace lapwright;
using namespace lapwright::storage;
using schedule::PieceEvent;
using schedule::PieceState;

namespace {

const Stamp stamp{"2026-01-05T08:00:00Z", "desk", "tester"};

IncomingOrder order(int number)
{
    const std::string name = std::to_string(number);
    IncomingOrder order{"order" + name,
                        1,
                        "hash" + name,
                        "",
                        "House " + name,
                        "Customer",
                        number % 3 == 0 ? "" : "2026-02-" + std::to_string(10 + number % 5),
                        "document",
                        "derived",
                        {}};
    for (const char* mark : {"E1.2", "E1.10", "E1.1"})
        order.pieces.push_back({mark, "E1", "P1", "steel", "26 ga", "slate", Length::inches(6),
                                Length::inches(120), 900, 2, "a"});
    return order;
}

/// All rows over pages of `most`, and how many pages there were.
template <class Row, class List>
std::pair<std::vector<Row>, int> allPages(std::int64_t most, const List& list)
{
    std::vector<Row> rows;
    int pages = 0;
    From from{"", most};
    do {
        const Page<Row> page = list(from);
        rows.insert(rows.end(), page.rows.begin(), page.rows.end());
        from.after = page.next;
        ++pages;
    } while (!from.after.empty());
    return {rows, pages};
}

} // namespace

class ListsTest : public tests::OnBothDatabases {
    Q_OBJECT

private slots:
    void pagesShowEveryRowOnceInOrder()
    {
        const Database database = fresh();
        for (int number = 0; number < 23; ++number)
            (void)receiveOrder(database, order(number), stamp, false);
        const auto [orders, pages] = allPages<OrderRow>(
            5, [&](const From& from) { return listOrders(database, OrdersShown::Unfinished, from); });
        QCOMPARE(pages, 5);
        std::set<std::string> ids;
        for (const OrderRow& row : orders) {
            ids.insert(row.order.id);
            QCOMPARE(row.counts.of(PieceState::Ordered), std::int64_t{6});
        }
        QCOMPARE(ids.size(), 23U);
        QVERIFY(orders.front().order.wantedBy == "2026-02-10" && orders.back().order.wantedBy.empty());
        const auto [events, eventPages] =
            allPages<EventRow>(7, [&](const From& from) { return listEvents(database, "", "", from); });
        QCOMPARE(events.size(), 69U);
        QVERIFY(events.front().number > events.back().number);
        QCOMPARE(listEvents(database, "order4", "E1.10", {}).rows.size(), 1U);
        QCOMPARE(listArrivals(database, {}).rows.size(), 23U);
    }
    void theLastWorkOnWhatStandsInAStateIsGiven()
    {
        const Database database = fresh();
        for (int number = 0; number < 2; ++number)
            (void)receiveOrder(database, order(number), stamp, false);
        const auto log = [&database](const char* id, const char* mark, PieceEvent::Kind kind,
                                     PieceState state) {
            const auto logged = logEvent(database, {id, "order1", mark, {kind, state, 1}, ""},
                                         {"2026-01-05T09:00:00Z", "folder", "Ann"});
            QVERIFY(logged.ok());
        };
        QVERIFY(lastWork(database, PieceState::Cut).empty());
        log("cut", "E1.2", PieceEvent::Kind::Advance, PieceState::Cut);
        log("folded", "E1.2", PieceEvent::Kind::Advance, PieceState::Folded);
        log("cut again", "E1.10", PieceEvent::Kind::Advance, PieceState::Cut);
        const auto folded = lastWork(database, PieceState::Folded);
        QCOMPARE(folded.size(), 1U);
        QCOMPARE(folded.front().event.id, std::string("folded"));
        QCOMPARE(folded.front().event.mark, std::string("E1.2"));
        QCOMPARE(folded.front().stamp.person, std::string("Ann"));
        // Of what is still ordered one was cut: that is the last work on its mark; that it is wanted is none.
        std::set<std::string> ids;
        for (const EventRow& row : lastWork(database, PieceState::Ordered))
            ids.insert(row.event.id);
        QVERIFY(ids == std::set<std::string>({"folded", "cut again"}));
        ids.clear();
        for (const EventRow& row : lastWork(database, std::string("order1")))
            ids.insert(row.event.id);
        QVERIFY(ids == std::set<std::string>({"folded", "cut again"}));
        QVERIFY(lastWork(database, std::string("order0")).empty());
    }
    void heldOrdersAreListedApart()
    {
        const Database database = fresh();
        for (int number = 0; number < 4; ++number)
            (void)receiveOrder(database, order(number), stamp, false);
        QVERIFY(holdOrder(database, "order2", true));
        QVERIFY(setPriority(database, "order2", 5));
        QVERIFY(!holdOrder(database, "nobody", true));
        const auto held = listOrders(database, OrdersShown::Held, {});
        QCOMPARE(held.rows.size(), 1U);
        QCOMPARE(held.rows.front().order.priority, std::int64_t{5});
        std::size_t free = 0;
        for (const PieceToCut& piece : piecesToCut(database))
            free += piece.orderHeld ? 0 : 1;
        QCOMPARE(free, 9U);
    }
    void ordersAreFoundByHouseCustomerAndMark()
    {
        const Database database = fresh();
        for (int number = 0; number < 4; ++number)
            (void)receiveOrder(database, order(number), stamp, false);
        QCOMPARE(findOrders(database, {"house", "2"}, 10).size(), 1U);
        QCOMPARE(findOrders(database, {"cust", "e1.10"}, 10).size(), 4U);
        QCOMPARE(findOrders(database, {"CUST"}, 3).size(), 3U);
        QVERIFY(findOrders(database, {"house", "E9.9"}, 10).empty());
        QVERIFY(findOrders(database, {"%"}, 10).empty());
        QVERIFY(findOrders(database, {}, 10).empty());
        QCOMPARE(orderRow(database, "order2")->counts.of(PieceState::Ordered), std::int64_t{6});
        QVERIFY(!orderRow(database, "nobody"));
        IncomingOrder other = order(7);
        other.jobName = "Pe\xC3\xB1"
                        "a 100% Blanca";
        other.customer = "\xC3\x81ngela Ruiz";
        other.pieces.front().mark = "S1a.1";
        other.pieces.back().mark = "\xC3\x91"
                                   "1.1";
        (void)receiveOrder(database, other, stamp, false);
        QCOMPARE(findOrders(database, {other.pieces.back().mark}, 10).size(), 1U);
        QVERIFY(findOrders(database,
                           {"\xC3\x93"
                            "1.1"},
                           10)
                    .empty());
        for (const char* mark : {"S1a.1", "s1a.1", "S1A.1"})
            QCOMPARE(findOrders(database, {mark}, 10).size(), 1U);
        for (const char* word : {"\xC3\xA1ngela", "\xC3\x81NGELA",
                                 "pe\xC3\xB1"
                                 "a",
                                 "100%", "angela"})
            QCOMPARE(findOrders(database, {word, "ruiz"}, 10).size(),
                     word == std::string("angela") ? 0U : 1U);
        QVERIFY(findOrders(database, {"\xC3\xA9ngela"}, 10).empty());
        QCOMPARE(findOrders(database, {"cust", "\xC3\xA1"}, 10).size(), 0U);
    }
    void aHeldMarkStaysHeldAndTakesOnlyItsOwnPlanBack()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1), stamp, false);
        StoredPlan with{"with", {"steel", "26 ga", "slate"}, "words"}, without = with;
        without.id = "without";
        with.pieces = {{"order1", "E1.1", 2}};
        without.pieces = {{"order1", "E1.2", 2}};
        replacePlans(database, {with, without}, stamp);
        QVERIFY(!holdPiece(database, "order1", "E9.9", true));
        for (int twice = 0; twice < 2; ++twice)
            QVERIFY(holdPiece(database, "order1", "E1.1", true));
        const auto waiting = waitingPlans(database);
        QCOMPARE(waiting.size(), 1U);
        QCOMPARE(waiting.front().id, std::string("without"));
        for (const PieceToCut& piece : piecesToCut(database)) {
            QCOMPARE(piece.pieceHeld, piece.piece.piece.mark == "E1.1");
            QVERIFY(!piece.orderHeld);
        }
        QVERIFY(holdPiece(database, "order1", "E1.1", false));
        for (const PieceToCut& piece : piecesToCut(database))
            QVERIFY(!piece.pieceHeld);
    }
    void loadsAreListedTheLatestFirstAndPlansSayWhatTheyCut()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1), stamp, false);
        StoredPlan plan{"p", {"steel", "26 ga", "slate"}, "words"};
        plan.pieces = {{"order1", "E1.1", 2}, {"order1", "E1.2", 1}};
        plan.stockArea = 10.0;
        plan.blankArea = 8.0;
        plan.remnantArea = 1.0;
        replacePlans(database, {plan}, stamp);
        QCOMPARE(piecesOfPlan(database, "p"),
                 (std::vector<PlannedPiece>{{"order1", "E1.2", 1}, {"order1", "E1.1", 2}}));
        QVERIFY(database.write([&] { return markCut(database, "p", stamp); }));
        QVERIFY(waitingPlans(database).empty());
        const auto used = metalUse(database);
        QCOMPARE(used.size(), 1U);
        QCOMPARE(used.front().stockArea - used.front().blankArea - used.front().remnantArea, 1.0);
        for (int number = 0; number < 3; ++number) {
            const std::string name = std::to_string(number);
            QVERIFY(saveLoad(database, "load" + name, "words",
                             {"2026-01-0" + std::to_string(number + 1), "", ""},
                             {"Truck " + name, {2, 0, 9, 40.5, Length::feet(12)}}));
        }
        const auto loads = listLoads(database, {"", 2});
        QCOMPARE(loads.rows.front().truck, std::string("Truck 2"));
        QVERIFY(loads.rows.front().longest == Length::feet(12));
        QCOMPARE(listLoads(database, {loads.next, 2}).rows.size(), 1U);
    }
    void aRevisionTakesBackThePlanThatHoldsItsPieces()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1), stamp, false);
        StoredPlan plan{"p", {"steel", "26 ga", "slate"}, "words"};
        plan.pieces = {{"order1", "E1.1", 2}};
        replacePlans(database, {plan}, stamp);
        IncomingOrder second = order(1);
        second.revision = 2;
        second.hash = "second";
        second.previousHash = "hash1";
        second.pieces.pop_back();
        QCOMPARE(receiveOrder(database, second, stamp, false).reasons.size(), 1U);
        QVERIFY(!waitingPlan(database, "p").has_value());
    }
    void whatLeftOnATruckIsNotToGoAnyMore()
    {
        const Database database = fresh();
        IncomingOrder one = order(1);
        one.pieces.resize(1);
        (void)receiveOrder(database, one, stamp, false);
        const auto move = [&](PieceState state, std::int64_t count) {
            const std::string event = std::string(schedule::name(state)) + std::to_string(count);
            const LoggedEvent moved{event, one.id, "E1.2", {PieceEvent::Kind::Advance, state, count}, ""};
            QVERIFY(database.write([&] { return logEvent(database, moved, stamp); }).ok());
        };
        for (const PieceState state : {PieceState::Cut, PieceState::Folded, PieceState::Bundled})
            move(state, 2);
        move(PieceState::Loaded, 1);
        QCOMPARE(deliveries(database).front().toGo, std::int64_t{1});
        const LoggedEvent last{
            "last", one.id, "E1.2", {PieceEvent::Kind::Advance, PieceState::Loaded, 1}, ""};
        QVERIFY(database.write([&] { return logEvent(database, last, stamp); }).ok());
        QCOMPARE(deliveries(database).front().toGo, std::int64_t{0});
        QCOMPARE(deliveries(database).front().order.unfinished, std::int64_t{2});
    }
    void whatWaitsIsListedAndCanBeDismissed()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1), stamp, false);
        IncomingOrder other = order(1);
        other.hash = "other";
        other.document = "another document";
        QCOMPARE(receiveOrder(database, other, stamp, false).outcome, Arrival::Outcome::Waits);
        const auto waiting = listWaiting(database, {});
        QCOMPARE(waiting.rows.size(), 1U);
        QCOMPARE(waitingDocument(database, "other"), std::string("another document"));
        QVERIFY(dismissWaiting(database, "other", stamp));
        QVERIFY(!dismissWaiting(database, "other", stamp));
        QVERIFY(listWaiting(database, {}).rows.empty());
        QCOMPARE(listArrivals(database, {}).rows.front().outcome, std::string("dismissed"));
        // Who sends it again wants it looked at again.
        QCOMPARE(receiveOrder(database, other, stamp, false).outcome, Arrival::Outcome::Waits);
        QCOMPARE(listWaiting(database, {}).rows.size(), 1U);
        QVERIFY(dismissWaiting(database, "other", stamp));
    }
};

QTEST_GUILESS_MAIN(ListsTest)
#include "tst_lists.moc"
