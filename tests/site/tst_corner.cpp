// Guards: a corner's interior angle, however it was taken, and that corners which cannot be are refused.
#include "site/corner.h"

#include "measure/rounding.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Measured feet(std::int64_t count)
{
    return {Length::feet(count), ""};
}

double degreesOf(const Corner& corner)
{
    return interiorAngle(corner).value().inDegrees();
}

bool tells(const rules::Findings& findings, const std::string& code)
{
    for (const rules::Finding& finding : findings)
        if (finding.code == code)
            return true;
    return false;
}

} // namespace

class CornerTest : public QObject {
    Q_OBJECT
private slots:
    void squareCorners()
    {
        QCOMPARE(degreesOf(SquareOutside{}), 90.0);
        QCOMPARE(degreesOf(SquareInside{}), 270.0);
        QCOMPARE(degreesOf(InteriorAngle{Angle::degrees(135.0), "135"}), 135.0);
    }
    void tapedTriangles()
    {
        // 3-4-5 is square: Euclid, Elements, book I, proposition 48.
        QCOMPARE(degreesOf(TapedTriangle{feet(3), feet(4), feet(5), false}), 90.0);
        QCOMPARE(degreesOf(TapedTriangle{feet(3), feet(4), feet(5), true}), 270.0);
        QCOMPARE(degreesOf(TapedTriangle{feet(7), feet(7), feet(7), false}), 60.0);
        // 3-5-7 has 120° across from 7: cos = (9 + 25 − 49) / 30 = −1/2.
        QCOMPARE(degreesOf(TapedTriangle{feet(3), feet(5), feet(7), false}), 120.0);
    }
    void tapeReadsTheAngleItWasMadeFrom()
    {
        std::mt19937 random(7);
        std::uniform_real_distribution<double> side(300.0, 6000.0), angle(5.0, 175.0);
        double worst = 0.0;
        for (int sample = 0; sample < 2000; ++sample) {
            const double a = side(random), b = side(random), wanted = angle(random);
            const double c =
                std::sqrt(a * a + b * b - 2.0 * a * b * std::cos(Angle::degrees(wanted).inRadians()));
            const TapedTriangle taped{{nearestFromMillimetres(a), ""},
                                      {nearestFromMillimetres(b), ""},
                                      {nearestFromMillimetres(c), ""},
                                      sample % 2 == 1};
            const double expected = taped.inside ? 360.0 - wanted : wanted;
            worst = std::max(worst, std::abs(degreesOf(taped) - expected));
        }
        qInfo("2000 taped triangles, worst %.2g degrees", worst);
        QVERIFY(worst < 1e-5);
    }
    void impossibleCornersAreRefused()
    {
        const TapedTriangle tooLong{feet(3), feet(4), feet(8), false};
        QVERIFY(!interiorAngle(tooLong));
        QVERIFY(tells(checkCorner(tooLong, Angle::degrees(1.0), "c"), "site.corner.no-triangle"));
        QVERIFY(!interiorAngle(TapedTriangle{feet(3), feet(4), feet(7), false}));
        QVERIFY(!interiorAngle(TapedTriangle{feet(3), feet(9), feet(5), false}));
        QVERIFY(!interiorAngle(TapedTriangle{feet(0), feet(4), feet(4), false}));
        for (const double given : {0.0, -90.0, 360.0, 400.0, std::nan("")}) {
            const Corner corner = InteriorAngle{Angle::degrees(given), ""};
            QVERIFY(!interiorAngle(corner));
            const auto findings = checkCorner(corner, Angle::degrees(1.0), "c");
            QVERIFY(tells(findings, "site.corner.angle"));
            QVERIFY(rules::anyBlocks(findings));
        }
        QVERIFY(checkCorner(SquareInside{}, Angle::degrees(1.0), "c").empty());
    }
    void shortTapesAreToldApart()
    {
        const TapedTriangle small{feet(1), feet(1), feet(1), false},
            large{feet(12), feet(16), feet(20), false};
        QVERIFY(tells(checkCorner(small, Angle::degrees(0.5), "c"), "site.corner.short-tape"));
        QVERIFY(checkCorner(large, Angle::degrees(0.5), "c").empty());
    }
    void sensitivityIsTheChangeOfTheAngle()
    {
        const Length error = Length::sixtyFourths(1);
        const TapedTriangle taped{feet(5), feet(6), feet(9), false};
        TapedTriangle longer = taped;
        longer.diagonal.value += error;
        const double change = degreesOf(longer) - degreesOf(taped);
        QVERIFY(std::abs(change - tapedSensitivity(taped, error).inDegrees()) < 0.01 * change);
    }
};

QTEST_APPLESS_MAIN(CornerTest)
#include "tst_corner.moc"
