// Guards: which length of a run counts, and what its corner, slopes and kind say to trim and pieces.
#include "site/run_geometry.h"

#include "houses.h"
#include "measure/writing.h"
#include "site/run_length.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Run runOf(RunKind kind, std::optional<Length> measured)
{
    Run run;
    run.id = "R";
    run.kind = kind;
    if (measured)
        run.lengths = {{*measured, ""}};
    return run;
}

RunGeometry alone(const Run& run)
{
    Chain chain;
    chain.runs = {run};
    return runGeometry(chain, 0).value();
}

} // namespace

class RunGeometryTest : public QObject {
    Q_OBJECT
private slots:
    void theChosenMeasureCounts()
    {
        Run run = runOf(RunKind::Eave, Length::feet(20));
        run.lengths.push_back({Length::feet(21), "21'"});
        run.counts = 1;
        QVERIFY(alone(run).length == Length::feet(21));
        run.counts = 2;
        QVERIFY(!effectiveLength(run));
        run.lengths.clear();
        QVERIFY(!effectiveLength(run));
    }
    void aRakeFromItsLevelRun()
    {
        Run rake = runOf(RunKind::Rake, std::nullopt);
        rake.levelRun = Measured{Length::feet(12), "12'"};
        QVERIFY(!effectiveLength(rake));
        rake.slope = Slope::twelfths(9);
        QVERIFY(alone(rake).length == Length::feet(15)); // 9-12-15
        rake.lengths = {{Length::feet(15) + Length::inches(1), ""}};
        QVERIFY(alone(rake).length == Length::feet(15) + Length::inches(1));
        QVERIFY(derivedLength(rake)->value == Length::feet(15));
    }
    void aHipFromTheCommonRun()
    {
        Run hip = runOf(RunKind::Hip, std::nullopt);
        hip.levelRun = Measured{Length::feet(10), ""};
        hip.slope = Slope::twelfths(6);
        QVERIFY(!derivedLength(hip));
        hip.otherSlope = Slope::twelfths(6);
        QVERIFY(alone(hip).length == Length::feet(15)); // 18 in per foot of common run
        QVERIFY(std::abs(alone(hip).creaseTurn->inDegrees() + 36.8699) < 1e-4);
        hip.kind = RunKind::Valley;
        QVERIFY(alone(hip).length == Length::feet(15));
        QVERIFY(std::abs(alone(hip).creaseTurn->inDegrees() - 36.8699) < 1e-4);
        hip.planCorner = Angle::degrees(225.0);
        QVERIFY(alone(hip).length != Length::feet(15));
        QVERIFY(alone(hip).creaseTurn->inDegrees() < 36.0);
    }
    void levelRunsTakeNoLevelRun()
    {
        Run eave = runOf(RunKind::Eave, std::nullopt);
        eave.levelRun = Measured{Length::feet(10), ""};
        eave.slope = Slope::twelfths(6);
        QVERIFY(!effectiveLength(eave));
    }
    void turnsByKind()
    {
        Run ridge = runOf(RunKind::Ridge, Length::feet(10));
        ridge.slope = Slope::twelfths(6);
        QVERIFY(!alone(ridge).creaseTurn && !alone(ridge).turnDerivation);
        ridge.otherSlope = Slope::twelfths(12);
        QVERIFY(std::abs(alone(ridge).creaseTurn->inDegrees() + 45.0 + 26.565) < 0.001);
        QVERIFY(say(alone(ridge).turnDerivation->statement, {}).find("the ridge turns") == 0);
        QCOMPARE(alone(ridge).derivation.because.size(), std::size_t{1});
        ridge.kind = RunKind::SlopeChange; // upper 6, lower 12: convex
        QVERIFY(std::abs(alone(ridge).creaseTurn->inDegrees() + 45.0 - 26.565) < 0.001);
        QVERIFY(std::abs(alone(ridge).slope->inDegrees() - 26.565) < 0.001);
        QVERIFY(!alone(ridge).wallTurn);
        Run corner = runOf(RunKind::OutsideCorner, Length::feet(9));
        QCOMPARE(alone(corner).wallTurn->inDegrees(), 90.0);
        corner.planCorner = Angle::degrees(135.0);
        QVERIFY(std::abs(alone(corner).wallTurn->inDegrees() - 45.0) < 1e-9);
        corner.planCorner.reset();
        corner.kind = RunKind::InsideCorner;
        QCOMPARE(alone(corner).wallTurn->inDegrees(), -90.0);
    }
    void cornersOfTheChain()
    {
        std::mt19937 random(2);
        Chain house = houses::rectilinear(random, 2);
        house.corners[1] = SquareInside{};
        QCOMPARE(runGeometry(house, 0)->startCornerTurn->inDegrees(),
                 180.0 - (std::holds_alternative<SquareInside>(house.corners.back()) ? 270.0 : 90.0));
        QCOMPARE(runGeometry(house, 1)->endCornerTurn->inDegrees(), -90.0);
        QCOMPARE(runGeometry(house, 2)->startCornerTurn->inDegrees(), -90.0);
        house.closed = false;
        house.corners.pop_back();
        QVERIFY(!runGeometry(house, 0)->startCornerTurn);
        QVERIFY(!runGeometry(house, house.runs.size() - 1)->endCornerTurn);
        house.corners[1] = InteriorAngle{Angle::degrees(400.0), ""};
        QVERIFY(!runGeometry(house, 1)->endCornerTurn);
    }
    void planPerLength()
    {
        Run rake = runOf(RunKind::Rake, Length::feet(15));
        QVERIFY(!planRatio(rake));
        rake.slope = Slope::twelfths(9);
        QVERIFY(std::abs(planRatio(rake).value() - 0.8) < 1e-12);
        QCOMPARE(planRatio(runOf(RunKind::Eave, {})).value(), 1.0);
        QCOMPARE(planRatio(runOf(RunKind::OpeningJamb, {})).value(), 0.0);
        Run hip = runOf(RunKind::Hip, Length::feet(18));
        hip.slope = hip.otherSlope = Slope::twelfths(6);
        QVERIFY(std::abs(planRatio(hip).value() - std::sqrt(288.0) / 18.0) < 1e-12);
    }
    void theEnteredTextIsInTheReason()
    {
        Run run = runOf(RunKind::Eave, Length::feet(20));
        run.lengths[0].entered = "20 ft";
        const Derivation reason = alone(run).derivation;
        QVERIFY(!reason.because.empty());
        bool found = false;
        for (const auto& [name, value] : reason.because[0].statement.values)
            found = found || (name == "entered" && std::get<std::string>(value) == "20 ft");
        QVERIFY(found);
    }
};

QTEST_APPLESS_MAIN(RunGeometryTest)
#include "tst_run_geometry.moc"
