// Guards: every kind of run and end has one name in files, read back as the same kind, and asks for what its
// trim needs.
#include "site/run_kind.h"

#include <QtTest>

#include <set>

using namespace lapwright;
using namespace lapwright::site;

class RunKindTest : public QObject {
    Q_OBJECT
private slots:
    void namesReadBack()
    {
        std::set<std::string_view> names;
        for (const RunKind kind : allRunKinds) {
            QVERIFY(!nameOf(kind).empty());
            QVERIFY(runKindNamed(nameOf(kind)) == kind);
            names.insert(nameOf(kind));
        }
        QCOMPARE(names.size(), allRunKinds.size());
        for (const EndKind kind : allEndKinds)
            QVERIFY(endKindNamed(nameOf(kind)) == kind);
        QVERIFY(!runKindNamed("Eave"));
        QVERIFY(!runKindNamed(""));
        QVERIFY(!endKindNamed("mitred"));
        QVERIFY(wordsFor(RunKind::SlopeChange) == "slope change");
        QVERIFY(nameOf(RunKind::OutsideCorner) == "outside_corner");
    }
    void onlySlopedRunsFollowTheSlope()
    {
        const std::set<RunKind> sloped{RunKind::Rake, RunKind::Hip, RunKind::Valley, RunKind::Sidewall};
        const std::set<RunKind> upright{RunKind::OutsideCorner, RunKind::InsideCorner, RunKind::OpeningJamb};
        for (const RunKind kind : allRunKinds) {
            QCOMPARE(lieOf(kind) == Lie::Sloped, sloped.contains(kind));
            QCOMPARE(lieOf(kind) == Lie::Upright, upright.contains(kind));
        }
    }
    void creasesAskForTwoSlopes()
    {
        for (const RunKind kind : allRunKinds)
            QVERIFY(!asksForOtherSlope(kind) || asksForSlope(kind));
        QVERIFY(asksForOtherSlope(RunKind::Ridge));
        QVERIFY(!asksForOtherSlope(RunKind::Eave));
        QVERIFY(!asksForSlope(RunKind::Fascia));
        QVERIFY(squarePlanCorner(RunKind::Valley).value() > halfTurn);
        QVERIFY(squarePlanCorner(RunKind::Hip).value() < halfTurn);
        QVERIFY(!asksForPlanCorner(RunKind::Eave));
    }
};

QTEST_APPLESS_MAIN(RunKindTest)
#include "tst_run_kind.moc"
