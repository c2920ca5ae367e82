// Guards: what the person is told about the closure of a house: verdict, misclosure, tolerance, parallel
// sides.
#include "site/closure.h"

#include "houses.h"
#include "measure/writing.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::site;

namespace {

using Verdict = ClosureReport::Verdict;

/// An L: 40 ft and 24 ft wide, 30 ft and 18 ft deep. Runs E1 east 40, E2 north 18, E3 west 16, E4 north 12,
/// E5 west 24, E6 south 30.
Chain house()
{
    std::vector<houses::Point> corners{{0, 0}, {40, 0}, {40, 18}, {24, 18}, {24, 30}, {0, 30}};
    for (houses::Point& corner : corners) {
        corner.east *= Length::feet(1).inNanometres();
        corner.north *= Length::feet(1).inNanometres();
    }
    return houses::around(corners);
}

const rules::Finding* told(const ClosureReport& report, const std::string& code)
{
    for (const rules::Finding& finding : report.findings)
        if (finding.code == code)
            return &finding;
    return nullptr;
}

std::string said(const ClosureReport& report, const std::string& code)
{
    const rules::Finding* finding = told(report, code);
    if (finding == nullptr)
        return "";
    return finding->place + ": " + say(finding->statement, Style()) + "; " + say(finding->remedy, Style());
}

} // namespace

