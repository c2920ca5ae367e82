// Guards: a shop's whole day, from two order files to a receipt and a remake, through the desks behind the
// screens and through the window itself; a viewer can do nothing; another station's work is seen.
#include "acts/catalogue.h"
#include "acts/identity.h"
#include "acts/incoming.h"
#include "documents/job.h"
#include "documents/order.h"
#include "documents/shop.h"
#include "shop.h"
#include "source_directory.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>

using namespace lapwright;
using model::Preferences;
using model::Shop;

namespace {

constexpr int longest = 60'000;

QString demo(const QString& file)
{
    return QString::fromStdString(sourceDirectory() + "/demo/") + file;
}

/// The order of a demo house as the installer would send it; with `more` to the customer's name another
/// content.
QUrl orderOf(const QString& house, const QTemporaryDir& folder, const std::string& id = acts::newUuid(),
             const std::string& more = {})
{
    const auto catalogue = storage::loadCatalogue({});
    const auto text = storage::readDocument(demo(house + ".job.json").toStdString());
    const auto job = documents::readJob(*text);
    pieces::Order order = acts::takeOff(job->value, *catalogue);
    order.id = id;
    order.job.customer += more;
    const QString path = folder.filePath(house + QString::fromStdString(more) + ".order.json");
    const auto written = storage::writeDocument(path.toStdString(), documents::writeOrder({order, {}}));
    Q_ASSERT(written.ok());
    return QUrl::fromLocalFile(path);
}

std::unique_ptr<Shop> open(const QTemporaryDir& folder, const QString& station = "station")
{
    auto shop = Shop::open(folder.filePath("shop.db"), folder.filePath(station + ".ini"), {});
    return shop.ok() ? *std::move(shop) : nullptr;
}

/// The shop's window, active; nullptr if it does not load.
QQuickWindow* windowOf(Shop& shop, QQmlApplicationEngine& engine)
{
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{"shop", QVariant::fromValue(&shop)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lapwright/Shop/Main.qml")));
    if (engine.rootObjects().isEmpty())
        return nullptr;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    window->requestActivate();
    return QTest::qWaitForWindowActive(window) ? window : nullptr;
}

/// The control of that name below `item`; nullptr if there is none.
QQuickItem* named(QQuickItem* item, const QString& name)
{
    if (item->property("name").toString() == name)
        return item;
    for (QQuickItem* child : item->childItems())
        if (QQuickItem* found = named(child, name))
            return found;
    return nullptr;
}

/// Everything on the load came but one piece, which came damaged.
QUrl receiptOf(const QUrl& loadFile, const QTemporaryDir& folder)
{
    const auto load = documents::readLoad(*storage::readDocument(loadFile.toLocalFile().toStdString()));
    schedule::Receipt receipt;
    receipt.id = acts::newUuid();
    receipt.load = load->value.id;
    bool first = true;
    for (const schedule::Bundle& bundle : load->value.bundles)
        for (const schedule::LoadedPiece& piece : bundle.pieces) {
            schedule::ReceiptEvent event;
            event.id = acts::newUuid();
            event.order = bundle.order;
            event.mark = piece.mark;
            event.found = first ? schedule::PieceState::Damaged : schedule::PieceState::Received;
            event.count = first ? 1 : piece.count;
            event.at = "2026-12-10T09:30:00Z";
            first = false;
            receipt.events.push_back(event);
        }
    const QString path = folder.filePath("receipt.json");
    const auto written = storage::writeDocument(path.toStdString(), documents::writeReceipt({receipt, {}}));
    Q_ASSERT(written.ok());
    return QUrl::fromLocalFile(path);
}

} // namespace

class TestShopDay : public QObject {
    Q_OBJECT

private:
    static void plan(Shop& shop)
    {
        shop.preferences()->setPlanSeconds(1);
        shop.batches()->setActive(true);
        QSignalSpy progress(shop.batches(), &model::Batches::progressChanged);
        shop.batches()->plan();
        QVERIFY(shop.batches()->planning());
        QTRY_VERIFY_WITH_TIMEOUT(!shop.batches()->planning(), longest);
        QVERIFY(progress.size() >= 2);
    }

