// Guards: an order taken in once, twice, late or out of sequence ends in the same state; a revision never
// touches what is begun without a person's word; the event log and the counts agree.
#include "storage/databases.h"
#include "storage/document_file.h"
#include "storage/lists.h"
#include "storage/mark_change.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <QtTest>

#include <algorithm>
#include <map>
#include <random>
#include <tuple>

using namespace lapwright;
using namespace lapwright::storage;
using schedule::PieceEvent;
using schedule::PieceState;

namespace {

const Stamp stamp{"2026-01-05T08:00:00Z", "desk", "tester"};

OrderedPiece piece(const std::string& mark, std::int64_t count, const std::string& make = "a")
{
    return {mark, "E1",  "P1", "steel", "26 ga", "slate", Length::inches(6), Length::inches(120),
            900,  count, make};
}

IncomingOrder order(std::int64_t revision, std::vector<OrderedPiece> pieces)
{
    const std::string number = std::to_string(revision);
    const std::string before = revision == 1 ? "" : "hash" + std::to_string(revision - 1);
    return {
        "0b54c3f4",          revision,           "hash" + number,  before, "House", "Customer", "2026-02-01",
        "document" + number, "derived" + number, std::move(pieces)};
}

void advance(const Database& database, const std::string& mark, PieceState state, std::int64_t count)
{
    static int serial = 0;
    const auto logged = database.write([&] {
        return logEvent(database,
                        {"event" + std::to_string(++serial),
                         "0b54c3f4",
                         mark,
                         {PieceEvent::Kind::Advance, state, count},
                         ""},
                        stamp);
    });
    QVERIFY(logged.ok() && *logged);
}

/// Marks with how many are ordered, and the revision that counts.
std::vector<std::pair<std::string, std::int64_t>> state(const Database& database)
{
    std::vector<std::pair<std::string, std::int64_t>> all;
    for (const PieceInState& standing : piecesIn(database, PieceState::Ordered))
        all.emplace_back(standing.piece.mark + standing.piece.make, standing.count);
    std::sort(all.begin(), all.end());
    for (const OrderSummary& summary : currentOrders(database))
        all.emplace_back(summary.id, summary.revision);
    return all;
}

} // namespace

