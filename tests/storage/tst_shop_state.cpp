// Guards: stock, cut plans, loads and receipts stay in the database as they were given, over closing and
// opening it; the same load or receipt twice is one; a new plan replaces what is not cut and nothing else.
// What cannot be read is not taken for the end of what there is.
#include "storage/databases.h"
#include "storage/health.h"
#include "storage/orders.h"
#include "storage/piece_events.h"
#include "storage/progress.h"
#include "storage/shop_state.h"
#include "storage/spoilt_page.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::storage;
using schedule::PieceEvent;
using schedule::PieceState;

namespace {

const Stamp early{"2026-01-05T08:00:00Z", "desk", "tester"};
const Stamp late{"2026-01-05T09:00:00Z", "desk", "tester"};
const site::Material slate{"galvanised-steel", "24 ga", "Slate"};
const site::Material ivory{"aluminium-3105", "0.032 in", "Ivory"};

std::vector<std::string> idsOf(const std::vector<StoredPlan>& plans)
{
    std::vector<std::string> ids;
    for (const StoredPlan& plan : plans)
        ids.push_back(plan.id);
    return ids;
}

} // namespace

class ShopStateTest : public tests::OnBothDatabases {
    Q_OBJECT

private slots:
    void stockStandsAsLastGiven()
    {
        const std::string address = freshAddress();
        {
            const Database database = Database::open(address).value();
            QVERIFY(!stockDocument(database).has_value());
            saveStockDocument(database, "first");
            saveStockDocument(database, "second é \" '");
        }
        QCOMPARE(*stockDocument(Database::open(address).value()), std::string("second é \" '"));
    }
    void rowsThatCannotBeReadAreNotTheLast()
    {
        if (onServer())
            return;
        const std::string address = freshAddress();
        {
            const Database database = Database::open(address).value();
            database.write([&] {
                for (int number = 1; number <= 2'000; ++number)
                    database.run("INSERT INTO settings (key, value) VALUES (?, ?)",
                                 {QString("note %1").arg(number), QString("word %1 of many").arg(number)});
            });
        }
        QVERIFY(tests::spoilPage(QString::fromStdString(address), "word 1500 of many"));
        const Database database = Database::open(address).value();
        const auto count = [&database] {
            Rows rows = database.query("SELECT value FROM settings");
            int read = 0;
            while (rows.next())
                ++read;
            return read;
        };
        QVERIFY_EXCEPTION_THROWN(count(), StorageFailure);
        QVERIFY(!examine(database).damage.empty());
    }
    void floorAndScheduleAreKeptApart()
    {
        const Database database = Database::open(freshAddress()).value();
        QVERIFY(!floorDocument(database).has_value() && !scheduleDocument(database).has_value());
        saveFloorDocument(database, "floor");
        QVERIFY(!scheduleDocument(database).has_value());
        saveScheduleDocument(database, "monday");
        saveScheduleDocument(database, "tuesday");
        QCOMPARE(*floorDocument(database), std::string("floor"));
        QCOMPARE(*scheduleDocument(database), std::string("tuesday"));
        QVERIFY(!stockDocument(database).has_value());
    }
    void ratesThatDoNotHoldAreDamage()
    {
        const Database database = fresh();
        QVERIFY(examine(database).sound());
        database.write([&] { saveRatesDocument(database, "no rates"); });
        QVERIFY(!examine(database).sound());
    }
    void aNewPlanReplacesWhatIsNotCut()
    {
        const Database database = Database::open(freshAddress()).value();
        replacePlans(database, {{"a", slate, "plan a"}, {"b", ivory, "plan b"}}, early);
        QCOMPARE(idsOf(waitingPlans(database)), (std::vector<std::string>{"b", "a"}));
        QCOMPARE(waitingPlans(database)[1].document, std::string("plan a"));
        QVERIFY(waitingPlans(database)[1].material == slate);
        QVERIFY(database.write([&] { return markCut(database, "a", late); }));
        QVERIFY(!database.write([&] { return markCut(database, "a", late); }));
        QCOMPARE(idsOf(waitingPlans(database)), std::vector<std::string>{"b"});
        replacePlans(database, {{"c", slate, "plan c"}}, late);
        QCOMPARE(idsOf(waitingPlans(database)), std::vector<std::string>{"c"});
        replacePlans(database, {}, late);
        QVERIFY(waitingPlans(database).empty());
    }
    void aTickSaysWhoseItIs()
    {
        const Database database = Database::open(freshAddress()).value();
        replacePlans(database, {{"a", slate, "plan a"}}, early);
        const Stamp ann{"2026-01-05T08:30:00Z", "shear", "Ann"};
        QVERIFY(tickPattern(database, "a", 0, true, ann));
        QVERIFY(tickPattern(database, "a", 2, true, ann));
        QVERIFY(tickPattern(database, "a", 0, true, late)); // who was first is kept
        QVERIFY(!tickPattern(database, "b", 0, true, ann));
        const auto ticks = tickedPatterns(database);
        QCOMPARE(ticks.at("a").size(), 2U);
        QCOMPARE(ticks.at("a").at(0).at, ann.at);
        QCOMPARE(ticks.at("a").at(0).station, ann.station);
        QCOMPARE(ticks.at("a").at(0).person, ann.person);
        QVERIFY(tickPattern(database, "a", 2, false, late));
        QCOMPARE(tickedPatterns(database).at("a").size(), 1U);
    }
    void whatBecameOfAPlanIsKnown()
    {
        using State = PlanProgress::State;
        const Database database = Database::open(freshAddress()).value();
        replacePlans(database, {{"a", slate, "plan a"}, {"b", ivory, "plan b"}}, early);
        QVERIFY(!planProgress(database, "c"));
        QVERIFY(planProgress(database, "a")->state == State::Waiting);
        QVERIFY(planProgress(database, "a")->ticked.empty());
        QVERIFY(tickPattern(database, "a", 1, true, late));
        QCOMPARE(planProgress(database, "a")->ticked, std::set<std::size_t>{1});
        QVERIFY(database.write([&] { return markCut(database, "a", late); }));
        QVERIFY(planProgress(database, "a")->state == State::Cut);
        QCOMPARE(planProgress(database, "a")->ticked, std::set<std::size_t>{1});
        replacePlans(database, {}, late);
        QVERIFY(planProgress(database, "b")->state == State::TakenBack);
    }
    void aPlanOfATakenIdentityChangesNothing()
    {
        const Database database = Database::open(freshAddress()).value();
        replacePlans(database, {{"a", slate, "plan a"}}, early);
        QVERIFY_EXCEPTION_THROWN(
            replacePlans(database, {{"b", slate, "plan b"}, {"a", slate, "again"}}, late), StorageFailure);
        QCOMPARE(idsOf(waitingPlans(database)), std::vector<std::string>{"a"});
    }
    void aLoadTwiceIsOneLoad()
    {
        const Database database = Database::open(freshAddress()).value();
        QVERIFY(!loadDocument(database, "first").has_value());
        QVERIFY(saveLoad(database, "second", "later", late));
        QVERIFY(saveLoad(database, "first", "words", early));
        QVERIFY(!saveLoad(database, "first", "other words", late));
        QCOMPARE(*loadDocument(database, "first"), std::string("words"));
        QCOMPARE(loadDocuments(database), (std::vector<std::string>{"words", "later"}));
    }
    void aReceiptTwiceIsOneReceipt()
    {
        const Database database = Database::open(freshAddress()).value();
        QVERIFY(saveReceipt(database, "r", "load", "words", early));
        QVERIFY(!saveReceipt(database, "r", "load", "words", late));
        QVERIFY(saveReceipt(database, "s", "load", "words", late));
    }
    void theOrderOfTheLatestRevisionIsGiven()
    {
        const Database database = Database::open(freshAddress()).value();
        QVERIFY(!derivedOrder(database, "o").has_value());
        QVERIFY(!currentRevision(database, "o").has_value());
        IncomingOrder order{"o", 2, "hash2", "hash1", "House", "Customer", "", "doc 2", "derived 2", {}};
        QCOMPARE(receiveOrder(database, order, early, false).outcome, Arrival::Outcome::Taken);
        order = {"o", 1, "hash1", "", "House", "Customer", "", "doc 1", "derived 1", {}};
        QCOMPARE(receiveOrder(database, order, late, false).outcome, Arrival::Outcome::Superseded);
        QCOMPARE(*derivedOrder(database, "o"), std::string("derived 2"));
        QCOMPARE(*currentRevision(database, "o"), std::int64_t{2});
    }
    void anotherRevisionHasAnotherIdentity()
    {
        const Database database = Database::open(freshAddress()).value();
        QVERIFY(!derivedIdentity(database, "o").has_value());
        IncomingOrder order{"o", 2, "hash2", "hash1", "House", "Customer", "", "doc 2", "derived 2", {}};
        (void)receiveOrder(database, order, early, false);
        const auto second = derivedIdentity(database, "o");
        order = {"o", 1, "hash1", "", "House", "Customer", "", "doc 1", "derived 1", {}};
        (void)receiveOrder(database, order, late, false);
        QCOMPARE(*derivedIdentity(database, "o"), *second);
        order = {"o", 3, "hash3", "hash2", "House", "Customer", "", "doc 3", "derived 3", {}};
        QCOMPARE(receiveOrder(database, order, late, false).outcome, Arrival::Outcome::Taken);
        QVERIFY(*derivedIdentity(database, "o") != *second);
        // Elsewhere the same document may have been derived with another library.
        const Database other = Database::open(freshAddress()).value();
        (void)receiveOrder(other, order, early, true);
        QVERIFY(*derivedIdentity(other, "o") != *derivedIdentity(database, "o"));
    }
    void countsOfAnOrderAddUpItsMarks()
    {
        const Database database = Database::open(freshAddress()).value();
        const auto piece = [](const char* mark, std::int64_t count) {
            return OrderedPiece{
                mark, "E1",  "P1", "steel", "26 ga", "slate", Length::inches(6), Length::inches(120),
                900,  count, "a"};
        };
        const IncomingOrder order{"o",        1,  "hash", "",        "House",
                                  "Customer", "", "doc",  "derived", {piece("E1.1", 3), piece("E1.2", 2)}};
        QCOMPARE(receiveOrder(database, order, early, false).outcome, Arrival::Outcome::Taken);
        int serial = 0;
        for (const char* mark : {"E1.1", "E1.2"})
            QVERIFY(database
                        .write([&] {
                            return logEvent(database,
                                            {"event" + std::to_string(++serial),
                                             "o",
                                             mark,
                                             {PieceEvent::Kind::Advance, PieceState::Cut, 2},
                                             ""},
                                            early);
                        })
                        .ok());
        const schedule::PieceCounts counts = orderCounts(database, "o");
        QCOMPARE(counts.of(PieceState::Cut), std::int64_t{4});
        QCOMPARE(counts.of(PieceState::Ordered), std::int64_t{1});
        QVERIFY(orderCounts(database, "another") == schedule::PieceCounts());
    }
};

QTEST_GUILESS_MAIN(ShopStateTest)
#include "tst_shop_state.moc"
