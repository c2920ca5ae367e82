// Guards: what is written reads back as the same measure, in every style and for every mark on a tape; and a
// sentence shows its values in the units of whoever reads it.
#include "measure/reading.h"
#include "measure/rounding.h"

#include <QtTest>

#include <cmath>
#include <random>
#include <string>

using lapwright::Angle;
using lapwright::Length;
using lapwright::LengthField;
using lapwright::LengthUnit;
using lapwright::readLength;
using lapwright::Slope;
using lapwright::Style;
using lapwright::write;
using lapwright::writeExact;

namespace {

constexpr Length longest = Length::feet(200);
const LengthField noUnit{};
const LengthField signedField{std::nullopt, true};

/// LAPWRIGHT_LONG=1 writes every mark in every style; otherwise each mark is written in one style, in turn.
bool everyStyle()
{
    return qEnvironmentVariableIntValue("LAPWRIGHT_LONG") == 1;
}

bool readsBack(const std::string& text, Length expected, const LengthField& field)
{
    const auto reading = readLength(text, field);
    if (reading.value() == expected)
        return true;
    qWarning("%s does not read back as %lld nm", text.c_str(),
             static_cast<long long>(expected.inNanometres()));
    return false;
}

/// A tape mark in a way people write it, put together here and not by the writer under test.
std::string byHand(std::int64_t sixtyFourths, int style)
{
    const std::int64_t feet = sixtyFourths / 768, inches = sixtyFourths % 768 / 64, rest = sixtyFourths % 64;
    const std::string f = std::to_string(feet), i = std::to_string(inches),
                      all = std::to_string(sixtyFourths / 64);
    const std::string fraction = std::to_string(rest) + "/64";
    switch (style) {
    case 0:
        return f + "' " + i + "-" + fraction + "\"";
    case 1:
        return f + " " + i + " " + fraction;
    case 2:
        return f + "-" + i + "-" + fraction;
    case 3:
        return f + "ft " + i + " " + fraction + " in";
    case 4:
        return all + " " + fraction;
    case 5: {
        std::string decimals = std::to_string(1'000'000 + rest * 1'000'000 / 64).substr(1);
        return all + "." + decimals + "\"";
    }
    default:
        return f + "\u2032" + i + "\u2009" + fraction + "\u2033";
    }
}
constexpr int handStyles = 7;

} // namespace