    static void cutEverything(Shop& shop)
    {
        model::CuttingDesk* desk = shop.cutting();
        desk->setActive(true);
        for (int sheet = 0; desk->sheets()->count() > 0 && sheet < 500; ++sheet) {
            QVERIFY(!desk->map().empty());
            desk->tick();
        }
        QCOMPARE(desk->sheets()->count(), 0);
    }

    static void foldEverything(Shop& shop)
    {
        model::FoldingDesk* desk = shop.folding();
        desk->setActive(true);
        for (int lot = 0; desk->lots()->count() > 0 && lot < 200; ++lot) {
            QVERIFY2(desk->refusal().isEmpty(), qPrintable(desk->refusal()));
            QVERIFY(!desk->picture().empty());
            desk->lotFolded();
        }
        QCOMPARE(desk->lots()->count(), 0);
    }

private slots:
    void fromTwoOrdersToARemake()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        QVERIFY(shop);
        shop->stock()->setActive(true);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QVERIFY2(!shop->trouble() && shop->stock()->items()->count() > 0, qPrintable(shop->message()));

        shop->arrivals()->setActive(true);
        shop->arrivals()->takeFiles({orderOf("hollin", folder), orderOf("larkfield", folder)});
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->arrivals()->orders()->count(), 2);
        QVERIFY(!shop->arrivals()->preview()->plan().empty());
        QVERIFY(!shop->arrivals()->preview()->profile().empty());

        plan(*shop);
        QVERIFY(shop->batches()->batches()->count() > 0);
        shop->schedule()->setActive(true);
        QVERIFY(shop->schedule()->days()->count() > 0);
        QVERIFY(!shop->schedule()->picture().empty());
        // The last task of the last day lies ahead whenever this runs.
        shop->schedule()->setCurrentDay(
            shop->schedule()->days()->idAt(shop->schedule()->days()->count() - 1));
        shop->schedule()->setCurrentTask(
            shop->schedule()->tasks()->idAt(shop->schedule()->tasks()->count() - 1));
        QVERIFY(!shop->schedule()->currentPinned());
        shop->schedule()->togglePin();
        QTRY_VERIFY_WITH_TIMEOUT(!shop->schedule()->working(), longest);
        QVERIFY2(shop->schedule()->currentPinned(), qPrintable(shop->message()));

        cutEverything(*shop);
        QCOMPARE(shop->batches()->batches()->count(), 0);
        foldEverything(*shop);

