// Guards: general tolerances are those of the standard, at both ends of each of its ranges.
#include "measure/general_tolerance.h"
#include "measure/rounding.h"

#include <QtTest>

#include <array>
#include <cmath>

using namespace lapwright;

namespace {

constexpr std::array<ToleranceClass, 4> classes{ToleranceClass::Fine, ToleranceClass::Medium,
                                                ToleranceClass::Coarse, ToleranceClass::VeryCoarse};
constexpr std::array<double, 9> ends{0.5, 3, 6, 30, 120, 400, 1000, 2000, 4000};

/// ISO 2768-1:1989, table 1, in millimetres, as printed at 34.229.231.8/din-iso-2768. Another page
/// (scribd.com, document 585640440) has 0.15 and 0.2 in the first two columns of class c; from memory the
/// standard has 0.2 and 0.3. -1: no value.
constexpr double lengths[4][8] = {{.05, .05, .1, .15, .2, .3, .5, -1},
                                  {.1, .1, .2, .3, .5, .8, 1.2, 2},
                                  {.2, .3, .5, .8, 1.2, 2, 3, 4},
                                  {-1, .5, 1, 1.5, 2.5, 4, 6, 8}};

/// Table 3, degrees, shorter leg up to 10, 50, 120, 400 mm and over; class v partly from memory.
constexpr double angles[4][5] = {{1, 1. / 2, 1. / 3, 1. / 6, 1. / 12},
                                 {1, 1. / 2, 1. / 3, 1. / 6, 1. / 12},
                                 {1.5, 1, 1. / 2, 1. / 4, 1. / 6},
                                 {3, 2, 1, 1. / 2, 1. / 3}};

double millimetres(const std::optional<Length>& tolerance)
{
    return tolerance ? inMillimetres(*tolerance) : -1.0;
}

} // namespace

class GeneralToleranceTest : public QObject {
    Q_OBJECT
private slots:
    void lengthsOfTheStandard()
    {
        for (std::size_t row = 0; row < classes.size(); ++row)
            for (std::size_t range = 0; range + 1 < ends.size(); ++range) {
                // Each range is over its lower end (the first: from it) up to and with its upper end.
                const Length low = nearestFromMillimetres(ends[range]);
                const Length first = range == 0 ? low : low + Length::nanometres(1);
                const Length last = nearestFromMillimetres(ends[range + 1]);
                QCOMPARE(millimetres(generalTolerance(classes[row], first)), lengths[row][range]);
                QCOMPARE(millimetres(generalTolerance(classes[row], last)), lengths[row][range]);
            }
    }
    void outsideTheTableThereIsNone()
    {
        for (const ToleranceClass each : classes) {
            QVERIFY(!generalTolerance(each, Length::micrometres(500) - Length::nanometres(1)));
            QVERIFY(!generalTolerance(each, Length::millimetres(4'000) + Length::nanometres(1)));
            QVERIFY(!generalTolerance(each, -Length::millimetres(10)));
            QVERIFY(!generalAngleTolerance(each, Length()));
        }
    }
    void anglesOfTheStandard()
    {
        constexpr std::array<std::int64_t, 5> upTo{10, 50, 120, 400, 100'000};
        for (std::size_t row = 0; row < classes.size(); ++row) {
            Length first = Length::nanometres(1);
            for (std::size_t range = 0; range < upTo.size(); ++range) {
                const Length last = Length::millimetres(upTo[range]);
                for (const Length leg : {first, last})
                    QVERIFY(std::abs(generalAngleTolerance(classes[row], leg)->inDegrees() -
                                     angles[row][range]) < 1e-12);
                first = last + Length::nanometres(1);
            }
        }
    }
};

QTEST_APPLESS_MAIN(GeneralToleranceTest)
#include "tst_general_tolerance.moc"