class ClosureTest : public QObject {
    Q_OBJECT
private slots:
    void aHouseThatCloses()
    {
        const ClosureReport report = closureReport(house(), Tolerance());
        QVERIFY(report.verdict == Verdict::Closes);
        QVERIFY(report.perimeter == Length::feet(140));
        QVERIFY(!report.oneIn);
        // 1/4 in and 1/500 of 1680 in.
        QVERIFY(report.tolerance == Length::sixtyFourths(16) + Length::feet(140) / 500);
        QCOMPARE(report.expectedAngleSum.inDegrees(), 720.0);
        QVERIFY(report.angularMisclosure == Angle());
        QVERIFY(report.sides->forward == report.sides->back);
        QCOMPARE(said(report, "site.closure.closes"),
                 std::string("chain House: the chain closes exactly, 140' 0\" around; "));
        QVERIFY(!rules::anyBlocks(report.findings));
    }
    void aFootTooShort()
    {
        Chain chain = house();
        chain.runs[3].lengths[0].value = Length::feet(11);
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::LengthsOff);
        QVERIFY(report.misclosure == (PlanVector{Length(), -Length::feet(1)}));
        QCOMPARE(report.oneIn.value(), std::int64_t{139});
        QCOMPARE(report.blames.size(), std::size_t{3});
        const QString length = QString::fromStdString(said(report, "site.closure.length"));
        QVERIFY2(length.contains("E2, E4, E6; parallel runs cannot be told apart"), qPrintable(length));
        QVERIFY2(length.contains("1 in 139"), qPrintable(length));
        QVERIFY2(length.contains("1' 0\" south"), qPrintable(length));
        QCOMPARE(
            said(report, "site.closure.blame.length"),
            std::string("chain House, run E2: at 19' 0\" instead of 18' 0\" the chain would close to 0\"; "
                        "likely: a foot misread on the tape"));
        QCOMPARE(said(report, "site.closure.sides"),
                 std::string(
                     "chain House: runs that go left of the first add up to 29' 0\", those that come back to "
                     "30' 0\": 1' 0\" apart; "));
    }
    void aSlipOfDigitsComesFirst()
    {
        // E3 is 16 ft; written as 61 ft. E1 and E5 would explain it as well, by no such slip.
        Chain chain = house();
        chain.runs[2].lengths[0].value = Length::feet(61);
        const ClosureReport report = closureReport(chain, Tolerance());
        QCOMPARE(report.blames.front().length->run, std::size_t{2});
        QVERIFY(report.blames.front().telling);
        QVERIFY(report.blames.front().length->wouldBe == Length::feet(16));
    }
    void anotherUnit()
    {
        // 40 ft entered as 480 ft. No other run can make up for it: none may be so long.
        Chain chain = house();
        chain.runs[0].lengths[0].value = Length::feet(480);
        const ClosureReport report = closureReport(chain, Tolerance());
        QCOMPARE(report.blames.front().length->run, std::size_t{0});
        QVERIFY(report.blames.front().slip.text == "inches taken for feet");
        QCOMPARE(report.blames.size(), std::size_t{1});
    }
    void anInsideCornerTakenForAnOutsideOne()
    {
        Chain chain = house();
        chain.corners[2] = SquareOutside{};
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::AnglesOff);
        QCOMPARE(report.angularMisclosure.inDegrees(), -180.0);
        QCOMPARE(report.blames.size(), std::size_t{1});
        QCOMPARE(report.blames[0].corner->corner, std::size_t{2});
        QCOMPARE(report.blames[0].corner->wouldBe.inDegrees(), 270.0);
        QVERIFY(rules::anyBlocks(report.findings));
        QCOMPARE(said(report, "site.closure.blame.corner"),
                 std::string(
                     "chain House, corner E3 to E4: with an interior angle of 270° here instead of 90° the "
                     "chain would close to 0\"; likely: an inside corner taken for an outside one"));
    }
    void anglesFromOutside()
    {
        Chain chain = house();
        for (Corner& corner : chain.corners) {
            if (std::holds_alternative<SquareInside>(corner))
                corner = SquareOutside{};
            else
                corner = SquareInside{};
        }
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(told(report, "site.closure.exterior") != nullptr);
        QVERIFY(rules::anyBlocks(report.findings));
    }
    void tapeWithinToleranceCloses()
    {
        Chain chain = house();
        chain.runs[0].lengths[0].value += Length::inches(3);
        ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::Closes);
        QVERIFY(report.blames.empty());
        // 3 in of the 3 5/8 in that 140 ft 3 in allow; over 1 in is told (common practice, no source).
        QCOMPARE(
            said(report, "site.closure.closes"),
            std::string("chain House: the chain closes to 3\", 1 in 561 of the 140' 3\" around; 3 5/8\" is "
                        "allowed; over 1\" is more than careful taping leaves: measure E1, and the runs that "
                        "go its way or back, once more"));
        QVERIFY(told(report, "site.closure.closes")->weight == rules::Weight::Informs);
        Chain within = house();
        within.runs[1].lengths[0].value -= Length::inches(1);
        QVERIFY(told(closureReport(within, Tolerance()), "site.closure.closes")->remedy.text.empty());
        within.runs[1].lengths[0].value -= Length::sixtyFourths(1);
        QVERIFY(said(closureReport(within, Tolerance()), "site.closure.closes").find("measure E2") !=
                std::string::npos);
        QVERIFY(report.drawnPoints.back() == report.drawnPoints.front());
        QVERIFY(chain.runs[0].lengths[0].value == Length::feet(40) + Length::inches(3));
        Tolerance strict;
        strict.perimeterShare = 5'000;
        report = closureReport(chain, strict);
        QVERIFY(report.verdict == Verdict::LengthsOff);
    }
    void aMeasuredAngleWithinToleranceIsBalanced()
    {
        Chain chain = house();
        chain.corners[4] = InteriorAngle{Angle::degrees(91.0), "91"};
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::Closes);
        QVERIFY(report.linearMisclosure <= Length::nanometres(2));
        QVERIFY(std::abs(report.angularMisclosure.inDegrees() - 1.0) < 1e-9);
        QVERIFY(std::abs(report.angularTolerance.inDegrees() - std::sqrt(6.0)) < 1e-12);
    }
    void twoLengthsAreNotOne()
    {
        Chain chain = house();
        chain.runs[0].lengths[0].value += Length::feet(2);
        chain.runs[1].lengths[0].value += Length::feet(3);
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::LengthsOff);
        QVERIFY(report.blames.empty());
        QVERIFY(said(report, "site.closure.length").find("two or more") != std::string::npos);
        int sides = 0;
        for (const rules::Finding& finding : report.findings)
            sides += finding.code == "site.closure.sides";
        QCOMPARE(sides, 2);
    }
    void aRakesOwnLengthIsNamed()
    {
        // A gable of two rakes at 9 in 12: a foot of plan is 15 in along the slope.
        Chain chain = house();
        Run rake = houses::eave("R", Length::nanometres(0));
        rake.kind = RunKind::Rake;
        rake.slope = Slope::twelfths(9);
        rake.lengths[0].value = Length::inches(15) * 30;
        chain.runs[5] = rake;
        QVERIFY(closureReport(chain, Tolerance()).verdict == Verdict::Closes);
        chain.runs[5].lengths[0].value = Length::inches(15) * 28;
        const ClosureReport report = closureReport(chain, Tolerance());
        bool found = false;
        for (const Blame& blame : report.blames)
            found =
                found || (blame.length->run == 5 &&
                          magnitude(blame.length->wouldBe - Length::inches(450)) <= Length::nanometres(3));
        QVERIFY(found);
    }
    void whatCannotBeComputedIsNotJudged()
    {
        Chain chain = house();
        chain.corners.pop_back();
        QVERIFY(closureReport(chain, Tolerance()).verdict == Verdict::NotComputable);
        chain = house();
        chain.runs[2].lengths.clear();
        QVERIFY(closureReport(chain, Tolerance()).verdict == Verdict::NotComputable);
        QVERIFY(closureReport(chain, Tolerance()).findings.empty());
        QVERIFY(closureReport(Chain(), Tolerance()).verdict == Verdict::NotComputable);
    }
    void openChainsAreLaidOut()
    {
        Chain chain = house();
        chain.closed = false;
        chain.runs.pop_back();
        chain.corners.resize(4);
        ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.verdict == Verdict::Open);
        QCOMPARE(report.drawnPoints.size(), std::size_t{6});
        QVERIFY(report.findings.empty());
        chain.corners[2] = SquareOutside{};
        chain.corners[3] = SquareOutside{};
        chain.runs[3].lengths[0].value = Length::feet(60);
        chain.runs[2].lengths[0].value = Length::feet(20);
        chain.runs[3].lengths[0].value = Length::feet(10);
        chain.runs[4].lengths[0].value = Length::feet(60);
        report = closureReport(chain, Tolerance());
        QVERIFY(report.crossing.has_value());
        QVERIFY(told(report, "site.closure.crosses") != nullptr);
        QVERIFY(!rules::anyBlocks(report.findings));
    }
};

QTEST_APPLESS_MAIN(ClosureTest)
#include "tst_closure.moc"
