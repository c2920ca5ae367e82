// Guards: stock counted by hand is logged and what plans take is shown; pieces are held, tasks pinned,
// reference data changed and checked; a viewer does nothing and is told why.
#include "acts/making.h"
#include "acts/schedule_progress.h"
#include "acts/scheduling.h"
#include "shop_bench.h"
#include "storage/lists.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace lapwright;
using namespace lapwright::tests;

namespace {

/// So that a test may move work without asking what time it is now.
void workAroundTheClock(model::Shop& shop)
{
    model::Draft* draft = shop.reference()->draft();
    shop.reference()->setActive(true);
    shop.reference()->setKind(static_cast<int>(model::ReferenceShelf::Kind::Floor));
    shop.reference()->edit();
    QJsonObject floor = QJsonDocument::fromJson(draft->text().toUtf8()).object(), week;
    for (const char* day : {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"})
        week[day] = QJsonArray{"00:00-24:00"};
    floor["hours"] = week;
    draft->setText(QString::fromUtf8(QJsonDocument(floor).toJson()));
    QVERIFY2(draft->keep(), qPrintable(shop.message()));
}

} // namespace

class TestPlannerDesks : public QObject {
    Q_OBJECT

private slots:
    void aTimeStandsAloneUnderItsOwnDay()
    {
        const schedule::Date day{2026, 12, 1};
        const auto at = [&](int hours, int minutes, int seconds) {
            return schedule::momentOf(day, schedule::Duration::hours(hours) +
                                               schedule::Duration::minutes(minutes) +
                                               schedule::Duration::seconds(seconds));
        };
        QCOMPARE(model::clockWords(at(7, 29, 40), day), QString("07:30"));
        QCOMPARE(model::clockWords(at(7, 29, 40), std::nullopt), QString("Tue 1 Dec 07:30"));
        // What ends at midnight does not end as that day begins.
        QCOMPARE(model::clockWords(at(23, 59, 40), day), QString("Wed 2 Dec 00:00"));
    }

    void whatASearchFindsInTheReferenceIsWhatIsShown()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        model::ReferenceShelf* shelf = shop->reference();
        shelf->setActive(true);
        shelf->setKind(static_cast<int>(model::ReferenceShelf::Kind::Trim));
        const QList<model::Row> trims = shelf->trims()->rows();
        const model::Row& sought = trims.back();
        QVERIFY(shelf->current() != sought.id);
        shelf->trims()->setSearch(sought.title);
        QVERIFY(shelf->trims()->indexOf(shelf->current()) >= 0);
        shelf->edit();
        QCOMPARE(shelf->draft()->title(), shelf->trims()->rows().front().title);
        shelf->draft()->leave();
        shelf->trims()->setSearch("no such trim");
        QCOMPARE(shelf->current(), QString());
        QVERIFY(shelf->note().isEmpty() && shelf->picture().empty());
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

    void piecesAndOrdersAreHeldAndLetInAgain()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        model::Batches* desk = shop->batches();
        const QString batch = desk->current(), piece = desk->currentPiece();
        const auto row = [&] { return desk->batches()->rows().at(desk->batches()->indexOf(batch)); };
        const QString all = row().trailing, summary = row().detail;
        QVERIFY(!row().trailingDetail.contains("held"));
        QVERIFY(!summary.contains("not planned"));
        desk->holdPiece(true);
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(desk->pieceHeld() && !desk->orderHeld());
        QVERIFY(row().trailing != all && row().trailingDetail.contains("held"));
        // The plan cuts it: it is taken back.
        QVERIFY(row().detail.contains("not planned yet"));
        plan(*shop);
        QCOMPARE(desk->currentPiece(), piece);
        QVERIFY(desk->pieceHeld() && !row().detail.contains("not planned"));
        desk->holdPiece(false);
        QCOMPARE(row().trailing, all);
        QVERIFY(row().detail.contains("not planned yet") && row().detail != "not planned yet");
        desk->holdOrder(true);
        QVERIFY(desk->orderHeld());
        QCOMPARE(row().trailing, QString("0 pieces"));
        desk->holdOrder(false);
        QVERIFY(!desk->orderHeld() && !row().trailingDetail.contains("held"));
        shop->preferences()->setDuty(model::Preferences::Duty::Operator);
        desk->holdPiece(true);
        QVERIFY(shop->trouble() && !desk->pieceHeld());
    }

    void muchIsReadBesideTheWindow()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        model::Batches* desk = shop->batches();
        desk->setActive(true);
        QVERIFY(!desk->reading());
        storage::IncomingOrder order{"order",      1,    "hash", "", "Long house", "Customer",
                                     "2026-12-01", "{}", "{}",   {}};
        for (int mark = 0; mark < 2'100; ++mark)
            order.pieces.push_back({"E" + std::to_string(mark), "E1", "P1", "galvanised-steel", "24 ga",
                                    "Slate", Length::inches(6), Length::inches(120), 900, 1, "a"});
        (void)storage::receiveOrder(shop->database(), order, shop->stamp(), false);
        desk->noteChange();
        QVERIFY(desk->reading());
        QCOMPARE(desk->batches()->count(), 0);
        // What changes meanwhile is read too.
        QVERIFY(storage::holdPiece(shop->database(), "order", "E7", true));
        desk->noteChange();
        QTRY_VERIFY_WITH_TIMEOUT(!desk->reading(), longest);
        QCOMPARE(desk->pieces()->count(), 2'100);
        QVERIFY2(desk->batches()->rows().at(0).trailingDetail.contains("held"),
                 qPrintable(desk->batches()->rows().at(0).trailingDetail));
    }

    void aTickedSheetStaysCutWhateverIsHeld()
    {
        for (const bool wholeOrder : {false, true}) {
            const QTemporaryDir folder;
            const auto shop = openWithStock(folder);
            shop->arrivals()->takeFiles({orderOf("hollin", folder)});
            plan(*shop);
            shop->cutting()->setActive(true);
            shop->cutting()->tick();
            QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
            QVERIFY(!storage::tickedPatterns(shop->database()).empty());
            const auto cut = [&] {
                return storage::shopCounts(shop->database()).of(schedule::PieceState::Cut);
            };
            QCOMPARE(cut(), 0);
            shop->batches()->setActive(true);
            if (wholeOrder)
                shop->batches()->holdOrder(true);
            else
                shop->batches()->holdPiece(true);
            QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
            QVERIFY(cut() > 0);
            QVERIFY(storage::tickedPatterns(shop->database()).empty());
        }
    }

    void aTaskIsMovedByKeysAndPinnedThere()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        workAroundTheClock(*shop);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        model::ScheduleDesk* desk = shop->schedule();
        desk->setActive(true);
        desk->setCurrentDay(desk->days()->idAt(desk->days()->count() - 1));
        desk->setCurrentTask(desk->tasks()->idAt(desk->tasks()->count() - 1));
        QVERIFY(desk->moving().isEmpty());
        desk->nudge(1);
        QVERIFY(!desk->moving().isEmpty());
        desk->leave();
        QVERIFY(desk->moving().isEmpty() && !shop->planner()->running());
        desk->nudge(3);
        const QString where = desk->moving();
        const QString task = desk->currentTask();
        desk->putDown();
        QVERIFY(shop->planner()->running());
        QTRY_VERIFY_WITH_TIMEOUT(!shop->planner()->running(), longest);
        desk->setCurrentTask(task);
        QVERIFY2(desk->currentPinned(), qPrintable(shop->message()));
        const auto record = acts::standingSchedule(shop->database());
        QCOMPARE((*record)->pins.size(), 1U);
        QVERIFY2(where.endsWith(QString::fromStdString(schedule::inWords(*(*record)->pins.front().start))),
                 qPrintable(where));
        desk->togglePin();
        QTRY_VERIFY_WITH_TIMEOUT(!shop->planner()->running(), longest);
        QVERIFY(!desk->currentPinned());
    }

    void whatIsMadeIsSaidWithoutSchedulingAgain()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->preferences()->setPerson("Ann");
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        model::ScheduleDesk* desk = shop->schedule();
        desk->setActive(true);
        const auto kept = storage::scheduleDocument(shop->database());
        const auto signs = [desk](const QString& sign) {
            QSet<QString> found; // one may take two days
            for (const model::Row& day : desk->days()->rows()) {
                desk->setCurrentDay(day.id);
                for (const model::Row& row : desk->tasks()->rows())
                    if (row.sign == sign)
                        found.insert(row.id);
            }
            return found.size();
        };
        QVERIFY(signs("done") == 0);
        QVERIFY(!desk->summary().contains("made since"));

        model::CuttingDesk* cutting = shop->cutting();
        cutting->setActive(true);
        QVERIFY(cutting->tickedBy().isEmpty() && cutting->sheets()->count() > 1);
        const QString sheet = cutting->current();
        cutting->tick();
        cutting->setCurrent(sheet);
        QVERIFY2(cutting->tickedBy().startsWith("cut ") && cutting->tickedBy().contains("by Ann"),
                 qPrintable(cutting->tickedBy()));
        QVERIFY(signs("done") == 1);
        QVERIFY2(desk->summary().startsWith("1 of "), qPrintable(desk->summary()));
        cutting->tick(); // not after all
        QVERIFY(signs("done") == 0);

        cutEverything(*shop);
        const auto cut = signs("done");
        QVERIFY(cut > 0);
        model::FoldingDesk* folding = shop->folding();
        folding->setActive(true);
        folding->pieceFolded();
        QVERIFY2(!shop->trouble(), qPrintable(shop->message()));
        QVERIFY(signs("done") == cut);
        folding->lotFolded();
        QVERIFY(signs("done") == cut + 1);
        foldEverything(*shop);
        for (const model::Row& day : desk->days()->rows()) {
            desk->setCurrentDay(day.id);
            for (const model::Row& row : desk->tasks()->rows()) {
                QCOMPARE(row.trailingDetail, QString("made"));
                desk->setCurrentTask(row.id);
                QVERIFY(desk->currentOver());
                desk->nudge(1);
                QVERIFY(desk->moving().isEmpty());
            }
        }
        QCOMPARE(desk->late()->count(), 0);
        QCOMPARE(storage::scheduleDocument(shop->database()), kept);
    }

