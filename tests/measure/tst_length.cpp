// Guards: lengths are exact in both tape systems, and rounding goes the way each function's name says.
#include "measure/rounding.h"

#include <QtTest>

#include <limits>

using lapwright::Length;

class LengthTest : public QObject {
    Q_OBJECT
private slots:
    void bothTapesAreExact()
    {
        QCOMPARE(Length::sixtyFourths(64).inNanometres(), Length::inches(1).inNanometres());
        QCOMPARE(Length::inches(12).inNanometres(), Length::feet(1).inNanometres());
        QCOMPARE(Length::thousandths(1000).inNanometres(), Length::inches(1).inNanometres());
        QCOMPARE(Length::micrometres(25'400).inNanometres(), Length::inches(1).inNanometres());
    }
    void roundingNeverOverflows()
    {
        // A length that a file may claim; printing it overflowed in roundToNearest.
        const Length step = Length::micrometres(500);
        const Length most = Length::nanometres(std::numeric_limits<std::int64_t>::max());
        QCOMPARE(lapwright::roundToNearest(most, step).inNanometres(),
                 std::int64_t{9'223'372'036'854'500'000});
        QCOMPARE(lapwright::roundToNearest(-most, step).inNanometres(),
                 std::int64_t{-9'223'372'036'854'500'000});
    }
    void halvesGoAwayFromZero()
    {
        const Length step = Length::nanometres(10);
        for (std::int64_t amount = -1000; amount <= 1000; ++amount) {
            const std::int64_t size = amount < 0 ? -amount : amount;
            const std::int64_t wanted = (size + 5) / 10 * 10 * (amount < 0 ? -1 : 1);
            QCOMPARE(lapwright::roundToNearest(Length::nanometres(amount), step).inNanometres(), wanted);
        }
    }
    void roundingFollowsItsName()
    {
        const Length step = Length::millimetres(1);
        const Length value = Length::micrometres(-1'500);
        QCOMPARE(lapwright::roundDown(value, step).inNanometres(), Length::millimetres(-2).inNanometres());
        QCOMPARE(lapwright::roundUp(value, step).inNanometres(), Length::millimetres(-1).inNanometres());
        QCOMPARE(lapwright::roundToNearest(value, step).inNanometres(),
                 Length::millimetres(-2).inNanometres());
        QCOMPARE(lapwright::roundUp(Length::millimetres(3), step).inNanometres(),
                 Length::millimetres(3).inNanometres());
    }
};

QTEST_APPLESS_MAIN(LengthTest)
#include "tst_length.moc"
