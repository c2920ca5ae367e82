// Guards: steps at the folder count pieces, a key that is held counts one, a lot is folded whole or not at
// all, ticks at the shear outlive the program and stay until their plan counts as cut.
#include "acts/making.h"
#include "documents/shop.h"
#include "lot_id.h"
#include "shop_bench.h"
#include "storage/lists.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

using namespace lapwright;
using namespace lapwright::tests;

namespace {

/// Holds a key down for a while, as a system tells it.
void hold(QQuickWindow* window, Qt::Key key, const QString& text)
{
    const auto tell = [&](QEvent::Type type, bool again) {
        QKeyEvent event(type, key, Qt::NoModifier, text, again);
        QCoreApplication::sendEvent(window, &event);
    };
    tell(QEvent::KeyPress, false);
    for (int repeat = 0; repeat < 5; ++repeat) {
        tell(QEvent::KeyRelease, true);
        tell(QEvent::KeyPress, true);
    }
    tell(QEvent::KeyRelease, false);
}

std::size_t ticks(const Shop& shop)
{
    std::size_t count = 0;
    for (const auto& [plan, patterns] : storage::tickedPatterns(shop.database()))
        count += patterns.size();
    return count;
}

} // namespace

class TestMachineDesks : public QObject {
    Q_OBJECT

private slots:
    void stepsCountPieces()
    {
        const QTemporaryDir folder;
        const auto shop = openWithCut(folder);
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

    void aKeyThatIsHeldTicksOneSheet()
    {
        const QTemporaryDir folder;
        auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("larkfield", folder)});
        plan(*shop);
        const AtWindow at(std::move(shop));
        QVERIFY(at.window != nullptr);
        at.go(Qt::Key_3);
        QVERIFY(at.shop->cutting()->sheets()->count() > 4);
        hold(at.window, Qt::Key_Space, " ");
        QCOMPARE(ticks(*at.shop), std::size_t{1});
        QQuickItem* button = showing(at.window->contentItem(), "This is cut");
        QVERIFY(button != nullptr);
        button->forceActiveFocus(Qt::TabFocusReason);
        hold(at.window, Qt::Key_Return, "\r");
        QCOMPARE(ticks(*at.shop), std::size_t{2});
        hold(at.window, Qt::Key_Space, " ");
        QCOMPARE(ticks(*at.shop), std::size_t{3});
    }

    void aPedalThatIsHeldGoesOneStep()
    {
        const QTemporaryDir folder;
        const AtWindow at(openWithCut(folder));
        QVERIFY(at.window != nullptr);
        at.go(Qt::Key_4);
        QVERIFY(at.shop->folding()->stepCount() > 2);
        hold(at.window, Qt::Key_PageDown, {});
        QCOMPARE(at.shop->folding()->stepIndex(), 1);
    }

    void aLotThatCannotBeFoldedIsNotCountedAsFolded()
    {
        const QTemporaryDir folder;
        const auto shop = openWithCut(folder);
        model::FoldingDesk* desk = shop->folding();
        desk->setActive(true);
        auto stock = documents::readStock(*storage::stockDocument(shop->database()));
        stock->value.machines = {"box-and-pan-4"};
        shop->act([&] {
            shop->database().write(
                [&] { storage::saveStockDocument(shop->database(), documents::writeStock(*stock)); });
        });
        for (int lot = 0; desk->refusal().isEmpty() && lot < desk->lots()->count(); ++lot)
            desk->setCurrent(desk->lots()->idAt(lot));
        QVERIFY(!desk->refusal().isEmpty());
        QCOMPARE(desk->stepCount(), 0);
        desk->next();
        QCOMPARE(storage::shopCounts(shop->database()).of(schedule::PieceState::Folded), 0);
    }

    void whatWasSaidToBeFoldedIsFoldedAgain()
    {
        const QTemporaryDir folder;
        const auto shop = openWithCut(folder);
        model::FoldingDesk* desk = shop->folding();
        desk->setActive(true);
        QVERIFY(!desk->mayFoldAgain());
        const QString lot = desk->current(), mark = desk->currentMark(), before = desk->counter();
        // At the machine it begins anew and counts nothing.
        desk->next();
        QVERIFY(desk->mayFoldAgain());
        desk->foldAgain();
        QCOMPARE(desk->stepIndex(), 0);
        QCOMPARE(desk->counter(), before);
        QVERIFY(!desk->mayFoldAgain());
        // Counted, it is taken back with its mark, once.
        desk->pieceFolded();
        desk->foldAgain();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->currentMark(), mark);
        QCOMPARE(desk->counter(), before);
        QVERIFY(!desk->mayFoldAgain());
        // So is a whole lot that has left the queue.
        const int lots = desk->lots()->count();
        desk->lotFolded();
        QCOMPARE(desk->lots()->count(), lots - 1);
        desk->foldAgain();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->lots()->count(), lots);
        QCOMPARE(desk->current(), lot);
        QCOMPARE(desk->counter(), before);
        // What is on a truck is not.
        desk->lotFolded();
        shop->loads()->makeLoad("truck 1");
        desk->foldAgain();
        QVERIFY(shop->trouble());
        QCOMPARE(desk->lots()->count(), lots - 1);
        QVERIFY(storage::rebuildCounts(shop->database()).ok());
        QCOMPARE(desk->lots()->count(), lots - 1);
    }

    void whatIsTakenBackIsWhatWasFolded()
    {
        const QTemporaryDir folder;
        const auto shop = openWithCut(folder);
        model::FoldingDesk* desk = shop->folding();
        desk->setActive(true);
        QVERIFY(desk->marks()->count() > 1);
        const QString lot = desk->current();
        // Another station scraps one of them; this screen shows it still.
        const acts::Which one{model::orderOf(lot), desk->currentMark().toStdString()};
        QVERIFY(acts::scrap(shop->database(), one, schedule::PieceState::Cut, 1, "bent", shop->stamp()).ok());
        desk->lotFolded();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        desk->foldAgain();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(desk->current(), lot);
        QVERIFY(storage::piecesIn(shop->database(), schedule::PieceState::Folded).empty());
    }

    void aLotIsFoldedInOneWriteAndOnTheMachinesThatStandThere()
    {
        const QTemporaryDir folder;
        const auto shop = openWithCut(folder);
        model::FoldingDesk* desk = shop->folding();
        desk->setActive(true);
        const QString before = desk->machine();
        auto stock = documents::readStock(*storage::stockDocument(shop->database()));
        QStringList machines;
        for (const char* only : {"long-folder-up-down", "long-folder-up"}) {
            stock->value.machines = {only};
            shop->act([&] {
                shop->database().write(
                    [&] { storage::saveStockDocument(shop->database(), documents::writeStock(*stock)); });
            });
            QVERIFY(!desk->machine().isEmpty());
            machines.append(desk->machine());
        }
        QCOMPARE(machines.removeDuplicates(), 0);
        QVERIFY(machines.contains(before));

        QVERIFY(desk->marks()->count() > 1);
        const int lots = desk->lots()->count();
        const std::int64_t version = shop->database().dataVersion();
        desk->lotFolded();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QCOMPARE(shop->database().dataVersion(), version + 1);
        QCOMPARE(desk->lots()->count(), lots - 1);
    }

    void ticksOutliveTheProgram()
    {
        const QTemporaryDir folder;
        QString ticked;
        {
            const auto shop = openWithStock(folder);
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

    void aTickIsSeenByOthersAndOutlivesAPlanThatIsMadeAgain()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("larkfield", folder)});
        plan(*shop);
        model::CuttingDesk* desk = shop->cutting();
        desk->setActive(true);
        const int sheets = desk->sheets()->count();
        QVERIFY(sheets > 2);
        const QString first = desk->current();
        desk->tick();
        const auto other = open(folder, "other");
        other->cutting()->setActive(true);
        other->cutting()->setCurrent(first);
        QVERIFY(other->cutting()->ticked());
        // What is ticked is not planned again: its pieces are cut.
        const auto cut = [&] { return storage::shopCounts(shop->database()).of(schedule::PieceState::Cut); };
        QCOMPARE(cut(), 0);
        plan(*shop);
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(cut() > 0);
        QVERIFY(desk->sheets()->indexOf(first) < 0);
        cutEverything(*shop);
        QCOMPARE(storage::shopCounts(shop->database()).of(schedule::PieceState::Ordered), 0);
    }

    void aSpoiltStripIsOrderedAgainAndTheRestPlannedAnew()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("larkfield", folder)});
        plan(*shop);
        shop->preferences()->setDuty(model::Preferences::Duty::Operator);
        model::CuttingDesk* desk = shop->cutting();
        desk->setActive(true);
        const auto ordered = [&] {
            return storage::shopCounts(shop->database()).of(schedule::PieceState::Ordered);
        };
        const auto before = ordered();
        desk->stripSpoilt(); // none is chosen
        QVERIFY(!shop->planner()->running());
        desk->tick();
        desk->setCurrentStrip(desk->strips()->idAt(0));
        desk->stripSpoilt();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(shop->planner()->running());
        QTRY_VERIFY_WITH_TIMEOUT(!shop->planner()->running(), longest);
        QVERIFY(ordered() < before);
        bool logged = false;
        for (const storage::EventRow& row : storage::listEvents(shop->database(), "", "", {{}, 1'000}).rows)
            logged = logged || row.event.event.kind == schedule::PieceEvent::Kind::Scrap;
        QVERIFY(logged);
        QVERIFY(desk->currentStrip().isEmpty());
        cutEverything(*shop);
        QCOMPARE(ordered(), 0);
        const auto counts = storage::shopCounts(shop->database());
        QCOMPARE(counts.of(schedule::PieceState::Cut), before);
    }

    void ticksStayUntilThePlanCountsAsCut()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
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
};

QTEST_MAIN(TestMachineDesks)
#include "tst_machine_desks.moc"
