// Guards: a pinned task stands where it is pinned and the rest is planned around it; pinning everything where
// it is changes nothing; a pin that cannot be kept is named with its reason and left out; a late lot says
// what it waited for.
#include "random_floors.h"
#include "schedule/checker.h"
#include "schedule/solve.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

/// One cutter and two folders that work 07:00-15:00 from Monday; three lots of an hour's cutting and two
/// hours' folding each, all wanted on Monday at 14:00.
class Floor {
public:
    Floor() : builder_(monday())
    {
        Hours hours;
        for (auto& day : hours.week)
            day = {{Duration::hours(7), Duration::hours(15)}};
        builder_.machine({"cutter", "Cutter", Stage::Cut, hours, {}, {}});
        builder_.machine({"folder 1", "Folder 1", Stage::Fold, hours, {}, {}});
        builder_.machine({"folder 2", "Folder 2", Stage::Fold, hours, {}, {}});
        for (std::size_t lot = 0; lot < 3; ++lot) {
            const std::string name = "house " + std::to_string(lot);
            const std::size_t delivery = builder_.delivery({name, name, monday() + Duration::hours(14), 1});
            const std::size_t cut = builder_.task(
                {"cut " + name, "cut " + name, Stage::Cut, 6, {{0, 600'000, {}, {}, {}}}, {}, {}});
            const std::size_t folds = builder_.task({name,
                                                     name,
                                                     Stage::Fold,
                                                     12,
                                                     {{1, 600'000, {}, {}, {}}, {2, 600'000, {}, {}, {}}},
                                                     delivery,
                                                     {}});
            builder_.supply({cut, folds, 12});
        }
    }
    ProblemBuilder& builder() { return builder_; }
    /// Tasks: cut 0, lot 1, cut 2, lot 3, cut 4, lot 5.
    Schedule with(const std::vector<Pin>& pins)
    {
        ProblemBuilder builder = builder_;
        for (const Pin& pin : pins)
            builder.pin(pin);
        const Problem problem = builder.build().value();
        Schedule schedule = solve(problem, {});
        const auto verdict = check(problem, schedule);
        faults = verdict.faults;
        return schedule;
    }
    std::vector<std::string> faults;

private:
    ProblemBuilder builder_;
};

const Block& blockOf(const Schedule& schedule, std::size_t task)
{
    return *std::find_if(schedule.blocks.begin(), schedule.blocks.end(),
                         [task](const Block& block) { return block.task == task; });
}

Moment at(std::int64_t hour)
{
    return monday() + Duration::hours(hour);
}

} // namespace

class PinsTest : public QObject {
    Q_OBJECT
private slots:
    void withoutPinsByHand()
    {
        // Cuts end at 8, 9 and 10; lots begin then, on two folders: 8-10, 9-11, 10-12 (arithmetic).
        const Schedule schedule = Floor().with({});
        QCOMPARE(schedule.score.makespan, Duration::hours(12));
        QCOMPARE(schedule.score.weightedLateness, std::int64_t{0});
        QVERIFY(schedule.late.empty() && schedule.findings.empty());
    }
    void aPinnedStartIsKept()
    {
        Floor floor;
        const Schedule schedule = floor.with({{1, 2, at(11), {}}});
        QVERIFY2(floor.faults.empty(), floor.faults.empty() ? "" : floor.faults.front().c_str());
        QVERIFY(blockOf(schedule, 1).start == at(11));
        QCOMPARE(blockOf(schedule, 1).machine, std::size_t{2});
        QVERIFY(schedule.feasibility.all() && schedule.findings.empty());
    }
    void anOrderOnAMachineIsKept()
    {
        Floor floor;
        const Schedule schedule = floor.with({{1, 1, {}, 5}, {5, {}, {}, 3}});
        QVERIFY(schedule.feasibility.all() && schedule.findings.empty());
        QVERIFY(blockOf(schedule, 3).end <= blockOf(schedule, 5).start);
        QVERIFY(blockOf(schedule, 5).end <= blockOf(schedule, 1).start);
        QCOMPARE(blockOf(schedule, 3).machine, std::size_t{1});
    }
    void everythingPinnedIsTheSame()
    {
        std::mt19937 random(9);
        for (int trial = 0; trial < 60; ++trial) {
            RandomFloor floor;
            floor.cutters = 1 + random() % 2;
            floor.folders = 1 + random() % 2;
            floor.cuts = 2 + random() % 3;
            floor.lots = 2 + random() % 3;
            ProblemBuilder builder = randomProblem(random, floor);
            const Schedule before = solve(builder.build().value(), {});
            for (const Block& block : before.blocks)
                builder.pin({block.task, block.machine, block.start, {}});
            const Problem pinned = builder.build().value();
            QVERIFY(pinned.refusedPins().empty());
            const Schedule after = solve(pinned, {});
            QVERIFY2(after.feasibility.all(), std::to_string(trial).c_str());
            QVERIFY2(after.score == before.score, std::to_string(trial).c_str());
            for (const Block& block : before.blocks) {
                QVERIFY(blockOf(after, block.task).start == block.start);
                QCOMPARE(blockOf(after, block.task).machine, block.machine);
            }
        }
    }
    void whatCannotBeIsNamed_data()
    {
        QTest::addColumn<QString>("code");
        QTest::addColumn<int>("which");
        const char* codes[] = {"machine", "past", "hours", "blanks", "clash", "ring", "twice", "after"};
        for (int which = 0; which < 8; ++which)
            QTest::newRow(codes[which]) << QString("schedule.pin.") + codes[which] << which;
    }
    void whatCannotBeIsNamed()
    {
        QFETCH(QString, code);
        QFETCH(int, which);
        const std::vector<std::vector<Pin>> cases = {
            {{1, 0, {}, {}}},                             // a cutter does not fold
            {{1, {}, monday() - Duration::hours(1), {}}}, // before the schedule begins
            {{1, {}, at(6), {}}},                         // before the shift
            {{1, {}, at(7), {}}},                         // nothing is cut yet
            {{1, 1, at(10), {}}, {3, 1, at(11), {}}},     // two hours each
            {{1, {}, {}, 3}, {3, {}, {}, 1}},
            {{1, 1, {}, {}}, {1, 2, {}, {}}},
            {{1, {}, {}, 0}}}; // a lot after a cut: no machine does both
        Floor floor;
        const Schedule schedule = floor.with(cases[static_cast<std::size_t>(which)]);
        QCOMPARE(schedule.findings.size(), std::size_t{1});
        QCOMPARE(QString::fromStdString(schedule.findings.front().code), code);
        QVERIFY(schedule.findings.front().weight == rules::Weight::Blocks);
        QVERIFY2(floor.faults.empty(), floor.faults.empty() ? "" : floor.faults.front().c_str());
    }
    void pinsThatOnlyCannotBeKeptTogetherAreNamed()
    {
        // Cutting pinned to the afternoon, folding to the morning: each alone could be.
        Floor floor;
        const Schedule schedule = floor.with({{0, 0, at(13), {}}, {1, 1, at(9), {}}});
        QCOMPARE(schedule.findings.size(), std::size_t{1});
        QCOMPARE(schedule.findings.front().code, std::string("schedule.pin.missed"));
        QCOMPARE(schedule.findings.front().place, std::string("house 0"));
        QVERIFY(schedule.feasibility.workable() && !schedule.feasibility.pinsKept);
    }
    void aLateLotSaysWhatItWaitedFor()
    {
        Floor floor;
        const Schedule pinned = floor.with({{1, 1, at(13), {}}});
        QCOMPARE(pinned.late.size(), std::size_t{1});
        QVERIFY(pinned.late.front().kind == LateReason::Kind::Pinned);
        QCOMPARE(pinned.late.front().late, Duration::hours(1));
        // All on one folder: 8-10, 10-12, 12-14, and a fourth house after them is late for want of a machine.
        ProblemBuilder builder = floor.builder();
        const std::size_t delivery = builder.delivery({"last", "last", at(14), 1});
        const std::size_t cut =
            builder.task({"cut last", "cut last", Stage::Cut, 6, {{0, 600'000, {}, {}, {}}}, {}, {}});
        const std::size_t lot =
            builder.task({"last", "last", Stage::Fold, 12, {{1, 600'000, {}, {}, {}}}, delivery, {}});
        builder.supply({cut, lot, 12});
        for (const std::size_t other : {std::size_t{1}, std::size_t{3}, std::size_t{5}})
            builder.pin({other, 1, {}, {}});
        const Problem problem = builder.build().value();
        const Schedule schedule = solve(problem, {});
        QCOMPARE(schedule.late.size(), std::size_t{1});
        const LateReason& reason = schedule.late.front();
        QVERIFY(reason.kind == LateReason::Kind::WaitedForMachine);
        QCOMPARE(reason.machine.value(), std::size_t{1});
        QCOMPARE(reason.before.size(), std::size_t{3});
        QCOMPARE(schedule.bound.weightedLateness, schedule.score.weightedLateness);
    }
    void notEnoughHoursIsSaid()
    {
        Floor floor;
        ProblemBuilder builder = floor.builder();
        const std::size_t delivery = builder.delivery({"soon", "soon", at(8), 1});
        builder.task({"soon", "soon", Stage::Fold, 12, {{1, 600'000, {}, {}, {}}}, delivery, {}});
        const Schedule schedule = solve(builder.build().value(), {});
        QVERIFY(!schedule.late.empty());
        QVERIFY(schedule.late.back().kind == LateReason::Kind::NotEnoughHours);
        QVERIFY(schedule.late.back().statement.text.find("even alone") != std::string::npos);
    }
    void brokenProblemsAreRefused()
    {
        Floor floor;
        const auto refused = [&](auto change) {
            ProblemBuilder builder = floor.builder();
            change(builder);
            const auto problem = builder.build();
            return problem.ok() ? std::string() : problem.errors().front().sentence();
        };
        QVERIFY(refused([](ProblemBuilder& b) {
                    b.supply({0, 1, 1});
                }).find("13 pieces supplied") != std::string::npos);
        QVERIFY(!refused([](ProblemBuilder& b) { b.supply({1, 0, 1}); }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) {
                     b.task({"house 0", "again", Stage::Fold, 1, {{1, 1, {}, {}, {}}}, {}, {}});
                 }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) { b.task({"x", "x", Stage::Fold, 1, {}, {}, {}}); }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) {
                     b.task({"x", "x", Stage::Fold, 1, {{0, 1, {}, {}, {}}}, {}, {}});
                 }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) {
                     b.task({"x", "x", Stage::Fold, 0, {{1, 1, {}, {}, {}}}, {}, {}});
                 }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) { b.pin({99, {}, {}, {}}); }).empty());
        QVERIFY(!refused([](ProblemBuilder& b) { b.transferPieces(0); }).empty());
        QVERIFY(refused([](ProblemBuilder&) {}).empty());
    }
};

QTEST_APPLESS_MAIN(PinsTest)
#include "tst_pins.moc"
