// Guards: on small floors no order of tasks is better than what is found, with setups, hours, several
// machines, transfer of parts, due dates and releases; no bound is above the best; every schedule passes its
// independent check; the same input gives the same schedule; more hours never make an exact schedule worse.
#include "random_floors.h"
#include "schedule/bound.h"
#include "schedule/checker.h"
#include "schedule/construct.h"
#include "schedule/search.h"
#include "schedule/solve.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

RandomFloor anyFloor(std::mt19937& random)
{
    RandomFloor floor;
    floor.cutters = 1 + random() % 2;
    floor.folders = 1 + random() % 2;
    floor.cuts = 1 + random() % 3;
    floor.lots = 1 + random() % 3;
    floor.setups = random() % 4 != 0;
    floor.shortShifts = random() % 3 != 0;
    floor.transfer = random() % 2 == 0;
    floor.due = random() % 3 != 0;
    floor.releases = random() % 3 == 0;
    return floor;
}

std::string faultsOf(const Problem& problem, const Schedule& schedule)
{
    std::string all;
    for (const std::string& fault : check(problem, schedule).faults)
        all += fault + "; ";
    return all;
}

/// A floor of `lots` orders in the size of a real shop's week.
Problem shopWeek(std::mt19937& random, std::size_t lots)
{
    RandomFloor floor;
    floor.cutters = 1;
    floor.folders = 2;
    floor.cuts = lots;
    floor.lots = lots;
    floor.shortShifts = false;
    return randomProblem(random, floor).build().value();
}

} // namespace

