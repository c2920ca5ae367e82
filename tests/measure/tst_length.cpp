// Guards: lengths are exact in both tape systems, and rounding goes the way each function's name says.
#include "measure/rounding.h"

#include <QtTest>

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
