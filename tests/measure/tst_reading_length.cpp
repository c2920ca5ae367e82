// Guards: a length is read as it was meant, in every way people write one; what could be two lengths is never
// guessed at; what is none is refused with what was expected and where.
#include "measure/reading.h"

#include <QtTest>

#include <string>
#include <vector>

using lapwright::Length;
using lapwright::LengthField;
using lapwright::LengthUnit;
using lapwright::Reading;
using lapwright::readLength;

namespace {

const LengthField anyUnit{};
const LengthField feetField{LengthUnit::FeetInches, false};
const LengthField inchField{LengthUnit::Inches, false};
const LengthField metricField{LengthUnit::Millimetres, false};

/// Written out from the definition of the inch, 25.4 mm, not through the reader's own arithmetic.
constexpr Length feetInches64(std::int64_t feet, std::int64_t inches, std::int64_t sixtyFourths)
{
    return Length::nanometres(((feet * 12 + inches) * 64 + sixtyFourths) * 396'875);
}

std::string told(const Reading<Length>& reading)
{
    return lapwright::say(reading.problem(), {});
}

void expectExact(const char* text, const LengthField& field, Length expected)
{
    const Reading<Length> reading = readLength(text, field);
    QVERIFY2(reading.isExact(), (std::string(text) + " → " + told(reading)).c_str());
    const auto found = reading.value().value_or(Length()).inNanometres();
    QVERIFY2(found == expected.inNanometres(), (std::string(text) + " → " + std::to_string(found)).c_str());
}

void expectAmbiguous(const char* text, const LengthField& field, const std::vector<Length>& expected)
{
    const Reading<Length> reading = readLength(text, field);
    QVERIFY2(reading.isAmbiguous(), (std::string(text) + " → " + told(reading)).c_str());
    const auto candidates = reading.candidates();
    QCOMPARE(candidates.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        QVERIFY2(candidates[i].value == expected[i], (std::string(text) + " → " + told(reading)).c_str());
        QVERIFY(told(reading).find(candidates[i].words) != std::string::npos);
        // What the message offers means exactly that, whatever the field.
        expectExact(candidates[i].words.c_str(), {std::nullopt, true}, expected[i]);
    }
}

void expectNonsense(const std::string& text, const LengthField& field, const char* expected, int position)
{
    const Reading<Length> reading = readLength(text, field);
    const std::string problem = told(reading);
    QVERIFY2(reading.isNonsense(), text.c_str());
    QVERIFY2(problem.find(expected) != std::string::npos, problem.c_str());
    QVERIFY2(problem.find("character " + std::to_string(position)) != std::string::npos, problem.c_str());
}

} // namespace

class ReadingLengthTest : public QObject {
    Q_OBJECT
private slots:
    void feetInchesAndFractions()
    {
        const Length measured = feetInches64(12, 6, 24); // 12' 6 3/8" = 150.375 in
        for (const char* text : {"12' 6-3/8\"",
                                 "12' 6 3/8\"",
                                 "12 6 3/8",
                                 "12-6-3/8",
                                 "12-6 3/8",
                                 "12'6-3/8\"",
                                 "12'-6 3/8\"",
                                 "12' - 6 3/8\"",
                                 "12' 6.375\"",
                                 "12'6.375",
                                 "12ft 6.375in",
                                 "12 ft. 6 3/8 in.",
                                 "12 feet 6 3/8 inches",
                                 "12FT 6 3/8IN",
                                 "12 foot 6-3/8 inch",
                                 "12 6.375",
                                 "12' 6,375\"",
                                 "12' 6 3 / 8\"",
                                 "12' 6\" 3/8",
                                 "12' 6 24/64\"",
                                 "  12'  6   3/8\"  "})
            for (const LengthField& field : {anyUnit, feetField, inchField})
                expectExact(text, field, measured);
        for (const char* text : {"150.375\"", "150 3/8", "150-3/8", "150 3/8\"", "150\"3/8", "150.375 in",
                                 "12.53125'", "12 17/32'", "12.53125 ft"})
            expectExact(text, feetField, measured);
        expectExact("150.375", inchField, measured);
        expectExact("12'", inchField, feetInches64(12, 0, 0));
        expectExact("12.5'", inchField, feetInches64(12, 6, 0));
        expectExact("12ft 6in", metricField, feetInches64(12, 6, 0));
        expectExact("12' 3/8\"", anyUnit, feetInches64(12, 0, 24));
        expectExact("12' 3/8", anyUnit, feetInches64(12, 0, 24));
        expectExact("0' 11 63/64\"", anyUnit, feetInches64(0, 11, 63));
        expectExact("12 0 3/8", anyUnit, feetInches64(12, 0, 24));
        expectExact("12 6", anyUnit, feetInches64(12, 6, 0));
        expectExact("12-6", feetField, feetInches64(12, 6, 0));
        expectExact(".5\"", anyUnit, feetInches64(0, 0, 32));
        expectExact("0", anyUnit, Length());
    }
    void aSpaceBeforeTheFractionIsKept()
    {
        expectExact("1 1/4", anyUnit, feetInches64(0, 1, 16));
        expectExact("1 1/4\"", metricField, feetInches64(0, 1, 16));
        expectExact("1-1/4", inchField, feetInches64(0, 1, 16));
        expectExact("3/4", metricField, feetInches64(0, 0, 48));
        expectNonsense("11/4", inchField, "a fraction below 1", 1);
    }
    void typographicMarksSpacesAndFractions()
    {
        const Length measured = feetInches64(12, 6, 24);
        for (const char* text : {"12′ 6⅜″", "12’ 6 3⁄8”", "12´ 6‑3∕8″", "12\u00A0ft 6\u2009⅜\u202Fin",
                                 "12′–6⅜″", "12'6⅜''", "\u200E12' 6⅜\"\u200B", "12ʹ 6⅜ʺ", "12`6⅜\u201C"})
            expectExact(text, anyUnit, measured);
        expectExact("12'' ⅜", anyUnit, feetInches64(0, 12, 24));
        expectExact("½", anyUnit, feetInches64(0, 0, 32));
        expectExact("6½", metricField, feetInches64(0, 6, 32));
        expectExact("5½'", anyUnit, feetInches64(5, 6, 0));
    }
    void metric()
    {
        for (const char* text :
             {"3820 mm", "3820mm", "382 cm", "3.82 m", "3,82 m", "3.820 m", "3 820 mm", "3\u202F820 mm",
              "3\u00A0820,0 mm", "3 820.0 millimetres", "3.82 metres", "3.82M"})
            expectExact(text, inchField, Length::millimetres(3820));
        expectExact("3820", metricField, Length::millimetres(3820));
        expectExact("12.5", metricField, Length::micrometres(12'500));
        expectExact("12,5", metricField, Length::micrometres(12'500));
        expectExact("0,125 mm", anyUnit, Length::micrometres(125));
        expectExact("1.234,5 mm", anyUnit, Length::micrometres(1'234'500));
        expectExact("1,234.5 mm", anyUnit, Length::micrometres(1'234'500));
        expectExact("1,234,567 mm", anyUnit, Length::millimetres(1'234'567));
        expectExact("1 028 mm", anyUnit, Length::millimetres(1028));
        expectExact("1 028", metricField, Length::millimetres(1028));
    }
    void severalMeaningsAreHandedBack()
    {
        expectAmbiguous("3820", anyUnit, {Length::millimetres(3820), Length::inches(3820)});
        expectAmbiguous("3 820", anyUnit, {Length::millimetres(3820), Length::inches(3820)});
        expectAmbiguous("150.375", anyUnit, {Length::micrometres(150'375), feetInches64(0, 150, 24)});
        expectAmbiguous("12", feetField, {Length::feet(12), Length::inches(12)});
        expectAmbiguous("12.5", feetField, {feetInches64(12, 6, 0), feetInches64(0, 12, 32)});
        expectAmbiguous("3,820 mm", anyUnit, {Length::micrometres(3'820), Length::millimetres(3820)});
        expectAmbiguous("3,820", metricField, {Length::micrometres(3'820), Length::millimetres(3820)});
        expectAmbiguous("3,820", anyUnit,
                        {Length::micrometres(3'820), Length::thousandths(3'820), Length::millimetres(3820),
                         Length::inches(3820)});
        expectAmbiguous("150,375\"", anyUnit, {feetInches64(0, 150, 24), Length::inches(150'375)});
        QCOMPARE(told(readLength("3820", anyUnit)),
                 std::string("3820 can be read as 3820 mm or 3820\": write the unit"));
        const auto error = readLength("3820", anyUnit).result("job.json: /chains/0/runs/1/measured");
        QCOMPARE(
            error.errors().front().sentence(),
            std::string("job.json: /chains/0/runs/1/measured: found 3820, expected only one of 3820 mm or "
                        "3820\""));
    }
    void nonsenseSaysWhatWasExpectedAndWhere()
    {
        expectNonsense("", anyUnit, "a measure", 1);
        expectNonsense("   ", anyUnit, "a measure", 4);
        expectNonsense("abc", anyUnit, "a number", 1);
        expectNonsense("12' 14\"", anyUnit, "less than 12 inches after feet", 5);
        expectNonsense("12 14", anyUnit, "less than 12 inches after feet", 4);
        expectNonsense("12' 12\"", anyUnit, "less than 12 inches after feet", 5);
        expectNonsense("5 9/8", anyUnit, "a fraction below 1", 3);
        expectNonsense("5 8/8", anyUnit, "a fraction below 1", 3);
        expectNonsense("5 3/0", anyUnit, "more than 0", 3);
        expectNonsense("5 1/3", inchField, "halves, quarters, 8ths", 3);
        expectNonsense("6/12", inchField, "halves, quarters, 8ths", 1);
        expectNonsense("5 3/128", inchField, "halves, quarters, 8ths", 3);
        expectNonsense("5.5 3/8", inchField, "either decimals or a fraction", 5);
        expectNonsense("12.5' 6\"", inchField, "whole feet before inches", 1);
        expectNonsense("-12'", inchField, "not negative", 1);
        expectNonsense("12' 6\" 3", inchField, "the end of the measure", 8);
        expectNonsense("12' 6\" 3/8 1/8", inchField, "the end of the measure", 12);
        expectNonsense("12 6 3", inchField, "the end of the measure", 6);
        expectNonsense("12' 6 mm", inchField, "inches after feet", 7);
        expectNonsense("12 6", metricField, "one number of millimetres", 4);
        expectNonsense("6 km", anyUnit, "a unit", 3);
        expectNonsense("1e99", inchField, "a unit", 2);
        expectNonsense("0x10", inchField, "a unit", 2);
        expectNonsense("nan", inchField, "a number", 1);
        expectNonsense("12..5", inchField, "digits, fractions", 3);
        expectNonsense("1.2.3", inchField, "a number such as", 1);
        expectNonsense("12'-", inchField, "the end of the measure", 4);
        expectNonsense("12--6", inchField, "a number", 4);
        expectNonsense("12\"\"", inchField, "the end of the measure", 4);
        expectNonsense("6 \U0001F642", inchField, "digits, fractions", 3);
        expectNonsense("99999999999999999999 mm", anyUnit, "a smaller number", 1);
        expectNonsense("9999999999999 mm", anyUnit, "at most 1 000 km", 1);
        expectNonsense("999999999999999'", anyUnit, "at most 1 000 km", 1);
        expectNonsense("3280839 12", inchField, "less than 12", 9);
        expectNonsense("3280839' 11 63/64\"", inchField, "at most 1 000 km", 1);
        expectNonsense("0.0000000001\"", inchField, "nine decimals", 1);
        expectNonsense("12 6 3/8 inches of trim for the back", inchField, "the end of the measure", 17);
        expectNonsense(std::string(65, '1'), inchField, "at most 64 characters", 65);
        expectNonsense("12\xff", inchField, "UTF-8", 1);
    }
    void negativeWhereTheFieldTakesIt()
    {
        const LengthField field{LengthUnit::Inches, true};
        expectExact("-1' 6 3/8\"", field, -feetInches64(1, 6, 24));
        expectExact("\u22126 3/8", field, -feetInches64(0, 6, 24));
        expectExact("-0", field, Length());
        expectAmbiguous("-25", {std::nullopt, true}, {Length::millimetres(-25), Length::inches(-25)});
    }
    void theNearestNanometreIsTaken()
    {
        expectExact("0.333333333\"", anyUnit, Length::nanometres(8'466'667)); // 25.4 mm / 3
        expectExact("0.00000002\"", anyUnit, Length::nanometres(1));          // 0.508 nm
        expectExact("0.00000001\"", anyUnit, Length::nanometres(0));          // 0.254 nm
        expectExact("1/3'", anyUnit, Length::inches(4));
    }
};

QTEST_APPLESS_MAIN(ReadingLengthTest)
#include "tst_reading_length.moc"
