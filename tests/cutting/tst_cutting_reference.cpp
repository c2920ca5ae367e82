// Guards: plans for published instances and for invented batches are no worse than the best known, and no
// bound passes a value that is known to be reached. Runs where LAPWRIGHT_CUTTING_DATA names a folder with the
// instances; see instances.h.
#include "cutting/instances.h"
#include "cutting/solve.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

Settings searching()
{
    Settings settings;
    settings.workLimit = 4'000;
    settings.fewerSetups = false;
    return settings;
}

} // namespace

class CuttingReferenceTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void twoStage_data();
    void twoStage();
    void severalSheets_data();
    void severalSheets();
    void trimBatches_data();
    void trimBatches();
};

void CuttingReferenceTest::initTestCase()
{
    if (!instances::folder())
        QSKIP("LAPWRIGHT_CUTTING_DATA names no folder with the instances");
}

void CuttingReferenceTest::twoStage_data()
{
    QTest::addColumn<instances::TwoStage>("instance");
    for (const instances::TwoStage& one : instances::twoStages())
        QTest::addRow("%s %s %s", one.name.c_str(), one.horizontal ? "H" : "V",
                      one.patterns == PatternClass::Exact ? "exact" : "non-exact")
            << one;
}

void CuttingReferenceTest::twoStage()
{
    QFETCH(instances::TwoStage, instance);
    const auto problem = problemOf(instance);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    qInfo("%lld, bound %lld, known %lld, %lld, work %lld", static_cast<long long>(plan.value),
          static_cast<long long>(plan.bound), static_cast<long long>(instance.best),
          static_cast<long long>(instance.bound), static_cast<long long>(plan.work));
    QVERIFY(plan.feasibility.all());
    QVERIFY(plan.bound <= instance.best);
    QVERIFY(plan.value >= instance.bound);
    QVERIFY(plan.value <= instance.best);
    QVERIFY(plan.bound >= instance.bound);
}

void CuttingReferenceTest::severalSheets_data()
{
    QTest::addColumn<instances::SeveralSheets>("instance");
    for (const instances::SeveralSheets& one : instances::severalSheets())
        QTest::addRow("%s", one.name.c_str()) << one;
}

/// Cost at most 1.0005 of the best known, bound at least 0.9999 of the best bound.
void CuttingReferenceTest::severalSheets()
{
    QFETCH(instances::SeveralSheets, instance);
    const auto problem = problemOf(instance);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    qInfo("%lld, bound %lld, known %lld, %lld", static_cast<long long>(plan.value),
          static_cast<long long>(plan.bound), static_cast<long long>(instance.best),
          static_cast<long long>(instance.bound));
    QVERIFY(plan.feasibility.all());
    QVERIFY(plan.bound <= instance.best);
    QVERIFY(plan.value >= instance.bound);
    QVERIFY(static_cast<double>(plan.value) <= 1.0005 * static_cast<double>(instance.best));
    QVERIFY(static_cast<double>(plan.bound) >= 0.9999 * static_cast<double>(instance.bound));
}

void CuttingReferenceTest::trimBatches_data()
{
    QTest::addColumn<instances::TrimBatch>("instance");
    constexpr int largest = 5'000;
    for (const instances::TrimBatch& one : instances::trimBatches())
        if (one.pieces <= largest)
            QTest::addRow("%d %s", one.pieces, one.patterns == PatternClass::Exact ? "exact" : "non-exact")
                << one;
}

void CuttingReferenceTest::trimBatches()
{
    QFETCH(instances::TrimBatch, instance);
    const auto problem = instances::trimBatch(instance.pieces, instance.patterns, StockKind::Sheet);
    QVERIFY(problem.has_value());
    const Plan plan = solve(*problem, searching());
    QVERIFY(plan.feasibility.all());
    QCOMPARE(plan.value, instance.best);
    QCOMPARE(plan.bound, instance.bound);
}

QTEST_APPLESS_MAIN(CuttingReferenceTest)
#include "tst_cutting_reference.moc"
