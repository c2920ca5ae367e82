// Guards: slopes and angles are read as they were meant, kept exactly where they were written as a ratio, and
// refused or handed back where they are not slopes or angles, or could be two.
#include "measure/reading.h"

#include <QtTest>

#include <cmath>
#include <string>

using lapwright::Angle;
using lapwright::AngleField;
using lapwright::readAngle;
using lapwright::Reading;
using lapwright::readSlope;
using lapwright::Slope;
using lapwright::SlopeField;
using lapwright::SlopeUnit;

namespace {

template <class T>
std::string told(const Reading<T>& reading)
{
    return lapwright::say(reading.problem(), {});
}

void expectSlope(const char* text, const SlopeField& field, Slope expected)
{
    const Reading<Slope> reading = readSlope(text, field);
    QVERIFY2(reading.isExact(), (std::string(text) + " → " + told(reading)).c_str());
    QVERIFY2(reading.value() == expected, text);
}

void expectDegrees(const char* text, double expected, const AngleField& field = {})
{
    const Reading<Angle> reading = readAngle(text, field);
    QVERIFY2(reading.isExact(), (std::string(text) + " → " + told(reading)).c_str());
    const double found = reading.value().value_or(Angle()).inDegrees();
    QVERIFY2(std::abs(found - expected) < 1e-12 * 360.0,
             (std::string(text) + " → " + std::to_string(found)).c_str());
}

template <class T>
void expectNonsense(const char* text, const Reading<T>& reading, const char* expected, int position)
{
    const std::string problem = told(reading);
    QVERIFY2(reading.isNonsense(), text);
    QVERIFY2(problem.find(expected) != std::string::npos, (std::string(text) + " → " + problem).c_str());
    QVERIFY2(problem.find("character " + std::to_string(position)) != std::string::npos, problem.c_str());
}

Slope slope(std::int64_t rise, std::int64_t run)
{
    return Slope::fromMillionths(rise, run).value();
}

} // namespace

