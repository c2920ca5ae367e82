// Guards: what other stations cut, hold or take in while cuts are planned is not planned as it stood before:
// nothing is cut twice, in an old size or against a person's word. What they pin while a schedule is worked
// out stays pinned. What cannot be cut is called by its house and mark.
#include "acts/holding.h"
#include "acts/incoming.h"
#include "acts/making.h"
#include "acts/planning.h"
#include "acts/scheduling.h"
#include "acts/shop_stock.h"
#include "documents/cut.h"
#include "documents/shipped_orders.h"
#include "measure/writing.h"
#include "schedule/batch.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

#include <QTemporaryDir>
#include <QThread>
#include <QtTest>

#include <algorithm>
#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

using namespace lapwright;
using schedule::PieceState;
using storage::Database;

namespace {

const storage::Stamp stamp{"2026-01-05T08:00:00Z", "office", ""};

/// The order of an invented house, wanted so early that its schedule has to be looked for.
documents::OrderDocument alder()
{
    static const pieces::Catalogue catalogue = texts::shippedCatalogue();
    auto job = documents::readJob(
        texts::read(QString::fromStdString(sourceDirectory()) + "/tests/command/cases/alder.job.json"));
    job->value.wantedBy = "2026-11-30";
    return texts::orderOf(job->value, catalogue);
}

void takeIn(const Database& database, const documents::OrderDocument& order)
{
    const std::string text = documents::writeOrder(order);
    const auto arrival =
        storage::receiveOrder(database, acts::incoming(order, text, order.value), stamp, false);
    QCOMPARE(arrival.outcome, storage::Arrival::Outcome::Taken);
}

/// Sheets enough for the house.
acts::PlanRequest requestFor(const site::Material& material)
{
    schedule::StockItem sheets{material, {}};
    sheets.stock.key = "sheets";
    sheets.stock.kind = cutting::StockKind::Sheet;
    sheets.stock.width = Length::inches(48);
    sheets.stock.length = Length::inches(126);
    sheets.stock.count = 50;
    schedule::ShopStock stock;
    stock.items = {sheets};
    stock.machines = {"long-folder-up"};
    acts::PlanRequest request;
    request.stock = documents::Document<schedule::ShopStock>{stock, {}};
    request.settings.workLimit = 100;
    return request;
}

std::int64_t countOf(const std::vector<storage::PlannedPiece>& pieces)
{
    std::int64_t count = 0;
    for (const storage::PlannedPiece& piece : pieces)
        count += piece.count;
    return count;
}

/// Pieces in the plans that wait to be cut.
std::int64_t waiting(const Database& database)
{
    std::int64_t count = 0;
    for (const storage::StoredPlan& plan : storage::waitingPlans(database))
        count += countOf(storage::piecesOfPlan(database, plan.id));
    return count;
}

std::int64_t inState(const Database& database, PieceState state)
{
    return storage::shopCounts(database).of(state);
}

} // namespace

class PlanningTest : public QObject {
    Q_OBJECT

private slots:
    void init()
    {
        folder_ = std::make_unique<QTemporaryDir>();
        database_.emplace(Database::open(address()).value());
        order_ = alder();
        takeIn(database(), order_);
        request_ = requestFor(order_.value.job.material);
        QVERIFY(acts::planAll(database(), request_, stamp).ok());
        all_ = waiting(database());
        QVERIFY(all_ > 0);
        request_.stock.reset();
    }

    void whatIsCutMeanwhileIsNotCutTwice()
    {
        planWhile([this] {
            QVERIFY(acts::cutPlan(database(), storage::waitingPlans(database()).front().id, stamp).ok());
        });
        QCOMPARE(inState(database(), PieceState::Cut), all_);
        QCOMPARE(waiting(database()), std::int64_t{0});
    }

    void aSheetThatIsTickedMeanwhileIsCut()
    {
        planWhile([this] {
            QVERIFY(storage::tickPattern(database(), storage::waitingPlans(database()).front().id, 0, true,
                                         stamp));
        });
        const std::int64_t cut = inState(database(), PieceState::Cut);
        QVERIFY(cut > 0);
        QCOMPARE(waiting(database()), all_ - cut);
    }