    void whatIsCutAtOnceAfterATickIsMadeToo()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        plan(*shop);
        shop->schedule()->setActive(true);
        model::CuttingDesk* cutting = shop->cutting();
        cutting->setActive(true);
        QVERIFY(cutting->sheets()->count() > 1);
        cutting->tick();
        QVERIFY(acts::cutWaitingPlans(shop->database(), shop->stamp()).ok());
        shop->noteChange();
        const auto record = acts::standingSchedule(shop->database());
        QVERIFY(record.ok() && record->has_value());
        const acts::ScheduleProgress progress = acts::progressOf(shop->database(), **record);
        int cuts = 0;
        for (const schedule::RecordedTask& task : (*record)->tasks)
            if (task.cut) {
                QVERIFY2(acts::isOver(progress, task.key), task.key.c_str());
                QVERIFY(progress.at(task.key).state == acts::TaskProgress::State::Made);
                ++cuts;
            }
        QVERIFY(cuts > 1);
    }

    void aPlanThatIsMadeIsSeenByBothDesksAndStopsAtOnce()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        shop->arrivals()->takeFiles({orderOf("larkfield", folder)});
        shop->preferences()->setPlanSeconds(600);
        shop->batches()->plan();
        QVERIFY(shop->planner()->running());
        shop->schedule()->scheduleAnew(); // not beside it
        shop->planner()->stop();
        QTRY_VERIFY_WITH_TIMEOUT(!shop->planner()->running(), longest);
        shop->cutting()->setActive(true);
        QVERIFY(shop->cutting()->sheets()->count() > 0);
    }

    void aMachineIsChangedCheckedAndKeptInTheShopsOwnLibrary()
    {
        const QTemporaryDir folder, library;
        const auto shop = open(folder, "station", {library.path().toStdString()});
        model::ReferenceShelf* desk = shop->reference();
        desk->setActive(true);
        desk->setCurrent("long-folder-up");
        const model::Row before = desk->machines()->rows().at(desk->machines()->indexOf("long-folder-up"));
        desk->edit();
        model::Draft* draft = desk->draft();
        QVERIFY(draft->open() && draft->trouble().isEmpty() && !draft->picture().empty());
        const QString whole = draft->text();
        draft->setText(whole.left(whole.size() / 2));
        QTRY_VERIFY(!draft->trouble().isEmpty());
        QVERIFY(!draft->keep() && draft->open() && shop->trouble());
        QString other = whole;
        draft->setText(other.replace(before.title, "Our own folder"));
        QTRY_VERIFY(draft->trouble().isEmpty());
        QVERIFY2(draft->keep() && !draft->open(), qPrintable(shop->message()));
        QCOMPARE(desk->machines()->rows().at(desk->machines()->indexOf("long-folder-up")).title,
                 QString("Our own folder"));
        QVERIFY(QFile::exists(library.filePath("machines/long-folder-up.json")));
        // A document that would leave the folder by its name is refused.
        desk->edit();
        other = draft->text();
        draft->setText(other.replace("\"long-folder-up\"", "\"../up\""));
        QVERIFY(!draft->keep());
    }

    void theHoursOfTheFloorAreChanged()
    {
        const QTemporaryDir folder;
        const auto shop = openWithStock(folder);
        model::ReferenceShelf* desk = shop->reference();
        desk->setActive(true);
        desk->setKind(static_cast<int>(model::ReferenceShelf::Kind::Floor));
        QVERIFY(desk->floor()->count() > 1);
        const QString hours = desk->floor()->rows().first().detail;
        QVERIFY2(hours.startsWith("monday to friday 07:00-12:00"), qPrintable(hours));
        QVERIFY(desk->note().contains("(usual)"));
        desk->edit();
        QString text = desk->draft()->text();
        desk->draft()->setText(text.replace("07:00", "06:15"));
        QVERIFY2(desk->draft()->keep(), qPrintable(shop->message()));
        QVERIFY(desk->floor()->rows().first().detail.startsWith("monday to friday 06:15-12:00"));
    }

    void aViewerDoesNothing()
    {
        const QTemporaryDir folder;
        const auto shop = open(folder);
        shop->preferences()->setDuty(model::Preferences::Duty::Viewer);
        shop->stock()->setActive(true);
        shop->stock()->importStock(QUrl::fromLocalFile(demo("shop.stock.json")));
        QCOMPARE(shop->stock()->items()->count(), 0);
        shop->arrivals()->setActive(true);
        QVERIFY(!shop->whyNotPlan().isEmpty() && !shop->whyNotMake().isEmpty());
        shop->arrivals()->takeFiles({orderOf("hollin", folder)});
        QCOMPARE(shop->arrivals()->orders()->count(), 0);
        QVERIFY(shop->trouble() && !shop->message().isEmpty());
        shop->batches()->plan();
        QVERIFY(!shop->planner()->running());
    }
};

QTEST_MAIN(TestPlannerDesks)
#include "tst_planner_desks.moc"
