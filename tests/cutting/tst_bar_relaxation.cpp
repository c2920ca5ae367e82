// Guards: a relaxation that is given more bars than it would keep, before it was ever solved, keeps them.
#include "cutting/bar_relaxation.h"

#include <QtTest>

using namespace lapwright::cutting;

class BarRelaxationTest : public QObject {
    Q_OBJECT
private slots:
    void moreBarsThanABasisBeforeTheFirstSolution()
    {
        const BarProblem problem{10, {1}, {20}, 10};
        BarRelaxation relaxation(problem, [] { return false; });
        for (int pieces = 1; pieces <= 9; ++pieces)
            relaxation.add({{0, pieces}});
        const auto fewest = relaxation.fewest({20}, 100.0);
        QVERIFY(fewest.has_value());
        QVERIFY(std::abs(*fewest - 2.0) < 1e-6);
        // And again, now that a solution says which bars are of use.
        for (int pieces = 1; pieces <= 9; ++pieces)
            relaxation.add({{0, pieces}});
        QVERIFY(std::abs(relaxation.fewest({35}, 100.0).value_or(0.0) - 3.5) < 1e-6);
    }
};

QTEST_APPLESS_MAIN(BarRelaxationTest)
#include "tst_bar_relaxation.moc"
