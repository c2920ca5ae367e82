// Guards: what a plan is asked for besides least metal: what is due first, few slitter setups, offcuts worth
// keeping; that a search can be stopped at once and repeats itself; and that lengths of any units are
// planned, not only first fitted.
#include "cutting/checker.h"
#include "cutting/solve.h"
#include "cutting/value_correction.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

Length mm(std::int64_t count)
{
    return Length::millimetres(count);
}

Stock sheet(std::int64_t width, std::int64_t length)
{
    return {"sheet", StockKind::Sheet, mm(width), mm(length), std::nullopt, std::nullopt, std::nullopt};
}

Settings quick(std::int64_t work)
{
    Settings settings;
    settings.workLimit = work;
    return settings;
}

/// A batch as shops have them: some tens of girths, many lengths.
ProblemBuilder batch(unsigned seed, int kinds, int dueClasses)
{
    std::mt19937 random(seed);
    ProblemBuilder builder;
    builder.stock(sheet(1'220, 3'050));
    for (int kind = 0; kind < kinds; ++kind)
        builder.blank({std::to_string(kind), mm(90 + 10 * static_cast<int>(random() % 30)),
                       mm(300 + 50 * static_cast<int>(random() % 54)), 1 + static_cast<int>(random() % 6),
                       false, static_cast<int>(random() % static_cast<unsigned>(dueClasses)), 0});
    return builder;
}

std::int64_t valueOfUrgentAlone(const Problem& problem, int dueClass, const Settings& settings)
{
    ProblemBuilder builder;
    builder.rules(problem.rules());
    for (const Stock& stock : problem.stocks())
        builder.stock(stock);
    for (const Blank& blank : problem.blanks())
        if (blank.dueClass <= dueClass)
            builder.blank(blank);
    return solve(*builder.build(), settings).value;
}

} // namespace

class CuttingGoalsTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsDueFirstGetsItsBestPlan();
    void dueClassesTakeNoMoreThanEachAlone();
    void urgentBlanksGetTheScarceStock();
    void theTextbookRollNeedsFewSetups();
    void theSearchForSetupsEnds();
    void fewerSetupsCostNoMetal();
    void creditedOffcutsGrow();
    void aCreditChoosesTheSheet();
    void aSearchStopsWhenTold();
    void mixedUnitsAreNotFirstFitted();
    void twoThreadsPlanTheSame();
    void valueCorrectionPlansBlanksThatTurn();
};

void CuttingGoalsTest::whatIsDueFirstGetsItsBestPlan()
{
    const auto problem = batch(3, 24, 3).build();
    QVERIFY(problem.ok());
    const Plan plan = solve(*problem, quick(200));
    QVERIFY(plan.feasibility.all());
    QCOMPARE(plan.dueStages.size(), 3U);
    QCOMPARE(plan.dueStages.back().value, plan.value);
    const std::int64_t alone = valueOfUrgentAlone(*problem, 0, quick(200));
    QCOMPARE(plan.dueStages.front().value, alone);
    QVERIFY(plan.dueStages.front().bound > 0);
    // The patterns with urgent blanks come first.
    int last = 0;
    for (const Pattern& pattern : plan.patterns) {
        int earliest = 3;
        for (const Strip& strip : pattern.strips)
            for (const Crosscut& crosscut : strip.crosscuts)
                earliest = std::min(earliest, problem->blanks()[crosscut.blank].dueClass);
        QVERIFY(earliest >= last);
        last = earliest;
    }
    Settings together = quick(200);
    together.dueFirst = false;
    const Plan without = solve(*problem, together);
    QVERIFY(without.dueStages.empty());
    QVERIFY(without.value <= plan.value);
    Plan wrong = plan;
    wrong.dueStages.front().bound = wrong.dueStages.front().value;
    wrong.dueStages.front().certificate = plan.certificate;
    QVERIFY(!check(*problem, wrong).feasibility.dueStagesRight);
}

/// Later blanks fill what earlier ones leave, so that together they take less than one after the other.
void CuttingGoalsTest::dueClassesTakeNoMoreThanEachAlone()
{
    const auto problem = batch(21, 120, 3).build();
    QVERIFY(problem.ok());
    const Plan plan = solve(*problem, quick(150));
    QVERIFY(plan.feasibility.all());
    std::int64_t alone = 0;
    for (int dueClass = 0; dueClass < 3; ++dueClass) {
        ProblemBuilder builder;
        builder.stock(problem->stocks().front());
        for (const Blank& blank : problem->blanks())
            if (blank.dueClass == dueClass)
                builder.blank(blank);
        alone += solve(*builder.build(), quick(50)).value;
    }
    QVERIFY2(plan.value <= alone, (std::to_string(plan.value) + " and " + std::to_string(alone)).c_str());
}

