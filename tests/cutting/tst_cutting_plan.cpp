// Guards: every plan for every kind of stock and rule passes the independent checker, the checker sees what
// is broken, and what cannot be right is named and refused.
#include "cutting/checker.h"
#include "cutting/explain.h"
#include "cutting/replan.h"
#include "cutting/solve.h"

#include <QtTest>

#include <random>
#include <set>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

Length inches(std::int64_t count)
{
    return Length::inches(count);
}

Problem randomProblem(std::mt19937& random)
{
    const auto upTo = [&random](int most) {
        return static_cast<std::int64_t>(random() % static_cast<unsigned>(most));
    };
    ShopRules rules;
    rules.order = upTo(2) == 0 ? CutOrder::StripsFirst : CutOrder::LengthsFirst;
    rules.patterns = upTo(2) == 0 ? PatternClass::Exact : PatternClass::NonExact;
    rules.kerf = Length::millimetres(upTo(3));
    if (upTo(3) == 0)
        rules.edgeTrim = {inches(1), inches(0), inches(1), inches(1)};
    if (upTo(3) == 0)
        rules.mostStrips = static_cast<int>(2 + upTo(3));
    if (upTo(3) == 0)
        rules.leastStripWidth = inches(3);
    if (upTo(2) == 0)
        rules.leastRemnantWidth = rules.leastRemnantLength = inches(4 + upTo(8));
    ProblemBuilder builder;
    builder.rules(rules);
    const std::int64_t stocks = 1 + upTo(4);
    for (std::int64_t index = 0; index < stocks; ++index) {
        const std::string key = std::string("S").append(std::to_string(index));
        switch (upTo(3)) {
        case 0:
            builder.stock({key, StockKind::Sheet, inches(20 + upTo(30)), inches(40 + upTo(60)),
                           upTo(2) == 0 ? std::optional<std::int64_t>(1 + upTo(4)) : std::nullopt,
                           std::nullopt, std::nullopt});
            break;
        case 1:
            builder.stock({key, StockKind::Coil, inches(20 + upTo(30)), inches(100 + upTo(900)),
                           upTo(2) == 0 ? std::optional<std::int64_t>(1) : std::nullopt, std::nullopt,
                           upTo(2) == 0 ? std::optional<Length>(inches(80)) : std::nullopt});
            break;
        default:
            builder.stock({key, StockKind::Remnant, inches(10 + upTo(20)), inches(20 + upTo(40)),
                           std::nullopt, std::nullopt, std::nullopt});
        }
    }
    const std::int64_t blanks = 1 + upTo(12);
    for (std::int64_t index = 0; index < blanks; ++index)
        builder.blank({std::string("B").append(std::to_string(index)), inches(2 + upTo(15)),
                       inches(6 + upTo(40)), 1 + upTo(6), upTo(4) == 0, static_cast<int>(upTo(2)),
                       static_cast<int>(upTo(3))});
    if (auto admission = builder.admit(); admission.problem)
        return *admission.problem;
    return randomProblem(random);
}

} // namespace

class CuttingPlanTest : public QObject {
    Q_OBJECT
private slots:
    void everyRandomPlanPassesTheChecker_data();
    void everyRandomPlanPassesTheChecker();
    void theCheckerSeesWhatIsBroken();
    void badInputIsNamedAndRefused();
    void whatIsCutStaysWhenPlanningAgain();
    void remnantsKeepTheirNamesWhenPlanningAgain();
    void aRushOrderIsPlannedAndListed();
    void aHandfulCarriesItsProof();
    void freePiecesReallyAreFree();
    void equalInputGivesEqualPlans();
};

/// LAPWRIGHT_LONG: many more of them, each seed a row of its own.
void CuttingPlanTest::everyRandomPlanPassesTheChecker_data()
{
    QTest::addColumn<unsigned>("seed");
    const unsigned rows = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 150 : 1;
    for (unsigned row = 0; row < rows; ++row)
        QTest::addRow("seed %u", 7 + row) << 7 + row;
}

