// Guards: where Johnson's rule is proved to give the least makespan it is used and gives it, with transfer of
// parts too; where it is not, it is not taken for a proof.
#include "random_floors.h"
#include "schedule/johnson.h"
#include "schedule/solve.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

/// The five items of the example in S. M. Johnson, "Optimal two- and three-stage production schedules with
/// setup times included", Naval Research Logistics Quarterly 1 (1954) 61-68: times, order 5 1 4 3 2 and total
/// elapsed time 47. From memory.
const std::vector<TwoStageJob> example{{4, 5, 4}, {4, 1, 4}, {30, 4, 30}, {6, 30, 6}, {2, 3, 2}};

Problem problemOf(const std::vector<TwoStageJob>& jobs, std::optional<std::int64_t> transfer = {})
{
    Hours hours;
    for (auto& day : hours.week)
        day = {{Duration(), Duration::days(1)}};
    ProblemBuilder builder(monday());
    const std::size_t cutter = builder.machine({"cutter", "cutter", Stage::Cut, hours, {}, {}});
    const std::size_t folder = builder.machine({"folder", "folder", Stage::Fold, hours, {}, {}});
    builder.transferPieces(transfer);
    for (std::size_t job = 0; job < jobs.size(); ++job) {
        const std::string name = std::to_string(job + 1);
        const std::size_t cut = builder.task({"cut " + name,
                                              "cut " + name,
                                              Stage::Cut,
                                              1,
                                              {{cutter, jobs[job].first * 1'000, {}, {}, {}}},
                                              {},
                                              {}});
        const std::size_t lot = builder.task({"lot " + name,
                                              "lot " + name,
                                              Stage::Fold,
                                              1,
                                              {{folder, jobs[job].second * 1'000, {}, {}, {}}},
                                              {},
                                              {}});
        builder.supply({cut, lot, 1});
    }
    return builder.build().value();
}

} // namespace

class JohnsonTest : public QObject {
    Q_OBJECT
private slots:
    void theExampleOf1954()
    {
        QCOMPARE(johnsonOrder(example), (std::vector<std::size_t>{4, 0, 3, 2, 1}));
        QCOMPARE(makespanOf(example, johnsonOrder(example)), std::int64_t{47});
        const Schedule schedule = solve(problemOf(example), {});
        QCOMPARE(schedule.score.makespan, Duration::seconds(47));
        QCOMPARE(schedule.bound.makespan, Duration::seconds(47));
        QCOMPARE(schedule.method, std::string("Johnson's rule"));
        QVERIFY(schedule.proof == Proof::ProvenBest && schedule.feasibility.all());
    }
    void noOrderIsBetter()
    {
        std::mt19937 random(1954);
        for (int trial = 0; trial < 300; ++trial) {
            std::vector<TwoStageJob> jobs(1 + random() % 6);
            for (TwoStageJob& job : jobs) {
                job.first = static_cast<std::int64_t>(random() % 20);
                job.second = static_cast<std::int64_t>(random() % 20);
                // Any lag that transfer of parts can give.
                job.lag =
                    job.first - std::min<std::int64_t>(job.second, static_cast<std::int64_t>(random() % 20));
            }
            std::vector<std::size_t> order(jobs.size());
            std::iota(order.begin(), order.end(), std::size_t{0});
            std::int64_t least = makespanOf(jobs, order);
            while (std::next_permutation(order.begin(), order.end()))
                least = std::min(least, makespanOf(jobs, order));
            QCOMPARE(makespanOf(jobs, johnsonOrder(jobs)), least);
        }
    }
    void ordersThatDifferOnTheTwoMachinesAreNoBetter()
    {
        std::mt19937 random(1959);
        RandomFloor floor;
        floor.setups = false;
        floor.due = false;
        int byRule = 0;
        for (int trial = 0; trial < 120; ++trial) {
            floor.cuts = floor.lots = 2 + random() % 2;
            ProblemBuilder builder(monday());
            const Hours hours = shortHours(random, trial % 2 == 0);
            const std::size_t cutter = builder.machine({"cutter", "cutter", Stage::Cut, hours, {}, {}});
            const std::size_t folder = builder.machine({"folder", "folder", Stage::Fold, hours, {}, {}});
            builder.transferPieces(static_cast<std::int64_t>(1 + random() % 3));
            for (std::size_t job = 0; job < floor.lots; ++job) {
                const auto pieces = static_cast<std::int64_t>(1 + random() % 5);
                const std::size_t cut = builder.task({"c" + std::to_string(job),
                                                      "c",
                                                      Stage::Cut,
                                                      static_cast<std::int64_t>(1 + random() % 3),
                                                      {randomWay(random, cutter, false)},
                                                      {},
                                                      {}});
                const std::size_t lot = builder.task({"l" + std::to_string(job),
                                                      "l",
                                                      Stage::Fold,
                                                      pieces,
                                                      {randomWay(random, folder, false)},
                                                      {},
                                                      {}});
                builder.supply({cut, lot, pieces});
            }
            const Problem problem = builder.build().value();
            const Schedule schedule = solve(problem, {});
            QCOMPARE(schedule.score.makespan, EveryOrder(problem).best().makespan);
            QCOMPARE(schedule.bound.makespan, schedule.score.makespan);
            byRule += schedule.method == "Johnson's rule" ? 1 : 0;
        }
        QVERIFY(byRule > 0);
    }
    void itIsNoProofWithDueDates()
    {
        std::vector<TwoStageJob> jobs = example;
        Problem problem = problemOf(jobs);
        QVERIFY(johnsonSchedule(problem).has_value());
        Hours hours = problem.machines()[0].hours;
        ProblemBuilder builder(monday());
        const std::size_t cutter = builder.machine({"cutter", "cutter", Stage::Cut, hours, {}, {}});
        const std::size_t folder = builder.machine({"folder", "folder", Stage::Fold, hours, {}, {}});
        // The long job is due at once, the short ones never: Johnson's order would make it late for nothing.
        const std::size_t urgent =
            builder.delivery({"urgent", "urgent", monday() + Duration::seconds(34), 1});
        for (std::size_t job = 0; job < jobs.size(); ++job) {
            const std::string name = std::to_string(job);
            const std::size_t cut = builder.task(
                {"c" + name, "c", Stage::Cut, 1, {{cutter, jobs[job].first * 1'000, {}, {}, {}}}, {}, {}});
            const std::size_t lot = builder.task({"l" + name,
                                                  "l",
                                                  Stage::Fold,
                                                  1,
                                                  {{folder, jobs[job].second * 1'000, {}, {}, {}}},
                                                  job == 2 ? std::optional(urgent) : std::nullopt,
                                                  {}});
            builder.supply({cut, lot, 1});
        }
        const Schedule schedule = solve(builder.build().value(), {});
        QCOMPARE(schedule.score.weightedLateness, std::int64_t{0});
        QVERIFY(schedule.method != "Johnson's rule");
        QVERIFY(schedule.feasibility.all());
    }
};

QTEST_APPLESS_MAIN(JohnsonTest)
#include "tst_johnson.moc"