class WritingTest : public QObject {
    Q_OBJECT
private slots:
    void everySixtyFourthReadsBack()
    {
        int count = 0, failures = 0;
        const auto check = [&](bool good) {
            ++count;
            failures += good ? 0 : 1;
        };
        for (std::int64_t mark = 0; Length::sixtyFourths(mark) <= longest && failures < 10; ++mark) {
            const Length value = Length::sixtyFourths(mark);
            for (int style = 0; style < handStyles + 3; ++style) {
                if (!everyStyle() && mark % (handStyles + 3) != style)
                    continue;
                if (style < handStyles)
                    check(readsBack(byHand(mark, style), value, noUnit));
                else if (style == handStyles)
                    check(readsBack(write(value, {LengthUnit::FeetInches, 64, 5}), value, noUnit));
                else if (style == handStyles + 1)
                    check(readsBack(write(value, {LengthUnit::Inches, 64, 5}), value, noUnit));
                else
                    check(readsBack(writeExact(value, LengthUnit::Millimetres), value, noUnit));
            }
        }
        qInfo("%d tape marks read back", count);
        QCOMPARE(failures, 0);
        QVERIFY(count >= 153'601);
    }
    void everyTenthOfAMillimetreReadsBack()
    {
        // 61 m, a little more than 200 ft.
        int count = 0, failures = 0;
        const int step = everyStyle() ? 1 : 29;
        for (int tenths = 0; tenths <= 610'000 && failures < 10; tenths += step, ++count) {
            const Length value = Length::micrometres(100) * tenths;
            const std::string text = write(value, {LengthUnit::Millimetres, 16, 1});
            failures += readsBack(text, value, noUnit) ? 0 : 1;
            std::string comma = std::to_string(tenths / 10) + "," + std::to_string(tenths % 10) + " mm";
            failures += readsBack(comma, value, noUnit) ? 0 : 1;
        }
        qInfo("%d metric marks read back", count);
        QCOMPARE(failures, 0);
    }
    void anyNanometreReadsBackExactly()
    {
        std::mt19937_64 random(1893);
        std::uniform_int_distribution<std::int64_t> upToABuilding(-70'000'000'000, 70'000'000'000);
        std::uniform_int_distribution<std::int64_t> upToTheLimit(-1'000'000'000'000'000,
                                                                 1'000'000'000'000'000);
        for (int i = 0; i < 3'000; ++i) {
            const Length value =
                Length::nanometres(i % 4 == 0 ? upToTheLimit(random) : upToABuilding(random));
            for (const LengthUnit unit :
                 {LengthUnit::FeetInches, LengthUnit::Inches, LengthUnit::Millimetres})
                QVERIFY(readsBack(writeExact(value, unit), value, signedField));
        }
    }
    void exactTextIsShort()
    {
        QCOMPARE(writeExact(Length::sixtyFourths(9'624), LengthUnit::FeetInches), std::string("12' 6 3/8\""));
        QCOMPARE(writeExact(Length::sixtyFourths(9'624), LengthUnit::Inches), std::string("150 3/8\""));
        QCOMPARE(writeExact(Length::sixtyFourths(9'624), LengthUnit::Millimetres),
                 std::string("3819.525 mm"));
        QCOMPARE(writeExact(Length::feet(12), LengthUnit::FeetInches), std::string("12' 0\""));
        QCOMPARE(writeExact(Length::thousandths(19), LengthUnit::Inches), std::string("0.019\""));
        QCOMPARE(writeExact(-Length::thousandths(12'019), LengthUnit::FeetInches),
                 std::string("-1' 0.019\""));
        QCOMPARE(writeExact(Length::millimetres(1), LengthUnit::Inches), std::string("0.03937008\""));
        QCOMPARE(writeExact(Length::nanometres(25'399'999), LengthUnit::Inches), std::string("0.99999996\""));
        QCOMPARE(writeExact(Length(), LengthUnit::Millimetres), std::string("0 mm"));
    }
    void writtenMeasuresAreRoundedToTheStyle()
    {
        QCOMPARE(write(Length::sixtyFourths(9'624), Style{}), std::string("12' 6 3/8\""));
        QCOMPARE(write(Length::sixtyFourths(767), Style{}), std::string("1' 0\""));
        // Not to be taken for 10 5/16".
        QCOMPARE(write(Length::feet(10) + Length::sixtyFourths(20), Style{}), std::string("10' 0 5/16\""));
        QCOMPARE(writeExact(Length::feet(10) + Length::sixtyFourths(20), LengthUnit::FeetInches),
                 std::string("10' 0 5/16\""));
        QCOMPARE(writeExact(Length::feet(10) + Length::thousandths(19), LengthUnit::FeetInches),
                 std::string("10' 0.019\""));
        QCOMPARE(write(-Length::sixtyFourths(1), {LengthUnit::Inches, 16, 5}), std::string("0\""));
        QCOMPARE(write(Length::micrometres(3'820'300), {LengthUnit::Millimetres, 16, 5}),
                 std::string("3820.5 mm"));
        QCOMPARE(write(Length::micrometres(3'820'200), {LengthUnit::Millimetres, 16, 5}),
                 std::string("3820 mm"));
        QCOMPARE(lapwright::writeThickness(Length::thousandths(1) * 276 / 10, Style{}),
                 std::string("0.0276\""));
        QCOMPARE(lapwright::writeThickness(Length::micrometres(700), {LengthUnit::Millimetres, 16, 5}),
                 std::string("0.70 mm"));
        QCOMPARE(write(Angle::degrees(-0.001)), std::string("0°"));
    }
    void slopesAndAnglesReadBack()
    {
        int count = 0;
        for (int quarters = 0; quarters <= 4 * 24; ++quarters, ++count) {
            const Slope slope = Slope::fromMillionths(quarters * 250'000, 12'000'000).value();
            QVERIFY2(lapwright::readSlope(write(slope), {}).value() == slope, write(slope).c_str());
        }
        for (int hundredths = -36'000; hundredths <= 36'000; hundredths += 7, ++count) {
            const Angle angle = Angle::degrees(hundredths / 100.0);
            const auto read = lapwright::readAngle(write(angle), {true}).value();
            QVERIFY2(read && std::abs((*read - angle).inDegrees()) < 1e-9, write(angle).c_str());
        }
        qInfo("%d slopes and angles read back", count);
    }
    void slopesCompareBySteepness()
    {
        const auto slope = [](std::int64_t rise, std::int64_t run) {
            return Slope::fromMillionths(rise, run).value();
        };
        std::mt19937_64 random(2);
        std::uniform_int_distribution<std::int64_t> part(1, 1'000);
        for (int i = 0; i < 5'000; ++i) {
            const std::int64_t a = part(random), b = part(random), c = part(random), d = part(random);
            QCOMPARE(slope(a, b) == slope(c, d), a * d == b * c);
            QCOMPARE(slope(a, b) < slope(c, d), a * d < b * c);
        }
        QVERIFY(!Slope::fromMillionths(1, 0) && !Slope::fromMillionths(-1, 1) &&
                !Slope::fromMillionths(1'001, 1));
        QVERIFY(Slope::fromMillionths(1'000, 1).has_value());
    }
    void sentencesShowTheirValues()
    {
        const lapwright::Phrase phrase{"{run} measures {measured} at {slope}, {angle}; {count} of {missing}",
                                       {{"run", std::string("E3")},
                                        {"measured", Length::inches(12)},
                                        {"slope", Slope::twelfths(6)},
                                        {"angle", Angle::degrees(22.5)},
                                        {"count", std::int64_t{3}}}};
        QCOMPARE(lapwright::say(phrase, {}),
                 std::string("E3 measures 1' 0\" at 6 in 12, 22.5°; 3 of {missing}"));
        QCOMPARE(lapwright::say({"open { brace", {}}, {}), std::string("open { brace"));
        const lapwright::Phrase heavy{"Two people: {mass}.", {{"mass", lapwright::Mass::kilograms(12.34)}}};
        QCOMPARE(lapwright::say(heavy, {LengthUnit::Inches, 16, 5}), std::string("Two people: 27 lb."));
        QCOMPARE(lapwright::say(heavy, {LengthUnit::Millimetres, 16, 5}),
                 std::string("Two people: 12.3 kg."));
        // A value that itself looks like a name is not filled in again.
        QCOMPARE(lapwright::say({"{a}{b}", {{"a", std::string("{b}")}, {"b", std::string("x")}}}, {}),
                 std::string("{b}x"));
    }
};

QTEST_APPLESS_MAIN(WritingTest)
#include "tst_writing.moc"
