// Guards: a copy of the database is whole and can be restored, at every station at once; what is no copy of
// this program's changes nothing; a server is left to its own tools.
#include "storage/backup.h"
#include "storage/databases.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <QFile>

using namespace lapwright;
using namespace lapwright::storage;

namespace {

const Stamp stamp{"2026-01-05T08:00:00Z", "desk", "tester"};

IncomingOrder order(const std::string& id)
{
    IncomingOrder order{id,           1,          "hash " + id, "", "House " + id, "Customer",
                        "2026-02-01", "document", "derived",    {}};
    order.pieces.push_back(
        {"E1.1", "E1", "P1", "steel", "26 ga", "slate", Length::inches(6), Length::inches(120), 900, 2, "a"});
    return order;
}

} // namespace

class BackupTest : public tests::OnBothDatabases {
    Q_OBJECT

private slots:
    void aCopyIsRestoredAtEveryStation()
    {
        const std::string address = freshAddress();
        const Database desk = Database::open(address).value(), machine = Database::open(address).value();
        const std::string copy = filePath("copy.db").toStdString();
        (void)receiveOrder(desk, order("one"), stamp, false);
        if (onServer()) {
            QVERIFY(!backUp(desk, copy).ok());
            QVERIFY(!restore(desk, copy).ok());
            return;
        }
        for (int twice = 0; twice < 2; ++twice)
            QVERIFY(backUp(desk, copy).ok());
        (void)receiveOrder(desk, order("two"), stamp, false);
        QVERIFY(desk.write([&] {
            return logEvent(desk,
                            {"event",
                             "one",
                             "E1.1",
                             {schedule::PieceEvent::Kind::Advance, schedule::PieceState::Cut, 1},
                             ""},
                            stamp)
                .ok();
        }));
        const std::int64_t before = machine.dataVersion();
        const auto restored = restore(desk, copy);
        QVERIFY2(restored.ok(), restored.ok() ? "" : restored.errors().front().sentence().c_str());
        QVERIFY(machine.dataVersion() > before);
        QCOMPARE(currentOrders(machine).size(), 1U);
        QCOMPARE(pieceCounts(machine, "one", "E1.1").of(schedule::PieceState::Ordered), std::int64_t{2});
        // The shop works on, and its log tells what the counts tell.
        (void)receiveOrder(machine, order("three"), stamp, false);
        QCOMPARE(currentOrders(desk).size(), 2U);
        QVERIFY(replay(desk).ok());
        QCOMPARE(currentOrders(Database::open(copy).value()).size(), 1U);
    }
    void whatIsNoCopyChangesNothing()
    {
        if (onServer())
            return;
        const Database database = fresh();
        (void)receiveOrder(database, order("one"), stamp, false);
        QFile empty(filePath("empty.db")), words(filePath("words.db"));
        QVERIFY(empty.open(QFile::WriteOnly) && words.open(QFile::WriteOnly));
        words.write("words, not a database");
        words.close();
        const std::int64_t before = database.dataVersion();
        for (const QString& path : {empty.fileName(), words.fileName(), filePath("nowhere.db")})
            QVERIFY(!restore(database, path.toStdString()).ok());
        QVERIFY(!backUp(database, filePath("no/such/folder/copy.db").toStdString()).ok());
        QCOMPARE(database.dataVersion(), before);
        QCOMPARE(currentOrders(database).size(), 1U);
    }
};

QTEST_GUILESS_MAIN(BackupTest)
#include "tst_backup.moc"