void CuttingGoalsTest::urgentBlanksGetTheScarceStock()
{
    ProblemBuilder builder;
    Stock one = sheet(1'000, 1'000);
    one.count = 1;
    builder.stock(one);
    builder.blank({"later", mm(900), mm(900), 1, false, 1, 0});
    builder.blank({"urgent", mm(800), mm(800), 1, false, 0, 0});
    const auto problem = builder.build();
    QVERIFY(problem.ok());
    const Plan plan = solve(*problem, quick(100));
    QVERIFY(plan.feasibility.cuttable());
    QCOMPARE(plan.notCut.size(), 1U);
    QCOMPARE(problem->blanks()[plan.notCut.front().blank].key, std::string("later"));
}

/// The paper-roll example of the encyclopaedia article "Cutting stock problem" (en.wikipedia.org): 73 rolls,
/// and as the article says 10 patterns suffice for them.
void CuttingGoalsTest::theTextbookRollNeedsFewSetups()
{
    ProblemBuilder builder;
    builder.stock(sheet(5'600, 1'000));
    const int widths[] = {1'380, 1'520, 1'560, 1'710, 1'820, 1'880, 1'930,
                          2'000, 2'050, 2'100, 2'140, 2'150, 2'200};
    const int demands[] = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    for (std::size_t index = 0; index < std::size(widths); ++index)
        builder.blank(
            {std::to_string(widths[index]), mm(widths[index]), mm(1'000), demands[index], false, 0, 0});
    const Plan plan = solve(*builder.build(), quick(500));
    QVERIFY(plan.feasibility.all());
    QCOMPARE(plan.value, 73);
    QVERIFY(plan.proof == Proof::ProvenLeast);
    QVERIFY2(plan.setups <= 10, std::to_string(plan.setups).c_str());
}

/// Counts no setup can finish: more strips of each width than sheets, and odd ones. Without a clock only the
/// work limit ends the search.
void CuttingGoalsTest::theSearchForSetupsEnds()
{
    for (const int count : {3, 7, 9, 11}) {
        ProblemBuilder builder;
        builder.stock(sheet(100, 1'000));
        for (const int width : {19, 20, 21, 22, 23})
            builder.blank({std::to_string(width), mm(width), mm(1'000), count, false, 0, 0});
        const Plan plan = solve(*builder.build(), quick(300));
        QVERIFY(plan.feasibility.all());
        QVERIFY(plan.work <= 310);
    }
}

void CuttingGoalsTest::fewerSetupsCostNoMetal()
{
    const auto problem = batch(5, 60, 1).build();
    QVERIFY(problem.ok());
    Settings settings = quick(300);
    const Plan few = solve(*problem, settings);
    settings.fewerSetups = false;
    const Plan any = solve(*problem, settings);
    QVERIFY(few.feasibility.all() && any.feasibility.all());
    QVERIFY(few.value <= any.value);
    QVERIFY2(few.setups < any.setups,
             (std::to_string(few.setups) + " and " + std::to_string(any.setups)).c_str());
    QVERIFY(!few.setupTrades.empty());
    QCOMPARE(few.setupTrades.front().value, few.value);
    QCOMPARE(few.setupTrades.front().setups, few.setups);
}

/// No more metal is taken, more of it is kept, and the plan is worth what it takes less the credits.
void CuttingGoalsTest::creditedOffcutsGrow()
{
    double kept[2] = {0.0, 0.0}, taken[2] = {0.0, 0.0};
    for (const int percent : {0, 50}) {
        ProblemBuilder builder = batch(9, 60, 1);
        ShopRules rules;
        rules.leastRemnantWidth = mm(100);
        rules.leastRemnantLength = mm(600);
        rules.remnantCreditPercent = percent;
        builder.rules(rules);
        const Plan plan = solve(*builder.build(), quick(150));
        QVERIFY(plan.feasibility.all());
        kept[percent / 50] = plan.waste.remnants;
        taken[percent / 50] = plan.waste.stock;
        if (percent == 0)
            continue;
        QVERIFY(plan.measure == Measure::Cost);
        const double net = (plan.waste.stock - 0.5 * plan.waste.remnants) * 1e6;
        QVERIFY(std::abs(static_cast<double>(plan.value) / static_cast<double>(plan.costScale) / net - 1.0) <
                1e-4);
    }
    QCOMPARE(taken[0], taken[1]);
    QVERIFY2(kept[1] > kept[0], (std::to_string(kept[0]) + " and " + std::to_string(kept[1])).c_str());
}

/// The dearer sheet leaves a remnant worth more than the difference.
void CuttingGoalsTest::aCreditChoosesTheSheet()
{
    for (const int percent : {0, 80}) {
        ProblemBuilder builder;
        ShopRules rules;
        rules.leastRemnantWidth = rules.leastRemnantLength = mm(300);
        rules.remnantCreditPercent = percent;
        builder.rules(rules);
        for (const auto& [key, width, cost] :
             {std::tuple("narrow", 1'000, 100), std::tuple("wide", 1'300, 120)}) {
            Stock stock = sheet(width, 2'000);
            stock.key = key;
            stock.cost = cost;
            builder.stock(stock);
        }
        builder.blank({"cover", mm(950), mm(1'900), 40, false, 0, 0});
        const auto problem = builder.build();
        QVERIFY(problem.ok());
        const Plan plan = solve(*problem, quick(200));
        QVERIFY(plan.feasibility.all());
        for (const Pattern& pattern : plan.patterns)
            QCOMPARE(problem->stocks()[pattern.stock].key, std::string(percent == 0 ? "narrow" : "wide"));
    }
}

void CuttingGoalsTest::aSearchStopsWhenTold()
{
    const auto problem = batch(7, 200, 1).build();
    QVERIFY(problem.ok());
    for (const int answers : {0, 1, 5, 40}) {
        int asked = 0;
        Control control;
        control.progress = [&](const Progress&) { return asked++ < answers; };
        const Plan plan = solve(*problem, quick(1'000'000), control);
        QVERIFY(plan.feasibility.all());
        QVERIFY(plan.ending == Ending::Cancelled || plan.ending == Ending::Proven);
        QVERIFY(asked <= answers + 1);
    }
    // The clock is the caller's: each look at it takes a millisecond here.
    std::chrono::microseconds now(0);
    Control control;
    control.clock = [&now] { return now += std::chrono::milliseconds(1); };
    Settings settings = quick(1'000'000);
    settings.timeLimit = std::chrono::milliseconds(300);
    settings.fewerSetups = false;
    std::chrono::microseconds shown(0), silence(0);
    control.progress = [&](const Progress&) {
        silence = std::max(silence, now - shown);
        shown = now;
        return true;
    };
    const Plan plan = solve(*problem, settings, control);
    QVERIFY(plan.feasibility.all());
    QVERIFY(now <= std::chrono::milliseconds(400));
    QVERIFY(silence <= std::chrono::milliseconds(100));
}

void CuttingGoalsTest::mixedUnitsAreNotFirstFitted()
{
    // Girths from bend deductions in nanometres, lengths in inches and millimetres with a kerf.
    std::mt19937 random(31);
    ProblemBuilder builder;
    ShopRules rules;
    rules.kerf = Length::nanometres(1'234'567);
    builder.rules(rules);
    builder.stock({"48x120", StockKind::Sheet, Length::inches(48), Length::inches(120), std::nullopt,
                   std::nullopt, std::nullopt});
    for (int kind = 0; kind < 60; ++kind)
        builder.blank({std::to_string(kind),
                       Length::nanometres(80'000'001 + static_cast<std::int64_t>(random() % 20) * 17'654'321),
                       kind % 2 == 0 ? Length::sixtyFourths(64 * 12 + static_cast<int>(random() % 6'000))
                                     : mm(300 + static_cast<int>(random() % 2'400)),
                       1 + static_cast<int>(random() % 5), false, 0, 0});
    // A blank as long as the sheet fits whatever the unit.
    builder.blank({"whole", Length::nanometres(100'000'001), Length::inches(120), 1, false, 0, 0});
    const auto problem = builder.build();
    QVERIFY(problem.ok());
    const Plan first = solve(*problem, quick(0)), plan = solve(*problem, quick(200));
    QVERIFY(first.feasibility.all() && plan.feasibility.all());
    QVERIFY2(plan.value < first.value,
             (std::to_string(plan.value) + " and " + std::to_string(first.value)).c_str());
    QVERIFY(plan.gap() < 0.03);
}

void CuttingGoalsTest::twoThreadsPlanTheSame()
{
    for (const PatternClass patterns : {PatternClass::Exact, PatternClass::NonExact}) {
        ProblemBuilder builder = batch(13, 100, 2);
        ShopRules rules;
        rules.patterns = patterns;
        builder.rules(rules);
        const auto problem = builder.build();
        Settings settings = quick(150);
        const Plan one = solve(*problem, settings);
        settings.threads = 2;
        QVERIFY(solve(*problem, settings) == one);
    }
}

/// A kind that turns lies in the tables both ways: a strip of both may hold more of it than is wanted.
void CuttingGoalsTest::valueCorrectionPlansBlanksThatTurn()
{
    std::mt19937 random(41);
    ProblemBuilder builder;
    builder.stock(sheet(1'220, 3'050));
    for (int kind = 0; kind < 80; ++kind)
        builder.blank({std::to_string(kind), mm(100 + 10 * static_cast<int>(random() % 80)),
                       mm(300 + 10 * static_cast<int>(random() % 90)), 1 + static_cast<int>(random() % 3),
                       true, 0, 0});
    const auto problem = builder.build();
    QVERIFY(problem.ok());
    const Instance instance = normalise(*problem);
    ValueCorrection search(instance, 1, [](std::int64_t) { return false; });
    for (int plan = 0; plan < 6; ++plan)
        QVERIFY(search.next(std::numeric_limits<std::int64_t>::max()).has_value());
}

QTEST_APPLESS_MAIN(CuttingGoalsTest)
#include "tst_cutting_goals.moc"
