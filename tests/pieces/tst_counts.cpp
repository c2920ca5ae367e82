// Guards: what is counted along a run — movement joints, fasteners, courses of step flashing.
#include "pieces/counts.h"

#include <QtTest>

using lapwright::Length;
using namespace lapwright::pieces;

class CountsTest : public QObject {
    Q_OBJECT
private slots:
    // UFGS 07600 3.1.10 and 3.1.26 (ufgscriteriadocreport.tpub.com/07600, pages 076000017 and 076000022):
    // every 40 ft copper and stainless, 32 ft aluminium, 12 ft aluminium gravel stops and fascias; one more
    // if the last joint stands further than half the interval from the end of the run. Counts worked by hand.
    void movementJoints_data()
    {
        QTest::addColumn<int>("feet");
        QTest::addColumn<int>("interval");
        QTest::addColumn<qint64>("joints");
        QTest::newRow("copper 40 ft: within one interval") << 40 << 40 << qint64{0};
        QTest::newRow("copper 60 ft: 20 ft left is just half") << 60 << 40 << qint64{1};
        QTest::newRow("copper 61 ft: 21 ft left is over half") << 61 << 40 << qint64{2};
        QTest::newRow("copper 80 ft: 40 ft left") << 80 << 40 << qint64{2};
        QTest::newRow("copper 100 ft") << 100 << 40 << qint64{2};
        QTest::newRow("copper 101 ft") << 101 << 40 << qint64{3};
        QTest::newRow("aluminium 100 ft") << 100 << 32 << qint64{3};
        QTest::newRow("aluminium fascia 30 ft: 6 ft left is just half") << 30 << 12 << qint64{2};
        QTest::newRow("aluminium fascia 31 ft") << 31 << 12 << qint64{3};
    }
    void movementJoints()
    {
        QFETCH(int, feet);
        QFETCH(int, interval);
        QFETCH(qint64, joints);
        QCOMPARE(qint64{movementJointCount(Length::feet(feet), Length::feet(interval))}, joints);
    }
    void jointsKeepEachPartWithinTheInterval()
    {
        for (int inches = 1; inches <= 4'000; ++inches) {
            const Length run = Length::inches(inches), interval = Length::feet(40);
            const std::int64_t joints = movementJointCount(run, interval);
            QVERIFY(run <= interval * (joints + 1));
        }
    }
    void fastenersAreNeverFurtherApartThanTheirSpacing()
    {
        // IRC R905.2.8.5: drip edge fastened at not more than 12 in on centre.
        const Length spacing = Length::inches(12);
        for (int sixteenths = 1; sixteenths <= 12 * 16 * 12; ++sixteenths) {
            const Length run = Length::sixtyFourths(sixteenths * 4);
            const std::int64_t fasteners = fastenerCount(run, spacing, 1);
            QVERIFY(fasteners >= 2);
            QVERIFY(run <= spacing * (fasteners - 1));
            QVERIFY(run > spacing * (fasteners - 2));
        }
        QCOMPARE(fastenerCount(Length::feet(10), spacing, 1), 11);
        // UFGS 07600 3.1.15: gravel stop nailed at 3 in in two staggered rows.
        QCOMPARE(fastenerCount(Length::feet(10), Length::inches(3), 2), 82);
        QCOMPARE(fastenerCount(Length(), spacing, 1), 0);
        // UFGS 07600 3.1.4: cleats at 12 in on centre at most; on whole feet floor(L / 12) + 1 of them.
        for (int feet = 1; feet <= 100; ++feet)
            QCOMPARE(fastenerCount(Length::feet(feet), spacing, 1), std::int64_t{feet + 1});
    }
    void stepFlashingGoesByCourses()
    {
        // One for each course; one more for the starter course (common practice, no source).
        QCOMPARE(courseCount(Length::feet(10), Length::inches(5)), 25);
        QCOMPARE(courseCount(Length::feet(10) + Length::nanometres(1), Length::inches(5)), 26);
        QCOMPARE(courseCount(Length::inches(1), Length::inches(5)), 2);
        QCOMPARE(courseCount(Length(), Length::inches(5)), 0);
    }
};

QTEST_APPLESS_MAIN(CountsTest)
#include "tst_counts.moc"
