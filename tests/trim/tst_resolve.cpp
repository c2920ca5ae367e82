// Guards: a template put on a run says what is missing, out of range or against itself, and explains each leg
// and turn.
#include "trim/template.h"

#include "measure/writing.h"

#include <QtTest>

#include <cmath>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

/// Deck flange, plumb face as high as the fascia less 1/8 in, hem behind.
Template drip()
{
    Template trim;
    trim.id = "drip";
    trim.name = "Drip";
    trim.suits = {site::RunKind::Eave, site::RunKind::Fascia};
    trim.measures = {{"fascia_height", "Fascia height", std::nullopt, Length::inches(2), Length::inches(20)}};
    trim.legs = {{"deck",
                  "Deck flange",
                  {Length::inches(3), {}},
                  Length::inches(2),
                  Length::inches(4),
                  std::nullopt,
                  "IRC R905.2.8.5",
                  "where it was read"},
                 {"face",
                  "Face",
                  {-Length::sixtyFourths(8), {{1.0, "fascia_height"}}},
                  Length::inches(1),
                  Length::inches(12),
                  Length::sixtyFourths(16),
                  "",
                  ""}};
    trim.bends = {
        {{-quarterTurn, {{1.0, AngleMeasure::Slope}}}, Angle::degrees(-90.0), Angle::degrees(-30.0), {}, ""}};
    trim.endHem = HemTemplate{HemKind::Closed, Length::sixtyFourths(32), Side::Right, std::nullopt};
    trim.firstDirection = {Angle(), {{-1.0, AngleMeasure::Slope}}};
    trim.anchorPoint = 1;
    return trim;
}

Site onTheRun()
{
    Site site;
    site.measures["fascia_height"] = Length::inches(6);
    site.angles[AngleMeasure::Slope] = Angle::degrees(30.0);
    return site;
}

bool hasFinding(const Resolution& result, const std::string& code, const std::string& place,
                rules::Weight weight)
{
    for (const rules::Finding& finding : result.findings)
        if (finding.code == code && finding.place == place && finding.weight == weight)
            return say(finding.statement, {}).find('{') == std::string::npos &&
                   say(finding.remedy, {}).find('{') == std::string::npos &&
                   result.profile.has_value() == (weight != rules::Weight::Blocks);
    return false;
}

} // namespace

class ResolveTest : public QObject {
    Q_OBJECT
private slots:
    void legsAndTurnsComeFromMeasures()
    {
        const Resolution result = resolve(drip(), onTheRun());
        QVERIFY(result.findings.empty());
        const Profile& profile = result.profile.value();
        // 6 in − 1/8 in, rounded up to 1/4 in.
        QVERIFY(profile.legs[1].length == Length::inches(6));
        QVERIFY(std::abs(profile.bends[0].turn.inDegrees() + 60.0) < 1e-9);
        QVERIFY(profile.bends[0].insideRadius == onTheRun().insideRadius);
        QVERIFY(profile.endHem->insideRadius == Length());
        // 3 in × cos 30° back and × sin 30° up from the measured line.
        QVERIFY(std::abs(static_cast<double>(profile.startX.inNanometres()) + 76.2e6 * std::sqrt(0.75)) <
                2.0);
        QVERIFY(std::abs(static_cast<double>(profile.startY.inNanometres()) - 38.1e6) < 2.0);
    }

    void eachNumberSaysWhereItComesFrom()
    {
        const Resolution result = resolve(drip(), onTheRun());
        QCOMPARE(say(result.legDerivations[1].statement, {}),
                 std::string("Face 6\" = -1/8\" + Fascia height 6\", rounded up to a multiple of 1/4\""));
        QCOMPARE(say(result.legDerivations[1].because.at(0).statement, {}),
                 std::string("Fascia height 6\", as measured"));
        QCOMPARE(say(result.bendDerivations[0].statement, {}),
                 std::string("bend 1, Deck flange to Face: folded 60°, which leaves 120° between them; turn "
                             "-60° = -90° + slope 30°"));
        QCOMPARE(say(result.bendDerivations[0].because.at(0).statement, {}),
                 std::string("slope 30° is 6.93 in 12"));
        QCOMPARE(result.legDerivations[0].source, std::string("where it was read"));
        Site byHand = onTheRun();
        byHand.legs["deck"] = Length::sixtyFourths(160);
        QCOMPARE(say(resolve(drip(), byHand).legDerivations[0].statement, {}),
                 std::string("Deck flange 2 1/2\", set by hand"));
    }

