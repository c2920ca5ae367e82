// Guards: how a clause is applied to facts — boundaries of each comparison, facts not given, facts of another
// type, and what the finding says.
#include "measure/writing.h"
#include "rules/facts.h"
#include "rules/rule_set.h"

#include <QtTest>

#include <set>

using namespace lapwright;
using namespace lapwright::rules;
using Comparison = Condition::Comparison;

namespace {

Clause lapClause(Comparison comparison, Length value)
{
    Clause clause;
    clause.number = "Test 1.2";
    clause.edition = "1";
    clause.source = "invented for this test";
    clause.applies = {{Comparison::Equal, "run_kind", {std::string("eave")}}};
    clause.demands = {{comparison, "lap", {value}}};
    clause.statement = "Laps {lap}, asked for {demanded}.";
    clause.remedy = "Lap more.";
    return clause;
}

RuleSet setOf(Clause clause)
{
    return {"test", "Test", "1", "The local code decides.", {std::move(clause)}};
}

std::size_t findingsAt(Comparison comparison, int thousandths)
{
    const Facts facts{{"run_kind", std::string("eave")}, {"lap", Length::thousandths(thousandths)}};
    return apply(setOf(lapClause(comparison, Length::inches(2))), facts, "run E1").size();
}

} // namespace

class RuleSetTest : public QObject {
    Q_OBJECT
private slots:
    void comparisonsAtTheirBoundary()
    {
        struct Row {
            Comparison comparison;
            std::size_t below, at, above;
        };
        const std::vector<Row> rows{{Comparison::Equal, 1, 0, 1},   {Comparison::NotEqual, 0, 1, 0},
                                    {Comparison::Less, 0, 1, 1},    {Comparison::AtMost, 0, 0, 1},
                                    {Comparison::Greater, 1, 1, 0}, {Comparison::AtLeast, 1, 0, 0},
                                    {Comparison::In, 1, 0, 1}};
        for (const Row& row : rows) {
            QCOMPARE(findingsAt(row.comparison, 1999), row.below);
            QCOMPARE(findingsAt(row.comparison, 2000), row.at);
            QCOMPARE(findingsAt(row.comparison, 2001), row.above);
        }
    }

    void clauseWithoutItsConditionsDoesNotApply()
    {
        const RuleSet rules = setOf(lapClause(Comparison::AtLeast, Length::inches(2)));
        QVERIFY(apply(rules, {}, "").empty());
        QVERIFY(apply(rules, {{"lap", Length()}}, "").empty());
        QVERIFY(apply(rules, {{"run_kind", std::string("rake")}, {"lap", Length()}}, "").empty());
        QVERIFY(apply(rules, {{"run_kind", true}, {"lap", Length()}}, "").empty());
    }

    void whatIsNotKnownIsToldAsNotChecked()
    {
        const RuleSet rules = setOf(lapClause(Comparison::AtLeast, Length::inches(2)));
        const Facts withoutLap{{"run_kind", std::string("eave")}};
        const Facts otherType{{"run_kind", std::string("eave")}, {"lap", std::int64_t{1}}};
        for (const Facts& facts : {withoutLap, otherType}) {
            const Findings found = apply(rules, facts, "run E1");
            QCOMPARE(found.size(), std::size_t{1});
            QCOMPARE(found.front().weight, Weight::Informs);
            QCOMPARE(found.front().code, std::string("rules.test.Test-1.2.lap.unchecked"));
            QCOMPARE(found.front().clause->number, std::string("Test 1.2"));
            QCOMPARE(say(found.front().statement, Style{}),
                     std::string("not checked against this clause, for this is not known: how far one piece "
                                 "covers the next"));
        }
    }

    void findingNamesClauseValuesAndCaution()
    {
        const Facts facts{{"run_kind", std::string("eave")}, {"lap", Length::inches(1)}};
        const Findings found =
            apply(setOf(lapClause(Comparison::AtLeast, Length::inches(2))), facts, "run E1");
        QCOMPARE(found.size(), std::size_t{1});
        const Finding& finding = found.front();
        QCOMPARE(finding.code, std::string("rules.test.Test-1.2.lap"));
        QCOMPARE(finding.place, std::string("run E1"));
        QCOMPARE(say(finding.statement, Style{}), std::string("Laps 1\", asked for 2\"."));
        QCOMPARE(say(finding.remedy, Style{}), std::string("Lap more. The local code decides."));
        QCOMPARE(finding.clause->number, std::string("Test 1.2"));
        QCOMPARE(finding.clause->source, std::string("invented for this test"));
    }

    void severalAllowedValuesAreListed()
    {
        Clause clause = lapClause(Comparison::AtLeast, Length());
        clause.demands = {{Comparison::In, "metal", {std::string("copper"), std::string("zinc")}}};
        clause.statement = "{metal} is not {demanded}.";
        const Facts facts{{"run_kind", std::string("eave")}, {"metal", std::string("tin")}};
        const Findings found = apply(setOf(clause), facts, "");
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(say(found.front().statement, Style{}), std::string("tin is not copper or zinc."));
    }

    void thicknessIsToldInBothUnits()
    {
        Clause clause = lapClause(Comparison::AtLeast, Length());
        clause.demands = {{Comparison::AtLeast, "thickness", {Length::thousandths(19)}}};
        clause.statement = "{thickness} is under {demanded}";
        const Facts facts{{"run_kind", std::string("eave")}, {"thickness", Length::nanometres(454'660)}};
        const Findings found = apply(setOf(clause), facts, "");
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(say(found.front().statement, Style{}),
                 std::string("0.0179\" (0.45 mm) is under 0.0190\" (0.48 mm)"));
    }

    void slopesCompareBySteepness()
    {
        Clause clause = lapClause(Comparison::AtLeast, Length());
        clause.applies.clear();
        clause.demands = {{Comparison::AtLeast, "slope", {Slope::twelfths(3)}}};
        const Slope quarter = *Slope::fromMillionths(1'000'000, 4'000'000);
        QVERIFY(apply(setOf(clause), {{"slope", quarter}}, "").empty());
        QCOMPARE(apply(setOf(clause), {{"slope", Slope::twelfths(2)}}, "").size(), std::size_t{1});
    }

    void factNamesAreDistinctAndTyped()
    {
        std::set<std::string_view> names;
        for (const FactName& fact : factNames) {
            QVERIFY2(names.insert(fact.name).second, fact.name.data());
            QVERIFY(factType(fact.name) == fact.type);
            QVERIFY(!fact.meaning.empty());
        }
        QVERIFY(factType("leg.deck") == FactType::Length);
        QVERIFY(factType("measure.fascia_height") == FactType::Length);
        QVERIFY(!factType("leg."));
        QVERIFY(!factType("lapp"));
        QVERIFY(typeOf(Fact(true)) == FactType::YesNo);
        QVERIFY(typeOf(Fact(Slope())) == FactType::Slope);
    }
};

QTEST_APPLESS_MAIN(RuleSetTest)
#include "tst_rule_set.moc"