        shop->loads()->setActive(true);
        QVERIFY(shop->loads()->ready()->count() > 0);
        shop->loads()->makeLoad("truck 1");
        QCOMPARE(shop->loads()->ready()->count(), 0);
        QVERIFY(shop->loads()->bundles()->count() > 0);
        const QUrl load = QUrl::fromLocalFile(folder.filePath("load.json"));
        shop->loads()->saveLoad(load);
        shop->loads()->takeReceipt(receiptOf(load, folder));
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->loads()->remakes()->count(), 1);
        shop->loads()->remakeAll();
        QCOMPARE(shop->loads()->remakes()->count(), 0);
        QCOMPARE(shop->batches()->batches()->count(), 1);
    }

    void stepsCountPieces()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        cutEverything(*shop);
        model::FoldingDesk* desk = shop->folding();
        desk->setActive(true);
        const int steps = desk->stepCount();
        QVERIFY(steps > 1);
        const QString mark = desk->currentMark(), before = desk->counter();
        for (int step = 1; step < steps; ++step)
            desk->next();
        QCOMPARE(desk->stepIndex(), steps - 1);
        QCOMPARE(desk->counter(), before);
        desk->next();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(desk->currentMark() != mark || desk->counter() != before);
        QCOMPARE(desk->stepIndex(), 0);
        shop->batches()->setActive(true);
        QCOMPARE(shop->batches()->batches()->count(), 0);
        desk->pieceSpoilt();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->batches()->batches()->count(), 1);
    }

    void ticksOutliveTheProgram()
    {
        const QTemporaryDir folder;
        QString ticked;
        {
            const auto shop = open(folder);
            shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
            shop->arrivals()->takeFiles({orderOf("larkfield", folder), orderOf("hollin", folder)});
            plan(*shop);
            shop->cutting()->setActive(true);
            QVERIFY(shop->cutting()->sheets()->count() > 1);
            ticked = shop->cutting()->current();
            shop->cutting()->tick();
        }
        const auto shop = open(folder);
        shop->cutting()->setActive(true);
        shop->cutting()->setCurrent(ticked);
        QVERIFY(shop->cutting()->ticked() || shop->cutting()->sheets()->indexOf(ticked) < 0);
    }

    void ticksStayUntilThePlanCountsAsCut()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        model::CuttingDesk* desk = shop->cutting();
        desk->setActive(true);
        const int sheets = desk->sheets()->count();
        const auto stock = storage::stockDocument(shop->database());
        const auto putStock = [&](const std::string& document) {
            shop->database().write([&] { storage::saveStockDocument(shop->database(), document); });
        };
        putStock("no stock");
        for (int sheet = 0; sheet < sheets && !desk->unfinished(); ++sheet)
            desk->tick();
        QVERIFY(shop->trouble());
        QVERIFY(desk->unfinished() && desk->ticked());
        QCOMPARE(desk->sheets()->count(), sheets);
        desk->finish();
        QVERIFY(shop->trouble() && desk->unfinished());
        putStock(*stock);
        desk->finish();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(desk->sheets()->count() < sheets && !desk->unfinished());
    }

    void whatIsCountedByHandIsLoggedAndWhatPlansTakeIsShown()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::StockDesk* desk = shop->stock();
        desk->setActive(true);
        desk->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QString sheet, remnant;
        for (const model::Row& row : desk->items()->rows()) {
            desk->setCurrent(row.id);
            if (desk->isRemnant())
                remnant = row.id;
            else if (desk->count() > 0)
                sheet = row.id;
        }
        QVERIFY(!sheet.isEmpty() && !remnant.isEmpty());
        desk->setCurrent(sheet);
        const int before = desk->count();
        desk->setCount(before + 2);
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->count(), before + 2);
        desk->setCurrent(remnant);
        desk->removeRemnant();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->items()->indexOf(remnant), -1);
        const auto log = storage::listStockEvents(shop->database(), "", {});
        QCOMPARE(log.rows.size(), 2U);
        QCOMPARE(log.rows[1].key, sheet.toStdString());
        QCOMPARE(log.rows[1].count, std::int64_t{2});
        QCOMPARE(log.rows[0].key, remnant.toStdString());
        QCOMPARE(log.rows[0].count, std::int64_t{-1});

        const auto reserved = [desk] {
            int items = 0;
            for (const model::Row& row : desk->items()->rows()) {
                desk->setCurrent(row.id);
                items += desk->reserved().isEmpty() ? 0 : 1;
                if (!row.trailingDetail.contains(desk->reserved()))
                    return -1;
            }
            return items;
        };
        QCOMPARE(reserved(), 0);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        QVERIFY(reserved() > 0);
    }

    void aViewerDoesNothing()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->preferences()->setDuty(Preferences::Duty::Viewer);
        shop->stock()->setActive(true);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QCOMPARE(shop->stock()->items()->count(), 0);
        shop->arrivals()->setActive(true);
        QVERIFY(shop->message().isEmpty());
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        QCOMPARE(shop->arrivals()->orders()->count(), 0);
        QVERIFY(shop->trouble() && !shop->message().isEmpty());
        shop->batches()->plan();
        QVERIFY(!shop->batches()->planning());
    }

    void anotherStationIsSeen()
    {
        const QTemporaryDir folder;
        const auto office = open(folder, "office"), machine = open(folder, "machine");
        machine->arrivals()->setActive(true);
        QCOMPARE(machine->arrivals()->orders()->count(), 0);
        office->arrivals()->takeFiles({orderOf("hollin", folder)});
        QTRY_COMPARE(machine->arrivals()->orders()->count(), 1);
    }

    void whatIsDoneHereIsReadOnce()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        const QSignalSpy read(shop->arrivals(), &model::Arrivals::waitingChanged);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        QTest::qWait(2000); // two looks for what others did
        QCOMPARE(read.size(), 1);
    }

    void aFolderIsWatched()
    {
        const QTemporaryDir folder, inbox;
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        shop->preferences()->setWatchedFolder(inbox.path());
        orderOf("hollin", inbox);
        QTRY_COMPARE_WITH_TIMEOUT(shop->arrivals()->orders()->count(), 1, longest);
    }

    void aCopyThatGrowsInTheWatchedFolderIsTakenWhenItIsWhole()
    {
        const QTemporaryDir folder, inbox;
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        shop->preferences()->setWatchedFolder(inbox.path());
        QFile source(orderOf("hollin", folder).toLocalFile());
        QVERIFY(source.open(QFile::ReadOnly));
        const QByteArray all = source.readAll();
        QFile copy(inbox.filePath("copy.json"));
        QVERIFY(copy.open(QFile::WriteOnly) && copy.write(all.left(all.size() / 2)) > 0 && copy.flush());
        QTest::qWait(3000); // three looks
        QVERIFY2(shop->message().isEmpty(), qPrintable(shop->message()));
        QVERIFY(copy.write(all.mid(all.size() / 2)) > 0 && copy.flush());
        QTRY_COMPARE_WITH_TIMEOUT(shop->arrivals()->orders()->count(), 1, longest);
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
    }

    void aWatchedFolderThatIsNotThereIsSaid()
    {
        const QTemporaryDir folder, inbox;
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        shop->preferences()->setWatchedFolder(inbox.filePath("share"));
        QTRY_VERIFY_WITH_TIMEOUT(shop->trouble(), longest);
        QVERIFY2(shop->message().contains(inbox.filePath("share")), qPrintable(shop->message()));
        // A share that is mounted later is watched from then on.
        QVERIFY(QDir(inbox.path()).mkdir("share"));
        QVERIFY(QFile::copy(orderOf("hollin", folder).toLocalFile(), inbox.filePath("share/order.json")));
        QTRY_COMPARE_WITH_TIMEOUT(shop->arrivals()->orders()->count(), 1, longest);
    }

    void whatIsNoOrderIsSaid()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->arrivals()->takeFiles({QUrl::fromLocalFile(demo("shop.stock.json"))});
        QVERIFY(shop->trouble());
        QVERIFY2(shop->message().contains("shop.stock.json"), qPrintable(shop->message()));
    }

    void whatWaitsIsDismissedAndWaitsAgainWhenItComesAgain()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        const std::string id = acts::newUuid();
        desk->takeFiles({orderOf("hollin", folder, id)});
        const QUrl other = orderOf("hollin", folder, id, "other");
        desk->takeFiles({other});
        QCOMPARE(desk->waiting(), 1);
        QCOMPARE(desk->current(), desk->orders()->idAt(0));
        QVERIFY(desk->currentWaits() && !desk->preview()->empty());
        QCOMPARE(desk->orders()->rows().at(0).title, desk->orders()->rows().at(1).title);
        // Not even a person's word takes another content of the same revision.
        desk->acceptCurrent();
        QVERIFY(shop->trouble());
        QCOMPARE(desk->waiting(), 1);
        desk->dismissCurrent();
        QVERIFY2(!shop->trouble() && !shop->message().isEmpty(), qPrintable(shop->message()));
        QCOMPARE(desk->waiting(), 0);
        QVERIFY(!desk->currentWaits() && !desk->preview()->empty());
        desk->takeFiles({other});
        QCOMPARE(desk->waiting(), 1);
    }

    void whatWaitsOpensAtItsReasons()
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:")));
        const QTemporaryDir folder;
        const auto shop = open(folder);
        QQmlApplicationEngine engine;
        QQuickWindow* window = windowOf(*shop, engine);
        QVERIFY(window != nullptr);
        const std::string id = acts::newUuid();
        shop->arrivals()->takeFiles({orderOf("hollin", folder, id)});
        const QString here = shop->arrivals()->current();
        QQuickItem* sheet = named(window->contentItem(), "What to look at");
        QVERIFY(sheet != nullptr);
        QCOMPARE(sheet->property("currentIndex").toInt(), 0);
        QVERIFY(QMetaObject::invokeMethod(sheet, "choose", Q_ARG(QVariant, 2)));
        shop->arrivals()->takeFiles({orderOf("hollin", folder, id, "other")});
        QVERIFY(shop->arrivals()->currentWaits());
        QCOMPARE(sheet->property("currentIndex").toInt(), 3);
        shop->arrivals()->setCurrent(here);
        QCOMPARE(sheet->property("currentIndex").toInt(), 0);
    }

    void aSearchEndsWithItsScreen()
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:")));
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QQmlApplicationEngine engine;
        QQuickWindow* window = windowOf(*shop, engine);
        QVERIFY(window != nullptr);
        const model::RowsModel* stock = shop->stock()->items();
        QTest::keyClick(window, Qt::Key_8, Qt::ControlModifier);
        QTest::keyClick(window, Qt::Key_F, Qt::ControlModifier);
        for (const Qt::Key letter : {Qt::Key_B, Qt::Key_Z})
            QTest::keyClick(window, letter);
        QVERIFY(stock->count() > 0 && stock->count() < stock->total());
        QTest::keyClick(window, Qt::Key_Escape);
        QCOMPARE(stock->count(), stock->total());
        QTest::keyClick(window, Qt::Key_B);
        QVERIFY(stock->count() < stock->total());
        QTest::keyClick(window, Qt::Key_9, Qt::ControlModifier);
        QTest::keyClick(window, Qt::Key_8, Qt::ControlModifier);
        QCOMPARE(stock->count(), stock->total());
    }

    void theDayThroughTheWindow()
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:")));
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QQmlApplicationEngine engine;
        QQuickWindow* window = windowOf(*shop, engine);
        QVERIFY(window != nullptr);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        // Ctrl+3 is Cutting, space ticks a sheet; Ctrl+4 is Folding, space goes from step to step and piece
        // to piece.
        QTest::keyClick(window, Qt::Key_3, Qt::ControlModifier);
        QCOMPARE(window->property("place").toInt(), 2);
        // Return ticks too, from the list as well.
        QQuickItem* sheets = named(window->contentItem(), "Sheets to cut");
        QVERIFY(sheets != nullptr);
        sheets->forceActiveFocus();
        const QString first = shop->cutting()->current();
        QTest::keyClick(window, Qt::Key_Return);
        QVERIFY(shop->cutting()->current() != first);
        for (int press = 0; shop->cutting()->sheets()->count() > 0 && press < 200; ++press)
            QTest::keyClick(window, Qt::Key_Space);
        QCOMPARE(shop->cutting()->sheets()->count(), 0);
        QTest::keyClick(window, Qt::Key_4, Qt::ControlModifier);
        const int steps = shop->folding()->stepCount();
        const QString before = shop->folding()->currentMark() + shop->folding()->counter();
        for (int press = 0; press < steps; ++press)
            QTest::keyClick(window, Qt::Key_Space);
        QVERIFY(shop->folding()->currentMark() + shop->folding()->counter() != before);
    }
};

QTEST_MAIN(TestShopDay)
#include "tst_shop_day.moc"
