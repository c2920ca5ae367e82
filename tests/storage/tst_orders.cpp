// Guards: an order taken in once, twice, late or out of sequence ends in the same state; a revision never
// touches what is begun without a person's word; the event log and the counts agree.
#include "storage/document_file.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <QTemporaryDir>
#include <QtTest>

#include <algorithm>
#include <random>

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

class OrdersTest : public QObject {
    Q_OBJECT

    QTemporaryDir folder_;
    int databases_ = 0;

    Database fresh()
    {
        return Database::open(folder_.filePath(QString("%1.db").arg(++databases_)).toStdString()).value();
    }

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
        const QString path = folder_.filePath("text.db");
        QVERIFY(writeDocument(path.toStdString(), std::string(5000, 'x')).ok());
        const auto opened = Database::open(path.toStdString());
        QVERIFY(!opened.ok());
        QVERIFY(opened.errors().front().sentence().find("text.db") != std::string::npos);
        QVERIFY(!Database::open("/nowhere/at/all.db").ok());
    }
    void aNewerDatabaseIsLeftAlone()
    {
        const std::string path = folder_.filePath("newer.db").toStdString();
        Database::open(path).value().run("PRAGMA user_version = 99");
        const auto opened = Database::open(path);
        QVERIFY(!opened.ok());
        QVERIFY(opened.errors().front().sentence().find("newer") != std::string::npos);
    }
};

QTEST_GUILESS_MAIN(OrdersTest)
#include "tst_orders.moc"