class ReadingSlopeTest : public QObject {
    Q_OBJECT
private slots:
    void ratiosAreKeptExactly()
    {
        for (const char* text :
             {"6/12", "6 in 12", "6:12", "6 / 12", "6 on 12", "6 to 12", "6\" in 12\"", "6in12", "6∶12",
              "6⁄12", "6.0/12", "50%", "50 %", "50 percent", "1/2", "3 in 6"})
            expectSlope(text, {}, Slope::twelfths(6));
        for (const char* text : {"6.5/12", "6,5:12", "6 1/2 in 12", "6 1/2:12", "6½:12", "6-1/2 in 12",
                                 "6 1/2 / 12", "6 1/2/12", "13:24"})
            expectSlope(text, {}, slope(13, 24));
        expectSlope("½:12", {}, slope(1, 24));
        expectSlope("1/2:12", {}, slope(1, 24));
        expectSlope("6 1/3 in 12", {}, slope(19, 36));
        expectSlope("0/12", {}, Slope());
        expectSlope("0", {}, Slope());
        expectSlope("1000:1", {}, slope(1000, 1));
        QCOMPARE(readSlope("6.5 in 12", {}).value()->riseMillionths(), std::int64_t{6'500'000});
        QCOMPARE(readSlope("6.5 in 12", {}).value()->runMillionths(), std::int64_t{12'000'000});
    }
    void degreesGoThroughTheTangent()
    {
        expectSlope("45°", {}, slope(1, 1));
        for (const char* text : {"26.6°", "26.6 deg", "26,6 degrees", "26.6º", "26.6 deg."}) {
            const double found = readSlope(text, {}).value().value_or(Slope()).angle().inDegrees();
            QVERIFY2(std::abs(found - 26.6) < 1e-9, text);
        }
        // From arctan(1/2): 6 in 12 is 26.565 degrees.
        QVERIFY(std::abs(readSlope("26.565051", {SlopeUnit::Degrees}).value()->ratio() - 0.5) < 1e-8);
    }
    void aBareNumberDependsOnTheField()
    {
        const Reading<Slope> reading = readSlope("6", {});
        QVERIFY(reading.isAmbiguous());
        QCOMPARE(told(reading), std::string("6 can be read as 6 in 12 or 6°: write the unit"));
        QVERIFY(reading.candidates()[0].value == Slope::twelfths(6));
        QVERIFY(std::abs(reading.candidates()[1].value.angle().inDegrees() - 6.0) < 1e-9);
        QVERIFY(readSlope("6½", {}).isAmbiguous());
        expectSlope("6", {SlopeUnit::RiseInTwelve}, Slope::twelfths(6));
        expectSlope("6 1/2", {SlopeUnit::RiseInTwelve}, slope(13, 24));
        expectSlope("50", {SlopeUnit::Percent}, Slope::twelfths(6));
        expectSlope("45", {SlopeUnit::Degrees}, slope(1, 1));
        // 90 degrees would be a wall: only one reading is left.
        expectSlope("90", {}, Slope::twelfths(90));
    }
    void slopesThatAreNone()
    {
        const auto expect = [](const char* text, const char* expected, int position) {
            expectNonsense(text, readSlope(text, {}), expected, position);
        };
        expect("", "a measure", 1);
        expect("-6/12", "not negative", 1);
        expect("6 in", "a number", 5);
        expect("6\"", "a slope such as", 3);
        expect("6/", "a number", 3);
        expect("6/0", "more than 0", 1);
        expect("6 in 0", "a run above 0", 6);
        expect("1001:1", "at most 1 000 in 1", 6);
        expect("90°", "less than 90°", 1);
        expect("89.99°", "at most 1 000 in 1", 1);
        expect("6 12", "a slope such as", 3);
        expect("6/12/3", "a slope such as", 5);
        expect("26.6° 12", "the end of the slope", 7);
        expect("6.1234567/12", "six decimals", 1);
        expect("2000000/12", "fewer digits", 1);
        expect("6.5 1/2 in 12", "either decimals or a fraction", 5);
        expect("steep", "a number", 1);
    }
    void angles()
    {
        for (const char* text : {"90", "90°", "90 deg", "90.0", "90,0°", "90°0'0\"", "90-0-0", "90 0 0"})
            expectDegrees(text, 90.0);
        for (const char* text :
             {"22.5", "22 1/2°", "22½", "22-1/2", "22°30'", "22-30", "22° 30", "22°30′00″"})
            expectDegrees(text, 22.5);
        // 26°33'54" = 26 + 33/60 + 54/3600 = 26.565.
        for (const char* text :
             {"26°33'54\"", "26-33-54", "26 33 54", "26°33'54''", "26° 33' 54", "26 deg 33' 54\""})
            expectDegrees(text, 26.565);
        expectDegrees("26°33'54.18\"", 26.0 + 33.0 / 60.0 + 54.18 / 3600.0);
        expectDegrees("26°33.9'", 26.565);
        expectDegrees("½°", 0.5);
        expectDegrees("360", 360.0);
        expectDegrees("-90", -90.0, {true});
        expectDegrees("−26°33'54\"", -26.565, {true});
        expectDegrees("+45", 45.0, {true});
    }
    void anglesThatCouldBeTwo()
    {
        const Reading<Angle> reading = readAngle("26 33", {});
        QVERIFY(reading.isAmbiguous());
        QCOMPARE(told(reading), std::string("26 33 can be read as 26°33' or 26.33°: write the unit"));
        QVERIFY(std::abs(reading.candidates()[0].value.inDegrees() - 26.55) < 1e-12);
        QVERIFY(std::abs(reading.candidates()[1].value.inDegrees() - 26.33) < 1e-12);
    }
    void anglesThatAreNone()
    {
        const auto expect = [](const char* text, const char* expected, int position) {
            expectNonsense(text, readAngle(text, {}), expected, position);
        };
        expect("", "a measure", 1);
        expect("-90", "not negative", 1);
        expect("361", "at most 360°", 1);
        expect("360°0'1\"", "at most 360°", 1);
        expect("26°60'", "minutes below 60", 4);
        expect("26°33'60\"", "seconds below 60", 7);
        expect("26.5°33'", "whole degrees", 6);
        expect("26°33.5'20\"", "whole minutes", 9);
        expect("22 3/2", "a fraction below 1", 4);
        expect("90 rad", "a number", 4);
        expect("12'", "a number", 3);
        expect("26°33'54\"7", "the end of the angle", 10);
    }
};

QTEST_APPLESS_MAIN(ReadingSlopeTest)
#include "tst_reading_slope.moc"
