// Guards: the slips people make between tape and paper are recognised, and nothing else is called one.
#include "site/reading_slip.h"

#include "measure/writing.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Length feetInches(std::int64_t feet, std::int64_t inches, std::int64_t sixteenths = 0)
{
    return Length::feet(feet) + Length::inches(inches) + Length::sixtyFourths(4 * sixteenths);
}

std::string said(Length measured, Length wouldBe)
{
    const auto slip = readingSlip(measured, wouldBe);
    return slip ? say(slip->statement, Style()) : std::string();
}

} // namespace

class ReadingSlipTest : public QObject {
    Q_OBJECT
private slots:
    void digitsThatChangedPlaces()
    {
        // Common practice, no source.
        QVERIFY(said(feetInches(24, 6), feetInches(26, 4)) == "two digits of 26' 4\" changed places");
        QVERIFY(readingSlip(feetInches(24, 6), feetInches(26, 4))->ofTheDigits);
        QVERIFY(said(feetInches(21, 3, 5), feetInches(12, 3, 5)) ==
                "two digits of 12' 3 5/16\" changed places");
        // Found only to within the noise of the other measures.
        QVERIFY(said(feetInches(24, 6), feetInches(26, 4, 6)) == "two digits of 26' 4\" changed places");
        QVERIFY(said(Length::millimetres(3820), Length::millimetres(8320)).find("changed places") !=
                std::string::npos);
    }
    void sixAndNine()
    {
        QVERIFY(said(feetInches(16, 2), feetInches(19, 2)).find("a 6 and a 9") == 0);
        QVERIFY(said(feetInches(20, 9), feetInches(20, 6)).find("a 6 and a 9") == 0);
    }
    void feetAndTheFirstInch()
    {
        QVERIFY(said(feetInches(20, 2), feetInches(21, 2)) == "a foot misread on the tape");
        QVERIFY(!readingSlip(feetInches(20, 2), feetInches(21, 2))->ofTheDigits);
        QVERIFY(said(feetInches(20, 2), feetInches(10, 2)) == "10 feet misread on the tape");
        QVERIFY(said(feetInches(20, 2), feetInches(23, 2)).empty());
        QVERIFY(said(feetInches(900, 0), feetInches(75, 0)) == "inches taken for feet");
        QVERIFY(said(feetInches(6, 3), feetInches(75, 0)) == "feet taken for inches");
        QVERIFY(said(feetInches(20, 2), feetInches(20, 1)) == "an inch lost or won where the tape began");
    }
    void theRestIsNoSlip()
    {
        QVERIFY(said(feetInches(20, 2), feetInches(20, 2)).empty());
        QVERIFY(said(feetInches(20, 2), feetInches(24, 9)).empty());
        QVERIFY(said(Length(), feetInches(1, 0)).empty());
        QVERIFY(said(-feetInches(3, 0), feetInches(3, 0)).empty());
        QVERIFY(said(Length::nanometres(INT64_MAX), feetInches(3, 0)).empty());
    }
};

QTEST_APPLESS_MAIN(ReadingSlipTest)
#include "tst_reading_slip.moc"
