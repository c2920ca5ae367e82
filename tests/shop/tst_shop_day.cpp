// Guards: a shop's whole day, from two order files to a receipt and a remake, through the desks behind the
// screens and through the window itself.
#include "shop_bench.h"

using namespace lapwright;
using namespace lapwright::tests;

class TestShopDay : public QObject {
    Q_OBJECT

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
        QTRY_VERIFY_WITH_TIMEOUT(!shop->planner()->running(), longest);
        QVERIFY2(shop->schedule()->currentPinned(), qPrintable(shop->message()));

        const QTemporaryDir papers;
        const QUrl folderOfPapers = QUrl::fromLocalFile(papers.path());
        const auto areWritten = [&](const QStringList& names) {
            for (const QString& name : names)
                if (QFileInfo(papers.filePath(name)).size() < 1'000)
                    return false;
            return !shop->trouble();
        };
        shop->cutting()->setActive(true);
        shop->papers()->printCut(shop->cutting()->current(), folderOfPapers);
        QVERIFY2(areWritten({"cut-ticket.pdf"}), qPrintable(shop->message()));
        shop->papers()->printOrder(shop->arrivals()->current(), folderOfPapers);
        QVERIFY2(areWritten({"confirmation.pdf", "quality-sheet.pdf", "piece-labels.pdf"}),
                 qPrintable(shop->message()));

        cutEverything(*shop);
        QCOMPARE(shop->batches()->batches()->count(), 0);
        foldEverything(*shop);

        shop->loads()->setActive(true);
        QVERIFY(shop->loads()->ready()->count() > 0);
        shop->loads()->makeLoad("truck 1");
        QCOMPARE(shop->loads()->ready()->count(), 0);
        QVERIFY(shop->loads()->bundles()->count() > 0);
        shop->papers()->printLoad(shop->loads()->current(), folderOfPapers);
        QVERIFY2(areWritten({"load-list.pdf", "check-sheet.pdf", "bundle-labels.pdf"}),
                 qPrintable(shop->message()));
        const QUrl load = QUrl::fromLocalFile(folder.filePath("load.json"));
        shop->loads()->saveLoad(load);
        shop->loads()->takeReceipt(receiptOf(load, folder));
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->loads()->remakes()->count(), 1);
        shop->loads()->remakeAll();
        QCOMPARE(shop->loads()->remakes()->count(), 0);
        QCOMPARE(shop->batches()->batches()->count(), 1);
    }

    void theDayThroughTheWindow()
    {
        const QTemporaryDir folder;
        const AtWindow at(openWithStock(folder));
        QVERIFY(at.window != nullptr);
        at.shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*at.shop);
        // Ctrl+3 is Cutting, space ticks a sheet; Ctrl+4 is Folding, space goes from step to step and piece
        // to piece.
        at.go(Qt::Key_3);
        QCOMPARE(at.window->property("place").toInt(), 2);
        // Return ticks too, from the list as well.
        QQuickItem* sheets = named(at.window->contentItem(), "Sheets to cut");
        QVERIFY(sheets != nullptr);
        sheets->forceActiveFocus();
        const QString first = at.shop->cutting()->current();
        QTest::keyClick(at.window, Qt::Key_Return);
        QVERIFY(at.shop->cutting()->current() != first);
        for (int press = 0; at.shop->cutting()->sheets()->count() > 0 && press < 200; ++press)
            QTest::keyClick(at.window, Qt::Key_Space);
        QCOMPARE(at.shop->cutting()->sheets()->count(), 0);
        at.go(Qt::Key_4);
        const int steps = at.shop->folding()->stepCount();
        const QString before = at.shop->folding()->currentMark() + at.shop->folding()->counter();
        for (int press = 0; press < steps; ++press)
            QTest::keyClick(at.window, Qt::Key_Space);
        QVERIFY(at.shop->folding()->currentMark() + at.shop->folding()->counter() != before);
    }
};

QTEST_MAIN(TestShopDay)
#include "tst_shop_day.moc"