void CuttingPlanTest::everyRandomPlanPassesTheChecker()
{
    QFETCH(unsigned, seed);
    std::mt19937 random(seed);
    constexpr int cases = 20;
    for (int round = 0; round < cases; ++round) {
        const Problem problem = randomProblem(random);
        Settings settings;
        settings.workLimit = 8;
        const Plan plan = solve(problem, settings);
        const Verdict verdict = check(problem, plan);
        std::string faults = "case " + std::to_string(round) + ":";
        for (const Phrase& fault : verdict.faults)
            faults += " " + fault.text;
        QVERIFY2(verdict.feasibility.cuttable(), faults.c_str());
        QVERIFY(plan.feasibility == verdict.feasibility);
        if (plan.notCut.empty())
            QVERIFY(plan.bound <= plan.value);
        const bool plenty = std::ranges::all_of(problem.stocks(), [](const Stock& stock) {
            return stock.kind == StockKind::Sheet && !stock.count;
        });
        if (plenty)
            QVERIFY2(verdict.feasibility.all(), faults.c_str());
    }
    qInfo("%d random problems", cases);
}

void CuttingPlanTest::theCheckerSeesWhatIsBroken()
{
    ProblemBuilder builder;
    ShopRules rules;
    rules.patterns = PatternClass::Exact;
    rules.leastRemnantWidth = rules.leastRemnantLength = inches(6);
    builder.rules(rules);
    builder.stock(
        {"48x120", StockKind::Sheet, inches(48), inches(120), std::nullopt, std::nullopt, std::nullopt});
    builder.blank({"A", inches(12), inches(50), 3, false, 0, 0});
    builder.blank({"B", inches(10), inches(70), 2, false, 0, 0});
    const auto built = builder.build();
    QVERIFY(built.ok());
    const Problem& problem = *built;
    const Plan good = solve(problem);
    QVERIFY(good.feasibility.all());
    QCOMPARE(good.value, 1);
    QCOMPARE(good.bound, 1);

    Plan plan = good;
    plan.patterns[0].strips[0].position += inches(1);
    QVERIFY(!check(problem, plan).feasibility.stripsFit);
    plan = good;
    plan.patterns[0].strips[0].crosscuts[0].count += 1;
    QVERIFY(!check(problem, plan).feasibility.nothingCutTwice);
    plan = good;
    plan.patterns[0].strips[0].crosscuts[0].turned = true;
    QVERIFY(!check(problem, plan).feasibility.turnsAllowed);
    plan = good;
    plan.patterns[0].strips.pop_back();
    QVERIFY(!check(problem, plan).feasibility.allBlanksCut);
    plan = good;
    plan.remnants.clear();
    QVERIFY(!good.remnants.empty() && !check(problem, plan).feasibility.remnantsRight);
    plan = good;
    plan.bound = 2;
    QVERIFY(!check(problem, plan).feasibility.boundCertified);
    plan = good;
    plan.waste.scrap += 0.1;
    QVERIFY(!check(problem, plan).feasibility.wasteAddsUp);
    plan = good;
    plan.patterns[0].count = 2;
    QVERIFY(!check(problem, plan).feasibility.valueRight);
    // Counts that a document may hold but no plan has: named, and never added up beyond what a Length holds.
    for (const std::int64_t count : {std::int64_t{4'000'000}, std::int64_t{1'000'000'000}}) {
        plan = good;
        plan.patterns[0].count = count;
        plan.patterns.resize(100, plan.patterns[0]);
        QVERIFY(!check(problem, plan).feasibility.stripsFit ||
                !check(problem, plan).feasibility.stockSuffices);
        plan = good;
        plan.patterns[0].strips[0].crosscuts[0].count = count;
        plan.patterns[0].strips[0].crosscuts.resize(100, plan.patterns[0].strips[0].crosscuts[0]);
        QVERIFY(!check(problem, plan).feasibility.crosscutsFit);
    }
}

void CuttingPlanTest::badInputIsNamedAndRefused()
{
    const Stock sheet{"48x120",     StockKind::Sheet, inches(48),  inches(120),
                      std::nullopt, std::nullopt,     std::nullopt};
    ProblemBuilder builder;
    builder.stock(sheet);
    builder.blank({"good", inches(12), inches(50), 3, false, 0, 0});
    builder.blank({"wide", inches(49), inches(50), 1, false, 0, 0});
    builder.blank({"none", inches(12), inches(50), 0, false, 0, 0});
    builder.blank({"flat", Length(), inches(50), 1, false, 0, 0});
    builder.blank({"minus", inches(-3), inches(50), 1, false, 0, 0});
    builder.blank({"many", inches(12), inches(50), 1'000'000'000, false, 0, 0});
    builder.blank({"huge", Length::nanometres(INT64_MAX), inches(50), 1, false, 0, 0});
    const auto built = builder.build();
    QVERIFY(!built.ok());
    QCOMPARE(built.errors().size(), 6U);
    QVERIFY(built.errors()[0].sentence().find("wide") != std::string::npos);
    const Admission admission = builder.admit();
    QVERIFY(admission.problem.has_value());
    QCOMPARE(admission.problem->blanks().size(), 1U);
    QVERIFY(solve(*admission.problem).feasibility.all());

    QVERIFY(!ProblemBuilder().blank({"good", inches(12), inches(50), 3, false, 0, 0}).build().ok());
    QVERIFY(!ProblemBuilder().stock(sheet).build().ok());
    Stock broken = sheet;
    broken.width = Length();
    QVERIFY(
        !ProblemBuilder().stock(broken).blank({"good", inches(12), inches(50), 3, false, 0, 0}).build().ok());
    ShopRules rules;
    rules.kerf = inches(-1);
    QVERIFY(!ProblemBuilder()
                 .rules(rules)
                 .stock(sheet)
                 .blank({"good", inches(12), inches(50), 3, false, 0, 0})
                 .build()
                 .ok());
}

void CuttingPlanTest::whatIsCutStaysWhenPlanningAgain()
{
    std::mt19937 random(11);
    int rounds = 0;
    for (int round = 0; round < 20; ++round) {
        const Problem problem = randomProblem(random);
        Settings settings;
        settings.workLimit = 5;
        const Plan plan = solve(problem, settings);
        if (plan.patterns.empty() || !plan.notCut.empty())
            continue;
        ++rounds;
        FloorReport report;
        report.cut.push_back({0, 1});
        const Crosscut& first = plan.patterns[0].strips[0].crosscuts[0];
        report.scrapped.push_back({first.blank, 1});
        const auto result = replan(problem, plan, report, settings);
        QVERIFY(result.ok());
        std::int64_t done = 0, before = 0, after = 0;
        for (const Strip& strip : plan.patterns[0].strips)
            for (const Crosscut& crosscut : strip.crosscuts)
                done += crosscut.count;
        for (const Blank& blank : problem.blanks())
            before += blank.count;
        if (result->problem)
            for (const Blank& blank : result->problem->blanks())
                after += blank.count;
        if (result->refusals.empty())
            QCOMPARE(after, before - done + 1);
        if (result->plan)
            QVERIFY(check(*result->problem, *result->plan).feasibility.cuttable());
        QVERIFY(!result->changes.empty());
        FloorReport wrong;
        wrong.cut.push_back({0, plan.patterns[0].count + 1});
        QVERIFY(!replan(problem, plan, wrong, settings).ok());
    }
    QVERIFY(rounds > 10);
    qInfo("%d plans cut in part", rounds);
}

/// What is left of each sheet goes into stock under a name of its own, however often the rest is planned
/// again.
void CuttingPlanTest::remnantsKeepTheirNamesWhenPlanningAgain()
{
    ProblemBuilder builder;
    ShopRules rules;
    rules.leastRemnantWidth = rules.leastRemnantLength = inches(6);
    builder.rules(rules);
    builder.stock(
        {"48x120", StockKind::Sheet, inches(48), inches(120), std::nullopt, std::nullopt, std::nullopt});
    builder.blank({"A", inches(30), inches(100), 6, false, 0, 0});
    Problem problem = *builder.build();
    for (int day = 0; day < 3; ++day) {
        const Plan plan = solve(problem);
        QVERIFY(plan.feasibility.all());
        QVERIFY(!plan.remnants.empty());
        FloorReport report;
        report.cut.push_back({0, 2});
        const auto next = replan(problem, plan, report);
        QVERIFY(next.ok());
        if (day == 2) {
            QVERIFY(!next->problem.has_value());
            break;
        }
        problem = *next->problem;
        std::set<std::string> names;
        for (const Stock& stock : problem.stocks())
            QVERIFY2(names.insert(stock.key).second, stock.key.c_str());
        // Two sheets cut: beside the strip and at its end a remnant of each.
        QCOMPARE(names.size(), 1U + 4U * static_cast<std::size_t>(day + 1));
    }
}

void CuttingPlanTest::aRushOrderIsPlannedAndListed()
{
    ProblemBuilder builder;
    builder.stock(
        {"48x120", StockKind::Sheet, inches(48), inches(120), std::nullopt, std::nullopt, std::nullopt});
    builder.blank({"A", inches(24), inches(100), 8, false, 1, 0});
    const Problem problem = *builder.build();
    const Plan plan = solve(problem);
    QCOMPARE(plan.value, 4);
    FloorReport report;
    report.cut.push_back({0, 1});
    report.scrapped.push_back({0, 1});
    report.rush.push_back({"R", inches(40), inches(100), 1, false, 0, 0});
    const auto next = replan(problem, plan, report);
    QVERIFY(next.ok() && next->plan.has_value());
    QVERIFY(next->plan->feasibility.all());
    // Seven of A are left in four sheets, the rush order takes one of its own and is cut first.
    QCOMPARE(next->plan->value, 5);
    const std::size_t first = next->plan->patterns.front().strips.front().crosscuts.front().blank;
    QCOMPARE(next->problem->blanks()[first].key, std::string("R"));
    std::vector<std::string> texts;
    for (const Phrase& change : next->changes)
        texts.push_back(change.text);
    QVERIFY(std::ranges::count(texts, std::string("{count} of blank {key} will be cut again")) == 1);
    QVERIFY(std::ranges::count(texts, std::string("{count} of blank {key} came in")) >= 1);
    QVERIFY(std::ranges::count(texts, std::string("{count} more of stock {key} will be cut")) == 1);
}

/// One piece on a sheet while a scrap of a remnant is at hand: proven, by trying all plans, and the checker
/// believes no more than that.
void CuttingPlanTest::aHandfulCarriesItsProof()
{
    ProblemBuilder builder;
    builder.stock(
        {"48x120", StockKind::Sheet, inches(48), inches(120), std::nullopt, std::nullopt, std::nullopt});
    builder.stock(
        {"scrap", StockKind::Remnant, inches(6), inches(20), std::nullopt, std::nullopt, std::nullopt});
    builder.blank({"A", inches(10), inches(30), 1, false, 0, 0});
    const Problem problem = *builder.build();
    const Plan plan = solve(problem);
    QVERIFY(plan.feasibility.all());
    QVERIFY(plan.proof == Proof::ProvenLeast);
    QVERIFY(plan.certificate.method == Certificate::Method::EveryPlan);
    QCOMPARE(explain(problem, plan).sentences.front().text,
             std::string("No plan of these patterns takes less"));
    Plan bold = plan;
    bold.certificate.least += 1;
    bold.bound += 1;
    QVERIFY(!check(problem, bold).feasibility.boundCertified);
}

void CuttingPlanTest::freePiecesReallyAreFree()
{
    std::mt19937 random(13);
    int rounds = 0;
    for (int round = 0; round < 20; ++round) {
        const Problem problem = randomProblem(random);
        Settings settings;
        settings.workLimit = 10;
        const Plan plan = solve(problem, settings);
        const Explanation explanation = explain(problem, plan);
        QVERIFY(!explanation.sentences.empty());
        if (explanation.free.empty() || !plan.notCut.empty())
            continue;
        ++rounds;
        ProblemBuilder builder;
        builder.rules(problem.rules());
        for (const Stock& stock : problem.stocks())
            builder.stock(stock);
        for (std::size_t index = 0; index < problem.blanks().size(); ++index) {
            Blank blank = problem.blanks()[index];
            if (index == explanation.free[0].blank)
                blank.count += explanation.free[0].count;
            builder.blank(blank);
        }
        const auto more = builder.build();
        QVERIFY(more.ok());
        // The old plan with the pieces laid into its waste is a plan of the larger problem: no bound may pass
        // it.
        QVERIFY(solve(*more, settings).bound <= plan.value);
    }
    QVERIFY(rounds > 5);
    qInfo("%d plans with free pieces", rounds);
}

void CuttingPlanTest::equalInputGivesEqualPlans()
{
    std::mt19937 random(17);
    for (int round = 0; round < 20; ++round) {
        const Problem problem = randomProblem(random);
        Settings settings;
        settings.workLimit = 8;
        const Plan plan = solve(problem, settings);
        settings.threads = 2;
        QVERIFY(solve(problem, settings) == plan);
    }
}

QTEST_APPLESS_MAIN(CuttingPlanTest)
#include "tst_cutting_plan.moc"
