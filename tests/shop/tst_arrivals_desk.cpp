// Guards: orders come in by hand and from a watched folder, what waits for a person says why and opens at its
// reasons; another station's work is seen, what was done here is read once; a search ends with its screen.
#include "shop_bench.h"
#include "storage/orders.h"

#include <set>

using namespace lapwright;
using namespace lapwright::tests;

class TestArrivalsDesk : public QObject {
    Q_OBJECT

private slots:
    void anotherStationIsSeen()
    {
        const QTemporaryDir folder;
        const auto office = open(folder, "office"), machine = open(folder, "machine");
        machine->arrivals()->setActive(true);
        QCOMPARE(machine->arrivals()->orders()->count(), 0);
        office->arrivals()->takeFiles({orderOf("hollin", folder)});
        QTRY_COMPARE(machine->arrivals()->orders()->count(), 1);
    }

    void whatWaitsIsCountedWhateverScreenIsInSight()
    {
        const QTemporaryDir folder;
        const auto office = open(folder, "office"), machine = open(folder, "machine");
        machine->cutting()->setActive(true);
        const std::string id = acts::newUuid();
        office->arrivals()->takeFiles(
            {orderOf("hollin", folder, id), orderOf("hollin", folder, id, "other")});
        QCOMPARE(office->waiting(), 1);
        QTRY_COMPARE(machine->waiting(), 1);
        office->arrivals()->setActive(true);
        office->arrivals()->dismissCurrent();
        QTRY_COMPARE(machine->waiting(), 0);
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

    void whatTheFolderBringsLeavesInSightWhatAPersonLooksAt()
    {
        const QTemporaryDir folder, inbox;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        const std::string id = acts::newUuid();
        desk->takeFiles({orderOf("hollin", folder, id), orderOf("hollin", folder, id, "other")});
        QVERIFY(desk->currentWaits());
        const QString inSight = desk->current();
        shop->preferences()->setWatchedFolder(inbox.path());
        orderOf("larkfield", inbox, id);
        QTRY_COMPARE_WITH_TIMEOUT(desk->waiting(), 2, longest);
        QCOMPARE(desk->current(), inSight);
        orderOf("depot", inbox);
        QTRY_COMPARE_WITH_TIMEOUT(desk->orders()->count(), 4, longest);
        QCOMPARE(desk->current(), inSight);
    }

    void aFolderThatIsWatchedAnewGivesNothingTwice()
    {
        const QTemporaryDir folder, inbox;
        const std::string id = acts::newUuid();
        {
            const auto shop = open(folder);
            model::Arrivals* desk = shop->arrivals();
            desk->takeFiles({orderOf("hollin", inbox, id), orderOf("hollin", inbox, id, "other")});
            desk->setActive(true);
            QCOMPARE(desk->waiting(), 1);
            desk->setCurrent(desk->orders()->idAt(0));
            desk->dismissCurrent();
            QCOMPARE(desk->waiting(), 0);
            shop->preferences()->setWatchedFolder(inbox.path());
        }
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        const std::int64_t version = shop->database().dataVersion();
        orderOf("depot", inbox);
        QTRY_COMPARE_WITH_TIMEOUT(shop->arrivals()->orders()->count(), 2, longest);
        QCOMPARE(shop->arrivals()->waiting(), 0);
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->database().dataVersion(), version + 1);
    }

    void aFileIsTakenWhateverItIsCalled()
    {
        const QTemporaryDir folder, inbox;
        const auto shop = open(folder);
        shop->arrivals()->setActive(true);
        // A mark that shows nothing, as names copied from elsewhere may hold.
        const QString name = QString("hollin") + QChar(0x200C) + ".order.json";
        QVERIFY(QFile::copy(orderOf("hollin", folder).toLocalFile(), inbox.filePath(name)));
        shop->preferences()->setWatchedFolder(inbox.path());
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

    void whatIsLookedAtStaysWhileOthersWork()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        desk->takeFiles({orderOf("hollin", folder)});
        model::OrderPreview* preview = desk->preview();
        QVERIFY(preview->profiles()->count() > 1);
        preview->setCurrentProfile(preview->profiles()->idAt(1));
        shop->noteChange();
        QCOMPARE(preview->currentProfile(), preview->profiles()->idAt(1));
        QVERIFY(preview->profiles()->rows().at(1).trailingDetail.contains(u'"'));
        shop->preferences()->setMillimetres(true);
        QVERIFY(preview->profiles()->rows().at(1).trailingDetail.contains("mm"));
        QCOMPARE(preview->currentProfile(), preview->profiles()->idAt(1));
    }