class OrdersTest : public tests::OnBothDatabases {
    Q_OBJECT

private slots:
    void anySequenceEndsTheSame()
    {
        const std::vector<IncomingOrder> revisions = {
            order(1, {piece("E1.1", 2), piece("E1.2", 1)}), order(2, {piece("E1.1", 3), piece("E1.3", 1)}),
            order(3, {piece("E1.1", 1, "b"), piece("E1.3", 1), piece("E1.4", 5)})};
        const Database inOrder = fresh();
        for (const IncomingOrder& revision : revisions)
            QCOMPARE(receiveOrder(inOrder, revision, stamp, false).outcome, Arrival::Outcome::Taken);
        std::mt19937 random(7);
        for (int trial = 0; trial < 20; ++trial) {
            std::vector<IncomingOrder> shuffled = revisions;
            shuffled.insert(shuffled.end(), revisions.begin(), revisions.end());
            std::shuffle(shuffled.begin(), shuffled.end(), random);
            const Database database = fresh();
            for (const IncomingOrder& revision : shuffled)
                QVERIFY(receiveOrder(database, revision, stamp, false).outcome != Arrival::Outcome::Waits);
            QCOMPARE(state(database), state(inOrder));
        }
    }
    void theSameRevisionWithAnotherContentWaits()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        IncomingOrder other = order(1, {piece("E1.1", 9)});
        other.hash = "forged";
        QCOMPARE(receiveOrder(database, other, stamp, true).outcome, Arrival::Outcome::Waits);
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Ordered), 2);
    }
    void aRevisionOfAnotherOneBeforeWaits()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        IncomingOrder stray = order(2, {piece("E1.1", 5)});
        stray.previousHash = "another";
        const Arrival waits = receiveOrder(database, stray, stamp, false);
        QCOMPARE(waits.outcome, Arrival::Outcome::Waits);
        QCOMPARE(waits.reasons.front(),
                 std::string("revision 2 was made from another revision 1 than the one that is here"));
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Ordered), 2);
        QCOMPARE(receiveOrder(database, stray, stamp, true).outcome, Arrival::Outcome::Taken);
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Ordered), 5);
    }
    void aLateRevisionThatIsNotTheOneBeforeWaits()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(2, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        IncomingOrder stray = order(1, {piece("E1.1", 5)});
        stray.hash = "another";
        QCOMPARE(receiveOrder(database, stray, stamp, false).outcome, Arrival::Outcome::Waits);
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 5)}), stamp, false).outcome,
                 Arrival::Outcome::Superseded);
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Ordered), 2);
    }
    void aRevisionAfterCuttingWaitsForAPerson()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2), piece("E1.2", 1)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        advance(database, "E1.1", PieceState::Cut, 1);
        const Arrival waits = receiveOrder(database, order(2, {piece("E1.1", 2, "b")}), stamp, false);
        QCOMPARE(waits.outcome, Arrival::Outcome::Waits);
        QCOMPARE(waits.reasons.size(), 1U);
        QVERIFY(waits.reasons.front().find("E1.1") != std::string::npos);
        const Arrival taken = receiveOrder(database, order(2, {piece("E1.1", 2, "b")}), stamp, true);
        QCOMPARE(taken.outcome, Arrival::Outcome::Taken);
        const auto counts = pieceCounts(database, "0b54c3f4", "E1.1");
        QCOMPARE(counts.of(PieceState::Ordered), 2);
        QCOMPARE(counts.of(PieceState::Cut), 0);
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.2").of(PieceState::Ordered), 0);
    }
    void moreOfAPieceThatIsBegunIsHarmless()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        advance(database, "E1.1", PieceState::Cut, 2);
        QCOMPARE(receiveOrder(database, order(2, {piece("E1.1", 3)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        const auto counts = pieceCounts(database, "0b54c3f4", "E1.1");
        QCOMPARE(counts.of(PieceState::Ordered), 1);
        QCOMPARE(counts.of(PieceState::Cut), 2);
    }
    void fewerOfAPieceScrapsOnlyThoseTooMany()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1, {piece("E1.1", 4)}), stamp, false);
        advance(database, "E1.1", PieceState::Cut, 3);
        advance(database, "E1.1", PieceState::Folded, 1);
        const IncomingOrder fewer = order(2, {piece("E1.1", 2)});
        const auto list = markChanges(database, fewer);
        QCOMPARE(list.size(), 1U);
        QCOMPARE(list.front().surplus(), 1);
        QCOMPARE(list.front().scrap(), 1);
        QCOMPARE(receiveOrder(database, fewer, stamp, false).outcome, Arrival::Outcome::Waits);
        QCOMPARE(receiveOrder(database, fewer, stamp, true).outcome, Arrival::Outcome::Taken);
        const auto counts = pieceCounts(database, "0b54c3f4", "E1.1");
        QCOMPARE(counts.of(PieceState::Ordered), 0);
        QCOMPARE(counts.of(PieceState::Cut), 1);
        QCOMPARE(counts.of(PieceState::Folded), 1);
    }
    void aCancellationCountsWheneverItComes()
    {
        IncomingOrder cancelled = order(2, {piece("E1.1", 2)});
        cancelled.cancelled = true;
        const std::vector<IncomingOrder> revisions = {order(1, {piece("E1.1", 2), piece("E1.2", 1)}),
                                                      cancelled, order(3, {piece("E1.1", 5)})};
        std::vector<std::size_t> sequence = {0, 1, 2};
        do {
            const Database database = fresh();
            for (const std::size_t next : sequence)
                QVERIFY(receiveOrder(database, revisions[next], stamp, false).outcome !=
                        Arrival::Outcome::Waits);
            QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Ordered), 5);
            QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.2").of(PieceState::Ordered), 0);
            QVERIFY(!currentOrders(database).front().cancelled);
        } while (std::next_permutation(sequence.begin(), sequence.end()));
        for (const bool cancelledFirst : {false, true}) {
            const Database database = fresh();
            (void)receiveOrder(database, revisions[cancelledFirst ? 1 : 0], stamp, false);
            (void)receiveOrder(database, revisions[cancelledFirst ? 0 : 1], stamp, false);
            QVERIFY(currentOrders(database).front().cancelled);
            QCOMPARE(orderCounts(database, "0b54c3f4"), schedule::PieceCounts());
        }
    }
    void aCancellationOfWhatIsBegunWaits()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1, {piece("E1.1", 3)}), stamp, false);
        for (const PieceState reached :
             {PieceState::Cut, PieceState::Folded, PieceState::Bundled, PieceState::Loaded})
            advance(database, "E1.1", reached, 1);
        advance(database, "E1.1", PieceState::Cut, 1);
        IncomingOrder cancelled = order(2, {piece("E1.1", 3)});
        cancelled.cancelled = true;
        QCOMPARE(receiveOrder(database, cancelled, stamp, false).outcome, Arrival::Outcome::Waits);
        QCOMPARE(receiveOrder(database, cancelled, stamp, true).outcome, Arrival::Outcome::Taken);
        const auto counts = pieceCounts(database, "0b54c3f4", "E1.1");
        QCOMPARE(counts.of(PieceState::Loaded), 1);
        QCOMPARE(counts.of(PieceState::Ordered) + counts.of(PieceState::Cut), 0);
    }
    void whatLeftOnATruckIsNeverScrapped()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 1)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        for (const PieceState reached :
             {PieceState::Cut, PieceState::Folded, PieceState::Bundled, PieceState::Loaded})
            advance(database, "E1.1", reached, 1);
        QCOMPARE(receiveOrder(database, order(2, {piece("E1.1", 1, "b")}), stamp, true).outcome,
                 Arrival::Outcome::Waits);
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Loaded), 1);
    }
    void theSameEventTwiceIsOneEvent()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        const LoggedEvent event{
            "once", "0b54c3f4", "E1.1", {PieceEvent::Kind::Advance, PieceState::Cut, 1}, ""};
        QVERIFY(database.write([&] { return logEvent(database, event, stamp); }).value());
        QVERIFY(!database.write([&] { return logEvent(database, event, stamp); }).value());
        QCOMPARE(pieceCounts(database, "0b54c3f4", "E1.1").of(PieceState::Cut), 1);
        QCOMPARE(piecesIn(database, PieceState::Cut).size(), 1U);
    }
    void remakesAreCounted()
    {
        const Database database = fresh();
        QCOMPARE(receiveOrder(database, order(1, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        for (const PieceState reached :
             {PieceState::Cut, PieceState::Folded, PieceState::Bundled, PieceState::Loaded})
            advance(database, "E1.1", reached, 2);
        advance(database, "E1.1", PieceState::Received, 1);
        advance(database, "E1.1", PieceState::Damaged, 1);
        const auto waiting = piecesAwaitingRemake(database);
        QCOMPARE(waiting.size(), 1U);
        QCOMPARE(waiting.front().count, 1);
    }
    void aFileThatIsNoDatabaseIsRefused()
    {
        if (onServer())
            return;
        const QString path = filePath("text.db");
        QVERIFY(writeDocument(path.toStdString(), std::string(5000, 'x')).ok());
        const auto opened = Database::open(path.toStdString());
        QVERIFY(!opened.ok());
        QVERIFY(opened.errors().front().sentence().find("text.db") != std::string::npos);
        QVERIFY(!Database::open("/nowhere/at/all.db").ok());
    }
    void aNewerDatabaseIsLeftAlone()
    {
        const std::string address = freshAddress();
        Database::open(address).value().run(onServer() ? "INSERT INTO lapwright_schema (version) VALUES (99)"
                                                       : "PRAGMA user_version = 99");
        const auto opened = Database::open(address);
        QVERIFY(!opened.ok());
        QVERIFY(opened.errors().front().sentence().find("newer") != std::string::npos);
    }
    void aDatabaseThatIsNotThereIsRefused()
    {
        const std::string address = freshAddress();
        const auto opened = Database::open(address, WhenMissing::Refuse);
        QVERIFY(!opened.ok());
        QVERIFY(opened.errors().front().sentence().find("makes a new one") != std::string::npos);
        QVERIFY(Database::open(address).ok());
        QVERIFY(Database::open(address, WhenMissing::Refuse).ok());
    }
    void theLoserOfARaceIsToldWhoWon()
    {
        const std::string address = freshAddress();
        const Database slitter = Database::open(address).value();
        const Database shear = Database::open(address).value();
        QCOMPARE(receiveOrder(slitter, order(1, {piece("E1.1", 1)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        const auto cut = [](const Database& database, const std::string& id, const Stamp& who) {
            return database.write([&] {
                return logEvent(database,
                                {id, "0b54c3f4", "E1.1", {PieceEvent::Kind::Advance, PieceState::Cut, 1}, ""},
                                who);
            });
        };
        QVERIFY(cut(slitter, "first", {"2026-01-05T08:00:00Z", "slitter", "Ann"}).ok());
        const auto late = cut(shear, "second", {"2026-01-05T08:00:01Z", "shear", "Bo"});
        QVERIFY(!late.ok());
        const std::string told = late.errors().front().sentence();
        QVERIFY2(told.find("last: cut, 2026-01-05T08:00:00Z at slitter by Ann") != std::string::npos,
                 told.c_str());
        QCOMPARE(pieceCounts(shear, "0b54c3f4", "E1.1").of(PieceState::Cut), 1);
    }
    void anyPrefixOfTheLogReplays()
    {
        const Database database = fresh();
        std::mt19937 random(11);
        (void)receiveOrder(database, order(1, {piece("E1.1", 4), piece("E1.2", 3)}), stamp, false);
        std::map<std::int64_t, schedule::PieceCounts> seen;
        const auto remember = [&] {
            const auto events = listEvents(database, "", "", {});
            seen[events.rows.front().number] = pieceCounts(database, "0b54c3f4", "E1.1");
        };
        for (int step = 0; step < 60; ++step) {
            const auto state = static_cast<PieceState>(1 + random() % (schedule::pieceStates - 1));
            const PieceEvent::Kind kind = step % 7 == 6 ? PieceEvent::Kind::Scrap : PieceEvent::Kind::Advance;
            (void)database.write([&] {
                return logEvent(database,
                                {"step" + std::to_string(step), "0b54c3f4", "E1.1", {kind, state, 1}, ""},
                                stamp);
            });
            remember();
        }
        QVERIFY(seen.size() > 5);
        for (const auto& [number, counts] : seen)
            QVERIFY(replay(database, number).value().at({"0b54c3f4", "E1.1"}) == counts);
    }
    void countsCanBeBuiltAnewFromTheLog()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1, {piece("E1.1", 4), piece("E1.2", 3)}), stamp, false);
        advance(database, "E1.1", PieceState::Cut, 3);
        advance(database, "E1.1", PieceState::Folded, 1);
        const auto before =
            std::make_tuple(pieceCounts(database, "0b54c3f4", "E1.1"), orderCounts(database, "0b54c3f4"),
                            shopCounts(database), currentOrders(database));
        for (const char* table : {"piece_counts", "order_counts", "shop_counts"})
            database.run(QString("UPDATE ") + table + " SET count = 77");
        QVERIFY(rebuildCounts(database).ok());
        QVERIFY(before == std::make_tuple(pieceCounts(database, "0b54c3f4", "E1.1"),
                                          orderCounts(database, "0b54c3f4"), shopCounts(database),
                                          currentOrders(database)));
        QCOMPARE(std::get<3>(before).front().unfinished, std::int64_t{7});
    }
    void everyWriteMovesTheDataVersionOn()
    {
        const std::string address = freshAddress();
        const Database mine = Database::open(address).value();
        const Database theirs = Database::open(address).value();
        const std::int64_t before = mine.dataVersion();
        QCOMPARE(mine.dataVersion(), before);
        (void)receiveOrder(theirs, order(1, {piece("E1.1", 4)}), stamp, false);
        QVERIFY(mine.dataVersion() > before);
    }
    void aCancelledOrderWithdrawsWhatIsNotBegun()
    {
        const Database database = fresh();
        (void)receiveOrder(database, order(1, {piece("E1.1", 4), piece("E1.2", 3)}), stamp, false);
        advance(database, "E1.1", PieceState::Cut, 3);
        const auto waits = cancelOrder(database, "0b54c3f4", stamp, false);
        QCOMPARE(waits->outcome, Arrival::Outcome::Waits);
        QCOMPARE(waits->reasons, std::vector<std::string>{"3 of E1.1 is cut or folded and would be scrap"});
        QCOMPARE(orderCounts(database, "0b54c3f4").of(PieceState::Ordered), 4);
        QCOMPARE(cancelOrder(database, "0b54c3f4", stamp, true)->outcome, Arrival::Outcome::Taken);
        QVERIFY(orderCounts(database, "0b54c3f4") == schedule::PieceCounts());
        QVERIFY(currentOrders(database).front().cancelled);
        QVERIFY(!cancelOrder(database, "no-such-order", stamp, true).ok());
        QCOMPARE(receiveOrder(database, order(2, {piece("E1.1", 2)}), stamp, false).outcome,
                 Arrival::Outcome::Taken);
        QCOMPARE(orderCounts(database, "0b54c3f4").of(PieceState::Ordered), 2);
        QVERIFY(!currentOrders(database).front().cancelled);
    }
    void ordersOfOneHouseAreFoundByAddress()
    {
        const Database database = fresh();
        IncomingOrder first = order(1, {piece("E1.1", 1)});
        first.address = "12 Example Lane, Sampleton";
        IncomingOrder second = order(1, {piece("E1.1", 1)});
        second.id = "another";
        second.address = "12  EXAMPLE lane sampleton";
        IncomingOrder elsewhere = order(1, {piece("E1.1", 1)});
        elsewhere.id = "elsewhere";
        for (const IncomingOrder& one : {first, second, elsewhere})
            (void)receiveOrder(database, one, stamp, false);
        QCOMPARE(ordersOfSameHouse(database, "another").size(), 1U);
        QCOMPARE(ordersOfSameHouse(database, "another").front().id, first.id);
        QVERIFY(ordersOfSameHouse(database, "elsewhere").empty());
    }
};

QTEST_GUILESS_MAIN(OrdersTest)
#include "tst_orders.moc"