    void aSheetThatIsTickedWhileTicksAreSettledIsCut()
    {
        const storage::StoredPlan plan = storage::waitingPlans(database()).front();
        QVERIFY(storage::tickPattern(database(), plan.id, 0, true, stamp));
        std::promise<void> writes;
        const auto other = std::async(std::launch::async, [&] {
            const Database station = Database::open(address()).value();
            station.write([&] {
                writes.set_value();
                QThread::msleep(500); // meanwhile this station looks what is ticked
                storage::tickPatterns(station, plan.id, {1}, stamp);
            });
        });
        writes.get_future().wait();
        QVERIFY(acts::settleTicks(database(), std::nullopt, stamp).empty());
        const auto cut = documents::readCutPlan(plan.document)->value;
        QCOMPARE(inState(database(), PieceState::Cut),
                 countOf(acts::portionOf(cut, {{0, 1}, std::nullopt}).cut));
    }

    void aStripThatIsSpoiltLeavesWhatAnotherStationTicked()
    {
        const storage::StoredPlan plan = storage::waitingPlans(database()).front();
        QVERIFY(storage::tickPattern(database(), plan.id, 0, true, stamp));
        const auto twice = acts::spoilStrip(database(), plan.id, {0, 0}, stamp);
        QVERIFY(twice.ok() && !twice->errors.empty());
        QCOMPARE(inState(database(), PieceState::Cut), std::int64_t{0});

        QVERIFY(acts::spoilStrip(database(), plan.id, {1, 0}, stamp)->errors.empty());
        const auto cut = documents::readCutPlan(plan.document)->value;
        const acts::Portion portion = acts::portionOf(cut, {{0}, acts::CutPart::Spoilt{1, 0}});
        QVERIFY(countOf(portion.spoilt) > 0);
        QCOMPARE(inState(database(), PieceState::Cut), countOf(portion.cut) - countOf(portion.spoilt));
    }

    void stockThatComesMeanwhileIsPlannedFrom()
    {
        planWhile([this] {
            schedule::StockItem late = requestFor(order_.value.job.material).stock->value.items.front();
            late.stock.key = "late rack";
            const pieces::Catalogue catalogue = texts::shippedCatalogue();
            QVERIFY(acts::putOnRacks(database(), {std::nullopt, {late, {}}}, catalogue.metals, stamp).ok());
        });
        for (const storage::StoredPlan& plan : storage::waitingPlans(database()))
            QVERIFY(plan.document.find("late rack") != std::string::npos);
        QCOMPARE(waiting(database()), all_);
    }

    void anOrderThatIsHeldMeanwhileIsNotPlanned()
    {
        planWhile([this] { QVERIFY(acts::holdOrder(database(), order_.value.id, true, stamp).ok()); });
        QCOMPARE(waiting(database()), std::int64_t{0});
    }

    void aRevisionThatComesMeanwhileIsWhatIsPlanned()
    {
        documents::OrderDocument next = order_;
        next.value.previousHash = documents::revisionHash(order_);
        next.value.revision = 2;
        for (pieces::Piece& piece : next.value.pieces)
            piece.blankLength = piece.blankLength - Length::millimetres(100);
        planWhile([&] { takeIn(database(), next); });
        const auto plan = documents::readCutPlan(storage::waitingPlans(database()).front().document)->value;
        for (const cutting::Blank& blank : plan.problem.blanks) {
            const auto piece = std::find_if(
                next.value.pieces.begin(), next.value.pieces.end(), [&](const pieces::Piece& one) {
                    return schedule::blankKey(next.value.id, one.mark) == blank.key;
                });
            QVERIFY(piece != next.value.pieces.end());
            QVERIFY(blank.length < piece->blankLength + Length::millimetres(100));
        }
        QCOMPARE(waiting(database()), all_);
    }

    void aBlankThatFitsNoStockIsCalledByItsHouse()
    {
        request_ = requestFor(order_.value.job.material);
        request_.stock->value.items.front().stock.length = Length::inches(12);
        const auto planned = acts::planAll(database(), request_, stamp);
        QVERIFY(planned.ok());
        const acts::PlannedBatch& batch = planned->batches.front();
        QVERIFY(!batch.refusals.empty());
        for (const cutting::Refusal& refusal : batch.refusals) {
            const std::string said = say(refusal.reason, {});
            const std::string name = order_.value.job.name + ", " + schedule::markOfBlank(refusal.key);
            QVERIFY2(said.find(name) != std::string::npos, said.c_str());
            QVERIFY2(said.find(order_.value.id) == std::string::npos, said.c_str());
        }
    }