    void aRevisionOfTheOrderInSightIsShown()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        const QUrl first = orderOf("hollin", folder);
        desk->takeFiles({first});
        auto order = documents::readOrder(*storage::readDocument(first.toLocalFile().toStdString()));
        QVERIFY(order.ok());
        order->value.previousHash = documents::revisionHash(*order);
        order->value.revision = 2;
        order->value.job.name = "Hollin Cottage, extended";
        const QString second = folder.filePath("second.order.json");
        QVERIFY(storage::writeDocument(second.toStdString(), documents::writeOrder(*order)).ok());
        desk->takeFiles({QUrl::fromLocalFile(second)});
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->preview()->title(), QString("Hollin Cottage, extended"));
    }

    void namesTurnNoWordsAround()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        const std::string hostile = "Hollin\xE2\x80\xAE 21\x07 \xE2\x81\xA6"
                                    "E3";
        const QUrl file = orderOf("hollin", folder);
        auto order = documents::readOrder(*storage::readDocument(file.toLocalFile().toStdString()));
        QVERIFY(order.ok());
        order->value.job.name = order->value.job.customer = order->value.job.material.colour = hostile;
        const QString changed = folder.filePath("hostile.order.json");
        QVERIFY(storage::writeDocument(changed.toStdString(), documents::writeOrder(*order)).ok());
        desk->takeFiles({QUrl::fromLocalFile(changed)});
        QCOMPARE(desk->orders()->count(), 1);
        const model::OrderPreview* preview = desk->preview();
        QStringList texts = {shop->message(), preview->title(), preview->subtitle(), preview->plan().title()};
        for (const model::RowsModel* list : {desk->orders(), desk->preview()->profiles(),
                                             desk->preview()->pieces(), desk->preview()->findings()})
            for (const model::Row& row : list->rows())
                texts << row.title << row.detail << row.trailing << row.trailingDetail << row.help;
        QVERIFY2(texts.join(u' ').contains("Hollin  21"), qPrintable(texts.join(u'|')));
        for (const QString& text : texts)
            QVERIFY2(!text.contains(QChar(0x202E)) && !text.contains(QChar(0x2066)) &&
                         !text.contains(QChar(7)),
                     qPrintable(text));
    }

    void anOrderIsHeldFromWhereItArrived()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        desk->takeFiles({orderOf("hollin", folder)});
        QVERIFY(!desk->currentHeld());
        desk->holdCurrent(true);
        QVERIFY2(!shop->trouble() && desk->currentHeld(), qPrintable(shop->message()));
        QCOMPARE(desk->orders()->rows().at(0).sign, QString("hold"));
        shop->batches()->setActive(true);
        QVERIFY(shop->batches()->orderHeld());
        desk->holdCurrent(false);
        QVERIFY(!desk->currentHeld() && !shop->batches()->orderHeld());
        shop->preferences()->setDuty(model::Preferences::Duty::Operator);
        desk->holdCurrent(true);
        QVERIFY(shop->trouble() && !desk->currentHeld());
    }

    void aSearchFindsWhatLeftLongAgo()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        desk->takeFiles({orderOf("hollin", folder), orderOf("larkfield", folder)});
        QCOMPARE(desk->orders()->count(), 2);
        const std::string gone = desk->orders()->idAt(0).toStdString();
        const QString name = desk->orders()->rows().at(0).title;
        QVERIFY(storage::cancelOrder(shop->database(), gone, shop->stamp(), true).ok());
        desk->noteChange();
        QCOMPARE(desk->orders()->count(), 1);
        desk->orders()->setSearch(name);
        QTRY_COMPARE(desk->orders()->count(), 1);
        QCOMPARE(desk->orders()->rows().at(0).title, name);
        desk->orders()->setSearch("");
        QTRY_VERIFY(desk->orders()->count() == 1 && desk->orders()->rows().at(0).title != name);
    }

    void aSearchFindsAnOpenOrderByItsMark()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::Arrivals* desk = shop->arrivals();
        desk->setActive(true);
        desk->takeFiles({orderOf("larkfield", folder)});
        std::set<QString> elsewhere;
        for (const model::Row& row : desk->preview()->pieces()->rows())
            elsewhere.insert(row.title);
        desk->takeFiles({orderOf("hollin", folder)});
        QCOMPARE(desk->orders()->count(), 2);
        const QString hollin = desk->current();
        QString mark;
        for (const model::Row& row : desk->preview()->pieces()->rows())
            if (elsewhere.count(row.title) == 0)
                mark = row.title;
        QVERIFY(!mark.isEmpty());
        desk->orders()->setSearch(mark.toLower());
        QTRY_COMPARE(desk->orders()->count(), 1);
        QCOMPARE(desk->orders()->idAt(0), hollin);
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
        const QTemporaryDir folder;
        const AtWindow at(open(folder));
        QVERIFY(at.window != nullptr);
        const std::string id = acts::newUuid();
        at.shop->arrivals()->takeFiles({orderOf("hollin", folder, id)});
        const QString here = at.shop->arrivals()->current();
        QQuickItem* sheet = named(at.window->contentItem(), "What to look at");
        QVERIFY(sheet != nullptr);
        QCOMPARE(sheet->property("currentIndex").toInt(), 0);
        QVERIFY(QMetaObject::invokeMethod(sheet, "choose", Q_ARG(QVariant, 2)));
        at.shop->arrivals()->takeFiles({orderOf("hollin", folder, id, "other")});
        QVERIFY(at.shop->arrivals()->currentWaits());
        QCOMPARE(sheet->property("currentIndex").toInt(), 3);
        at.shop->arrivals()->setCurrent(here);
        QCOMPARE(sheet->property("currentIndex").toInt(), 0);
    }

    void aSearchEndsWithItsScreen()
    {
        const QTemporaryDir folder;
        const AtWindow at(openWithStock(folder));
        QVERIFY(at.window != nullptr);
        const model::RowsModel* stock = at.shop->stock()->items();
        at.go(Qt::Key_8);
        QTest::keyClick(at.window, Qt::Key_F, Qt::ControlModifier);
        for (const Qt::Key letter : {Qt::Key_B, Qt::Key_Z})
            QTest::keyClick(at.window, letter);
        QVERIFY(stock->count() > 0 && stock->count() < stock->total());
        QTest::keyClick(at.window, Qt::Key_Escape);
        QCOMPARE(stock->count(), stock->total());
        QTest::keyClick(at.window, Qt::Key_B);
        QVERIFY(stock->count() < stock->total());
        at.go(Qt::Key_9);
        at.go(Qt::Key_8);
        QCOMPARE(stock->count(), stock->total());
    }
};

QTEST_MAIN(TestArrivalsDesk)
#include "tst_arrivals_desk.moc"