class SolveTest : public QObject {
    Q_OBJECT
private slots:
    void noOrderIsBetter()
    {
        std::mt19937 random(20261125);
        int proven = 0;
        for (int trial = 0; trial < 250; ++trial) {
            const Problem problem = randomProblem(random, anyFloor(random)).build().value();
            const Schedule schedule = solve(problem, {});
            const std::string place = "trial " + std::to_string(trial) + ": " + faultsOf(problem, schedule);
            QVERIFY2(schedule.feasibility.all(), place.c_str());
            QVERIFY2(schedule.proof == Proof::ProvenBest, place.c_str());
            QVERIFY2(schedule.score == EveryOrder(problem).best(), place.c_str());
            ++proven;
        }
        QCOMPARE(proven, 250);
    }
    void noBoundIsAboveTheBest()
    {
        std::mt19937 random(8);
        int sharp = 0;
        for (int trial = 0; trial < 400; ++trial) {
            const Problem problem = randomProblem(random, anyFloor(random)).build().value();
            const Score best = EveryOrder(problem).best();
            std::int64_t work = 0;
            const Bound bound = boundOf(problem, work);
            QVERIFY2(bound.makespan <= best.makespan, std::to_string(trial).c_str());
            QVERIFY2(bound.weightedLateness <= best.weightedLateness, std::to_string(trial).c_str());
            QVERIFY2(bound.makingReady <= best.makingReady, std::to_string(trial).c_str());
            sharp += bound.makespan == best.makespan ? 1 : 0;
        }
        QVERIFY2(sharp > 100, std::to_string(sharp).c_str());
    }
    void theSearchAloneFindsTheBestOfFewTasks()
    {
        std::mt19937 random(77);
        for (int trial = 0; trial < 40; ++trial) {
            const Problem problem = randomProblem(random, anyFloor(random)).build().value();
            Timing timing(problem);
            const Sequences start = inOrder(timing, arrivalOrder(problem));
            Settings settings;
            settings.workLimit = 60;
            const GoOn goOn;
            Watch watch(settings, goOn, {});
            const Candidate found = searched(timing, {start, timing.time(start).score}, 1, watch);
            QVERIFY2(found.score == EveryOrder(problem).best(), std::to_string(trial).c_str());
        }
    }
    void theCheapestMatchingIsTheCheapest()
    {
        std::mt19937 random(4);
        for (int trial = 0; trial < 200; ++trial) {
            const std::size_t size = 1 + random() % 6;
            std::vector<std::vector<std::int64_t>> cost(size, std::vector<std::int64_t>(size));
            for (auto& row : cost)
                for (std::int64_t& one : row)
                    one = static_cast<std::int64_t>(random() % 50);
            std::vector<std::size_t> columns(size);
            std::iota(columns.begin(), columns.end(), std::size_t{0});
            std::int64_t least = 1'000'000;
            do {
                std::int64_t sum = 0;
                for (std::size_t row = 0; row < size; ++row)
                    sum += cost[row][columns[row]];
                least = std::min(least, sum);
            } while (std::next_permutation(columns.begin(), columns.end()));
            QCOMPARE(cheapestMatching(cost), least);
        }
    }
    void aShopWeekIsSoundAndNoWorseThanSimpleRules()
    {
        std::mt19937 random(2026);
        for (const std::size_t lots : {12U, 40U, 90U}) {
            const Problem problem = shopWeek(random, lots);
            Settings settings;
            settings.workLimit = 300;
            const Schedule schedule = solve(problem, settings);
            QVERIFY2(schedule.feasibility.all(), faultsOf(problem, schedule).c_str());
            QVERIFY(schedule.score <= schedule.firstCome.score && schedule.score <= schedule.shortest.score);
            QVERIFY(schedule.bound.makespan <= schedule.score.makespan);
            const Schedule again = solve(problem, settings);
            QVERIFY(again.blocks == schedule.blocks && again.work == schedule.work);
        }
    }
    void itStopsWhenAsked()
    {
        std::mt19937 random(5);
        const Problem problem = shopWeek(random, 60);
        int asked = 0;
        std::optional<Score> last;
        Settings settings;
        settings.workLimit = 20'000;
        const Schedule schedule = solve(problem, settings, [&](const Progress& progress) {
            if (last && *last < progress.best)
                asked = -1'000;
            last = progress.best;
            return ++asked < 3;
        });
        QCOMPARE(asked, 3);
        QVERIFY(schedule.ending == Ending::Cancelled);
        QVERIFY(schedule.work < 200);
        QVERIFY2(schedule.feasibility.all(), faultsOf(problem, schedule).c_str());
    }
    void moreHoursAreNeverWorse()
    {
        std::mt19937 random(31);
        int better = 0;
        for (int trial = 0; trial < 60; ++trial) {
            RandomFloor floor = anyFloor(random);
            floor.shortShifts = true;
            const auto seed = random();
            std::mt19937 same(seed);
            const Problem problem = randomProblem(same, floor).build().value();
            // The same floor with a longer second shift every day.
            ProblemBuilder builder(monday());
            builder.transferPieces(problem.transferPieces());
            for (Machine machine : problem.machines()) {
                for (auto& day : machine.hours.week)
                    day.back().to += Duration::seconds(static_cast<std::int64_t>(random() % 4));
                builder.machine(machine);
            }
            for (const Delivery& delivery : problem.deliveries())
                builder.delivery(delivery);
            for (const Task& task : problem.tasks())
                builder.task(task);
            for (const Supply& supply : problem.supplies())
                builder.supply(supply);
            const Schedule before = solve(problem, {}), after = solve(builder.build().value(), {});
            QVERIFY(before.proof == Proof::ProvenBest && after.proof == Proof::ProvenBest);
            QVERIFY(after.score.weightedLateness <= before.score.weightedLateness);
            if (before.score.weightedLateness == 0)
                QVERIFY(after.score.makespan <= before.score.makespan);
            better += after.score < before.score ? 1 : 0;
        }
        QVERIFY(better > 0);
    }
    void theCheckerSeesWhatIsWrong()
    {
        std::mt19937 random(12);
        RandomFloor floor;
        floor.shortShifts = false;
        const Problem problem = randomProblem(random, floor).build().value();
        const Schedule sound = solve(problem, {});
        QVERIFY(check(problem, sound).faults.empty());
        const auto broken = [&](auto change) {
            Schedule schedule = sound;
            change(schedule);
            return check(problem, schedule).feasibility;
        };
        QVERIFY(!broken([](Schedule& s) { s.blocks.pop_back(); }).everyTaskOnce);
        QVERIFY(!broken([](Schedule& s) { s.blocks.push_back(s.blocks.front()); }).everyTaskOnce);
        QVERIFY(!broken([](Schedule& s) { s.blocks.front().machine = 1; }).machinesAble);
        QVERIFY(!broken([](Schedule& s) {
                     s.blocks.front().end = s.blocks.front().end + Duration::seconds(1);
                 }).inHours);
        QVERIFY(!broken([](Schedule& s) { s.score.makespan += Duration::seconds(1); }).scoreRight);
        QVERIFY(!broken([](Schedule& s) {
                     s.bound.makespan = s.score.makespan + Duration::seconds(1);
                 }).boundHolds);
        QVERIFY(!broken([](Schedule& s) { s.blocks.front().sets = !s.blocks.front().sets; }).madeReady);
        QVERIFY(!broken([](Schedule& s) {
                     for (Block& block : s.blocks)
                         if (block.machine == 1) {
                             block.end = block.end - (block.start - monday());
                             block.setupFrom = block.start = monday();
                         }
                 }).oneAtATime);
    }
};

QTEST_APPLESS_MAIN(SolveTest)
#include "tst_solve.moc"
