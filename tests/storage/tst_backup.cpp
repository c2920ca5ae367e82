// Guards: a copy of the database is whole and can be restored, at every station at once, also one that was
// taken while another station wrote; nobody but its owner reads it; what is no copy of this program's, or
// damaged, changes nothing; a server is left to its own tools.
#include "storage/backup.h"
#include "storage/databases.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <cstdio>

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

/// Takes in orders without end, until it is killed.
int receiveForever(const std::string& address)
{
    const Database database = Database::open(address).value();
    for (int number = 0;; ++number) {
        (void)receiveOrder(database, order("house" + std::to_string(number)), stamp, false);
        if (number == 3) {
            std::printf("working\n");
            std::fflush(stdout);
        }
    }
}

/// Nothing of any order is missing, and the log tells what is there; how many orders there are.
std::size_t wholeOrders(const Database& database)
{
    const std::vector<OrderSummary> orders = currentOrders(database);
    for (const OrderSummary& one : orders)
        if (orderCounts(database, one.id).of(schedule::PieceState::Ordered) != 2)
            return 0;
    return replay(database).value().size() == orders.size() && database.engineFaults().empty() ? orders.size()
                                                                                               : 0;
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
    void aCopyTakenWhileAnotherStationWritesIsWhole()
    {
        if (onServer())
            return;
        const std::string address = freshAddress(), copy = filePath("mid-write.db").toStdString();
        const Database desk = Database::open(address).value();
        QProcess writer;
        writer.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        writer.start(QCoreApplication::applicationFilePath(), {"--receive", QString::fromStdString(address)});
        QVERIFY(writer.waitForReadyRead(60'000));
        std::size_t before = 0;
        for (int round = 0; round < 5; ++round) {
            QVERIFY(backUp(desk, copy).ok());
            const std::size_t orders = wholeOrders(Database::open(copy).value());
            QVERIFY2(orders > before, "the writer was at work between two copies");
            before = orders;
        }
        QCOMPARE(writer.state(), QProcess::Running);
        writer.kill();
        QVERIFY(writer.waitForFinished(30'000));
        QVERIFY(wholeOrders(desk) > before);
        QVERIFY(restore(desk, copy).ok());
        QCOMPARE(wholeOrders(desk), before);
    }
    void onlyItsOwnerReadsACopy()
    {
        if (onServer())
            return;
        const QString path = filePath("private.db");
        QVERIFY(backUp(fresh(), path.toStdString()).ok());
        QCOMPARE(QFileInfo(path).permissions() & ~(QFile::ReadUser | QFile::WriteUser),
                 QFile::ReadOwner | QFile::WriteOwner);
        QVERIFY(!QFileInfo::exists(path + ".part"));
    }
    void theDatabaseIsNotCopiedOntoItself()
    {
        if (onServer())
            return;
        const QString path = filePath("itself.db");
        const Database database = Database::open(path.toStdString()).value();
        (void)receiveOrder(database, order("one"), stamp, false);
        QVERIFY(!backUp(database, path.toStdString()).ok());
        QVERIFY(!backUp(database, QFileInfo(path).absolutePath().toStdString() + "/./itself.db").ok());
        (void)receiveOrder(database, order("two"), stamp, false);
        QCOMPARE(wholeOrders(Database::open(path.toStdString()).value()), 2U);
    }
    void aDamagedCopyChangesNothing()
    {
        if (onServer())
            return;
        const Database database = fresh();
        (void)receiveOrder(database, order("one"), stamp, false);
        const QString path = filePath("damaged.db");
        QVERIFY(backUp(database, path.toStdString()).ok());
        (void)receiveOrder(database, order("two"), stamp, false);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadWrite));
        // All but the first page, which says what this is.
        file.seek(4096);
        file.write(QByteArray(static_cast<int>(file.size()) - 4096, 'x'));
        file.close();
        QVERIFY(!restore(database, path.toStdString()).ok());
        QCOMPARE(wholeOrders(database), 2U);
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

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == "--receive")
        return receiveForever(arguments[2].toStdString());
    BackupTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_backup.moc"