    void aShopThatChangesEachTimeIsSaidAndKeepsItsPlans()
    {
        std::int64_t priority = 0;
        request_.progress = [&](const cutting::Progress&) {
            (void)storage::setPriority(database(), order_.value.id, ++priority);
            return true;
        };
        const std::string before = storage::waitingPlans(database()).front().id;
        const auto planned = acts::planAll(database(), request_, stamp);
        QVERIFY(!planned.ok());
        QVERIFY(planned.errors().front().sentence().find("plan again") != std::string::npos);
        QCOMPARE(storage::waitingPlans(database()).front().id, before);
    }

    void aPinThatIsSetMeanwhileStays()
    {
        const std::vector<acts::OtherPin> pins = somePins(2);
        acts::ScheduleRequest here = anew(), there = anew();
        here.pins = pins[0];
        there.pins = pins[1];
        std::optional<bool> pinned;
        here.goOn = [&](const schedule::Progress&) {
            if (!pinned)
                pinned = acts::scheduleAll(database(), there).ok();
            return true;
        };
        QVERIFY(acts::scheduleAll(database(), here).ok());
        QCOMPARE(pinned, true);
        const auto kept = acts::standingSchedule(database()).value()->pins;
        QCOMPARE(kept.size(), std::size_t{2});
        for (const acts::OtherPin& pin : pins)
            QVERIFY(std::find(kept.begin(), kept.end(), *pin.pin) != kept.end());
    }

    void aScheduleThatChangesEachTimeIsSaidAndStays()
    {
        const std::vector<acts::OtherPin> pins = somePins(2);
        acts::ScheduleRequest request = anew();
        bool other = false;
        request.goOn = [&](const schedule::Progress&) {
            acts::ScheduleRequest there = anew();
            there.pins = pins[std::exchange(other, !other) ? 0 : 1];
            return acts::scheduleAll(database(), there).ok();
        };
        const auto scheduled = acts::scheduleAll(database(), request);
        QVERIFY(!scheduled.ok());
        QVERIFY(scheduled.errors().front().sentence().find("schedule again") != std::string::npos);
        QVERIFY(!acts::standingSchedule(database()).value()->pins.empty());
    }

private:
    [[nodiscard]] std::string address() const { return folder_->filePath("shop.db").toStdString(); }
    [[nodiscard]] const Database& database() const { return *database_; }

    /// Plans, and does `change` once while the plan is looked for.
    void planWhile(const std::function<void()>& change)
    {
        bool changed = false;
        request_.progress = [&](const cutting::Progress&) {
            if (!std::exchange(changed, true))
                change();
            return true;
        };
        const auto planned = acts::planAll(database(), request_, stamp);
        QVERIFY(changed);
        QVERIFY2(planned.ok(), planned.ok() ? "" : planned.errors().front().sentence().c_str());
    }

    static acts::ScheduleRequest anew()
    {
        acts::ScheduleRequest request;
        request.from = schedule::momentOf({2026, 11, 30}, schedule::Duration::hours(7));
        request.settings.workLimit = 100;
        return request;
    }
    /// Of the first tasks of a schedule that is made for it, each where it is.
    [[nodiscard]] std::vector<acts::OtherPin> somePins(std::size_t count) const
    {
        const auto record = acts::scheduleAll(database(), anew()).value().record.value();
        std::vector<acts::OtherPin> pins;
        for (const schedule::RecordedTask& task : record.tasks)
            if (pins.size() < count)
                pins.push_back({task.key, schedule::NamedPin{task.key, task.machine, task.start, {}}});
        return pins;
    }

    std::unique_ptr<QTemporaryDir> folder_;
    std::optional<Database> database_;
    documents::OrderDocument order_;
    acts::PlanRequest request_;
    std::int64_t all_ = 0; ///< pieces of the order
};

QTEST_GUILESS_MAIN(PlanningTest)
#include "tst_planning.moc"
