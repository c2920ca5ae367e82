// Guards: a shop's day at two windows on one PostgreSQL; a connection that is lost is said, made anew by
// itself, and loses neither what is typed nor what the other station did meanwhile; two programs on one
// SQLite file.
#include "shop_bench.h"
#include "storage/databases.h"

using namespace lapwright;
using namespace lapwright::tests;

namespace {

/// A station of that name at its window.
struct Station : AtWindow {
    Station(const QString& address, const QTemporaryDir& folder, const QString& name)
        : AtWindow(*Shop::open(address, folder.filePath(name + ".ini"), {}))
    {
        shop->preferences()->setStation(name);
    }

    /// Presses space until nothing of `rows` is left.
    void pressThrough(const model::RowsModel* rows) const
    {
        for (int press = 0; rows->count() > 0 && press < 5'000; ++press)
            QTest::keyClick(window, Qt::Key_Space);
        QCOMPARE(rows->count(), 0);
    }
};

} // namespace

class TwoStationsTest : public OnBothDatabases {
    Q_OBJECT

private slots:
    void aDayAtTwoWindows()
    {
        const QTemporaryDir folder;
        const QString address = QString::fromStdString(freshAddress());
        const Station office(address, folder, "office"), machine(address, folder, "machine");
        QVERIFY(office.window != nullptr && machine.window != nullptr);
        machine.shop->preferences()->setDuty(model::Preferences::Duty::Operator);
        machine.go(Qt::Key_3);
        office.shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        office.shop->arrivals()->takeFiles({orderOf("hollin", folder), orderOf("depot", folder)});
        QCOMPARE(office.shop->arrivals()->orders()->count(), 2);
        office.go(Qt::Key_2);
        plan(*office.shop);

        // The sheets come to the machine by themselves, and what is cut and folded there goes from the
        // office.
        QTRY_VERIFY(machine.shop->cutting()->sheets()->count() > 0);
        machine.go(Qt::Key_3);
        machine.pressThrough(machine.shop->cutting()->sheets());
        QTRY_COMPARE(office.shop->batches()->batches()->count(), 0);
        machine.go(Qt::Key_4);
        QVERIFY(machine.shop->folding()->stepCount() > 0);
        QTest::keyClick(machine.window, Qt::Key_Space);
        QVERIFY(machine.shop->folding()->stepIndex() == 1 || machine.shop->folding()->stepCount() == 1);
        foldEverything(*machine.shop);

        office.go(Qt::Key_6);
        QTRY_VERIFY(office.shop->loads()->ready()->count() > 0);
        office.shop->loads()->makeLoad("truck 1");
        const QUrl load = QUrl::fromLocalFile(folder.filePath("load.json"));
        office.shop->loads()->saveLoad(load);
        office.shop->loads()->takeReceipt(receiptOf(load, folder));
        QCOMPARE(office.shop->loads()->remakes()->count(), 1);
        office.shop->loads()->remakeAll();
        QVERIFY2(!office.shop->trouble(), qPrintable(office.shop->message()));

        // The remake goes the same way.
        plan(*office.shop);
        machine.go(Qt::Key_3);
        QTRY_COMPARE(machine.shop->cutting()->sheets()->count(), 1);
        machine.pressThrough(machine.shop->cutting()->sheets());
        foldEverything(*machine.shop);
        office.go(Qt::Key_6);
        QTRY_COMPARE(office.shop->loads()->ready()->count(), 1);
    }

    void aLostConnectionIsSaidAndMadeAnew()
    {
        if (!onServer())
            return;
        const QTemporaryDir folder;
        const QString address = QString::fromStdString(freshAddress());
        const QString name = address.section('/', -1).section('?', 0, 0);
        const auto server =
            storage::Database::open(this->server().addressOf("postgres", "owner").toStdString());
        const Station station(address, folder, "machine");
        QVERIFY(station.window != nullptr);
        station.go(Qt::Key_6);
        QQuickItem* truck = named(station.window->contentItem(), "truck");
        QVERIFY(truck != nullptr);
        truck->setProperty("text", "Red truck");
        QVERIFY(station.shop->lost().isEmpty());

        server->run("ALTER DATABASE " + name + " ALLOW_CONNECTIONS false");
        server->run("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '" + name + "'");
        QTRY_VERIFY(!station.shop->lost().isEmpty());
        station.shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        QVERIFY(station.shop->trouble());
        QTest::qWait(2'000); // it is tried, and not let in
        QVERIFY(!station.shop->lost().isEmpty());

        server->run("ALTER DATABASE " + name + " ALLOW_CONNECTIONS true");
        const auto other = Shop::open(address, folder.filePath("office.ini"), {});
        (*other)->arrivals()->takeFiles({orderOf("depot", folder)});
        QVERIFY2(!(*other)->trouble(), qPrintable((*other)->message()));
        QTRY_VERIFY(station.shop->lost().isEmpty());
        QCOMPARE(truck->property("text").toString(), QString("Red truck"));
        station.go(Qt::Key_1);
        QCOMPARE(station.shop->arrivals()->orders()->count(), 1);
        station.shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        QVERIFY2(!station.shop->trouble(), qPrintable(station.shop->message()));
        QCOMPARE(station.shop->arrivals()->orders()->count(), 2);
    }
};

QTEST_MAIN(TwoStationsTest)
#include "tst_two_stations.moc"
