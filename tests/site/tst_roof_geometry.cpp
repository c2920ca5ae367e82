// Guards: rakes from level runs and back, and turns between planes over parallel eaves, against the rafter
// tables.
#include "site/roof_geometry.h"

#include "measure/rounding.h"

#include <QtTest>

#include <array>
#include <cmath>

using namespace lapwright;
using namespace lapwright::site;

class RoofGeometryTest : public QObject {
    Q_OBJECT
private slots:
    void commonRaftersOfTheFramingSquare()
    {
        // Inches of common rafter per foot of run, 2 to 18 in 12: framing-square table as printed on
        // instructables.com ("How to read a framing square", step 4); 2 in 12 by daveosborne.com
        // (12.16; 12.17 on the former, stampings differ).
        constexpr std::array<double, 17> table{12.16, 12.37, 12.65, 13.00, 13.42, 13.89, 14.42, 15.00, 15.62,
                                               16.28, 16.97, 17.69, 18.44, 19.21, 20.00, 20.81, 21.63};
        for (std::size_t row = 0; row < table.size(); ++row) {
            const Slope slope = Slope::twelfths(static_cast<std::int64_t>(row) + 2);
            const double inches = inInches(lengthAlongSlope(Length::feet(1), slope).value);
            QVERIFY2(std::abs(inches - table[row]) <= 0.0061, qPrintable(QString::number(inches)));
        }
    }
    void wholeNumbersAreExact()
    {
        // Pythagorean triples: 5-12-13, 9-12-15, 16-12-20.
        QVERIFY(lengthAlongSlope(Length::feet(1), Slope::twelfths(5)).value == Length::inches(13));
        QVERIFY(lengthAlongSlope(Length::feet(1), Slope::twelfths(9)).value == Length::inches(15));
        QVERIFY(lengthAlongSlope(Length::feet(1), Slope::twelfths(16)).value == Length::inches(20));
        QVERIFY(lengthAlongSlope(Length::feet(17), Slope()).value == Length::feet(17));
    }
    void armyRafterExample()
    {
        // US Army engineer course EN5156 (armyengineer.tpub.com/EN5156): 13 in of rise per foot of run, run
        // 10' 4": 17.69 in × 10.333 = 182.79 in, taken as 15' 3".
        const Length rafter =
            lengthAlongSlope(Length::feet(10) + Length::inches(4), Slope::twelfths(13)).value;
        QVERIFY(std::abs(inInches(rafter) - 182.79) < 0.05);
        QVERIFY(roundToNearest(rafter, Length::inches(1)) == Length::feet(15) + Length::inches(3));
    }
    void levelRunComesBack()
    {
        for (std::int64_t rise = 0; rise <= 24; ++rise)
            for (std::int64_t feet = 1; feet < 60; feet += 7) {
                const Length run = Length::feet(feet) + Length::sixtyFourths(feet);
                const Length back =
                    levelRunUnder(lengthAlongSlope(run, Slope::twelfths(rise)).value, Slope::twelfths(rise));
                QVERIFY(magnitude(back - run) <= Length::nanometres(1));
            }
    }
    void turnsBetweenPlanes()
    {
        // atan(6/12) = 26.565° (any table of tangents).
        QVERIFY(std::abs(ridgeTurn(Slope::twelfths(6), Slope::twelfths(6)).value.inDegrees() + 53.130) <
                0.001);
        QVERIFY(std::abs(slopeChangeTurn(Slope::twelfths(4), Slope::twelfths(12)).value.inDegrees() +
                         26.565) < 0.001);
        QVERIFY(slopeChangeTurn(Slope::twelfths(12), Slope::twelfths(4)).value > Angle());
        QCOMPARE(wallTurn(quarterTurn).value.inDegrees(), 90.0);
        QCOMPARE(wallTurn(Angle::degrees(270.0)).value.inDegrees(), -90.0);
    }
    void cricketsRiseAsTheRoof()
    {
        // From memory: IRC table R1003.20, cricket height W/2 at 12 in 12, W/3 at 8, W/4 at 6, W/6 at 4, W/8
        // at 3.
        constexpr std::array<std::array<std::int64_t, 2>, 5> table{{{12, 2}, {8, 3}, {6, 4}, {4, 6}, {3, 8}}};
        for (const auto& [rise, part] : table)
            QVERIFY(cricketHeight(Length::inches(48), Slope::twelfths(rise)).value ==
                    Length::inches(48) / part);
    }
    void reasonsNameTheirInputs()
    {
        const Derived<Length> rake = lengthAlongSlope(Length::feet(10), Slope::twelfths(6));
        for (const char* name : {"length", "run", "factor", "slope"})
            QVERIFY(rake.derivation.statement.text.find("{" + std::string(name) + "}") != std::string::npos);
    }
};

QTEST_APPLESS_MAIN(RoofGeometryTest)
#include "tst_roof_geometry.moc"