    void whatIsMissingOrOutOfRangeBlocks()
    {
        Site given = onTheRun();
        given.measures.clear();
        QVERIFY(hasFinding(resolve(drip(), given), "trim.measure.missing", "fascia_height",
                           rules::Weight::Blocks));
        given = onTheRun();
        given.measures["fascia_height"] = Length::feet(900);
        QVERIFY(
            hasFinding(resolve(drip(), given), "trim.measure.range", "fascia_height", rules::Weight::Blocks));
        given = onTheRun();
        given.angles.clear();
        QVERIFY(hasFinding(resolve(drip(), given), "trim.angle.missing", "bend after deck",
                           rules::Weight::Blocks));
        given.angles[AngleMeasure::Slope] = Angle::radians(std::nan(""));
        QVERIFY(hasFinding(resolve(drip(), given), "trim.angle.missing", "bend after deck",
                           rules::Weight::Blocks));
        given.angles[AngleMeasure::Slope] = Angle::degrees(61.0);
        QVERIFY(
            hasFinding(resolve(drip(), given), "trim.angle.range", "bend after deck", rules::Weight::Blocks));
        Template flat = drip();
        flat.bends[0].most = quarterTurn;
        given.angles[AngleMeasure::Slope] = Angle::degrees(89.5);
        QVERIFY(hasFinding(resolve(flat, given), "trim.bend.flat", "bend after deck", rules::Weight::Blocks));
    }

    void aLegAgainstALimitWarnsWithItsClause()
    {
        Site given = onTheRun();
        given.legs["deck"] = Length::inches(1);
        Resolution result = resolve(drip(), given);
        QVERIFY(hasFinding(result, "trim.leg.short", "deck", rules::Weight::Warns));
        QCOMPARE(result.findings[0].clause.value().number, std::string("IRC R905.2.8.5"));
        given.legs["deck"] = Length::inches(5);
        result = resolve(drip(), given);
        QVERIFY(hasFinding(result, "trim.leg.long", "deck", rules::Weight::Warns));
        QVERIFY(!result.findings[0].clause);
    }

    void aLegThatCannotBeFoldedBlocks()
    {
        for (const Length length : {Length(), -Length::inches(1), Length::thousandths(20)}) {
            Site given = onTheRun();
            given.legs["deck"] = length;
            QVERIFY(hasFinding(resolve(drip(), given), "trim.leg.unfoldable", "deck", rules::Weight::Blocks));
        }
        Site given = onTheRun();
        given.legs["face"] =
            Length::sixtyFourths(20); // shorter than its hem, which lies on the inside of the bend
        QVERIFY(
            hasFinding(resolve(drip(), given), "trim.section.crossing", "end hem", rules::Weight::Blocks));
    }

    void namesNobodyKnowsAreSaid()
    {
        Site given = onTheRun();
        given.measures["facia_height"] = Length::inches(6);
        QVERIFY(
            hasFinding(resolve(drip(), given), "trim.measure.unknown", "facia_height", rules::Weight::Warns));
        given = onTheRun();
        given.legs["dek"] = Length::inches(3);
        QVERIFY(hasFinding(resolve(drip(), given), "trim.leg.unknown", "dek", rules::Weight::Warns));
    }

    void aTemplateAgainstItselfIsRefused()
    {
        Template broken = drip();
        broken.bends.clear();
        QVERIFY(hasFinding(resolve(broken, onTheRun()), "trim.template", "bends", rules::Weight::Blocks));
        broken = drip();
        broken.legs[1].length.terms[0].second = "nothing";
        QVERIFY(hasFinding(resolve(broken, onTheRun()), "trim.template", "face", rules::Weight::Blocks));
        broken = drip();
        broken.anchorPoint = 3;
        QVERIFY(hasFinding(resolve(broken, onTheRun()), "trim.template", "anchor", rules::Weight::Blocks));
    }
};

QTEST_APPLESS_MAIN(ResolveTest)
#include "tst_resolve.moc"
