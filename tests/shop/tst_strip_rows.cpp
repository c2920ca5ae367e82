// Guards: the person at the shear reads the measure that is really set along a strip, also where the sheet is
// crosscut first or a blank lies turned, what a narrower blank is trimmed to, and what is left of the strip.
#include "strip_rows.h"

#include <QtTest>

using namespace lapwright;

namespace {

/// One blank, 5 in of girth and 100 in long, in one strip.
documents::CutPlan planOf(cutting::CutOrder order, bool turned, Length width, Length rest)
{
    documents::CutPlan plan;
    cutting::Blank blank;
    blank.key = "order/E1.1";
    blank.girth = Length::inches(5);
    blank.length = Length::inches(100);
    blank.mayTurn = true;
    plan.problem.blanks = {blank};
    cutting::Pattern pattern;
    pattern.order = order;
    pattern.strips = {{Length(), width, {{0, 3, turned}}, rest}};
    plan.plan.patterns = {pattern};
    return plan;
}

QList<model::Row> rowsOf(const documents::CutPlan& plan)
{
    Style style;
    style.unit = LengthUnit::Millimetres;
    return model::stripRows(plan, 0, {"E1.1"}, style);
}

} // namespace

class TestStripRows : public QObject {
    Q_OBJECT

private slots:
    void theMeasureAlongTheStripIsShown_data()
    {
        QTest::addColumn<int>("order");
        QTest::addColumn<bool>("turned");
        QTest::addColumn<int>("width");
        QTest::addColumn<QString>("detail");
        const int strips = static_cast<int>(cutting::CutOrder::StripsFirst);
        const int lengths = static_cast<int>(cutting::CutOrder::LengthsFirst);
        // 5 in is 127 mm, 100 in is 2540 mm; a blank is `girth` across a strip and `length` along it unless
        // the sheet is crosscut first or the blank is turned.
        QTest::newRow("strips first") << strips << false << 5 << "3 × E1.1 at 2540 mm";
        QTest::newRow("strips first, turned") << strips << true << 100 << "3 × E1.1 at 127 mm";
        QTest::newRow("lengths first") << lengths << false << 100 << "3 × E1.1 at 127 mm";
        QTest::newRow("lengths first, turned") << lengths << true << 5 << "3 × E1.1 at 2540 mm";
        QTest::newRow("trimmed") << strips << false << 6 << "3 × E1.1 at 2540 mm, trimmed to 127 mm";
        QTest::newRow("lengths first, trimmed")
            << lengths << false << 120 << "3 × E1.1 at 127 mm, trimmed to 2540 mm";
    }

    void theMeasureAlongTheStripIsShown()
    {
        QFETCH(int, order);
        QFETCH(bool, turned);
        QFETCH(int, width);
        QFETCH(QString, detail);
        const auto rows =
            rowsOf(planOf(static_cast<cutting::CutOrder>(order), turned, Length::inches(width), Length()));
        QCOMPARE(rows.size(), 1);
        QCOMPARE(rows.first().detail, detail);
        QCOMPARE(rows.first().trailing, QString());
    }

    void whatIsLeftOfTheStripIsSaid()
    {
        const auto rows =
            rowsOf(planOf(cutting::CutOrder::StripsFirst, false, Length::inches(5), Length::inches(10)));
        QCOMPARE(rows.first().title, QString("1   127 mm"));
        QCOMPARE(rows.first().trailing, QString("left 254 mm"));
    }
};

QTEST_GUILESS_MAIN(TestStripRows)
#include "tst_strip_rows.moc"
