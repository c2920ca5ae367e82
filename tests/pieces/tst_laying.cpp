// Guards: pieces are laid so that each lap sheds water, hands follow the end they are laid from, and marks
// can be read back.
#include "pieces/laying.h"

#include <QtTest>

#include <set>

using namespace lapwright::pieces;
using lapwright::site::Chain;
using lapwright::site::RunKind;

namespace {

Chain chainOf(std::initializer_list<RunKind> kinds, bool closed = false)
{
    Chain chain;
    chain.closed = closed;
    for (const RunKind kind : kinds) {
        lapwright::site::Run run;
        run.kind = kind;
        chain.runs.push_back(run);
    }
    return chain;
}

} // namespace

class LayingTest : public QObject {
    Q_OBJECT
private slots:
    void gableRakesAreLaidFromTheirLowEnds()
    {
        // Around a gable house: eave, two rakes that meet at the peak, eave, two rakes.
        const Chain house = chainOf(
            {RunKind::Eave, RunKind::Rake, RunKind::Rake, RunKind::Eave, RunKind::Rake, RunKind::Rake}, true);
        QCOMPARE(layingOf(house, 1).from, LaidFrom::Start);
        QCOMPARE(layingOf(house, 2).from, LaidFrom::End);
        QCOMPARE(layingOf(house, 4).from, LaidFrom::Start);
        QCOMPARE(layingOf(house, 5).from, LaidFrom::End);
        // The rake that rises to the right is at the left of its gable.
        QCOMPARE(handOf(layingOf(house, 1).from), Hand::Left);
        QCOMPARE(handOf(layingOf(house, 2).from), Hand::Right);
    }
    void shedRoofRakesAreLaidFromTheEave()
    {
        const Chain shed = chainOf({RunKind::Eave, RunKind::Rake, RunKind::Ridge, RunKind::Rake}, true);
        QCOMPARE(layingOf(shed, 1).from, LaidFrom::Start);
        QCOMPARE(layingOf(shed, 3).from, LaidFrom::End);
    }
    void sidewallsRunDownFromTheHeadwall()
    {
        // Around a chimney in a slope: headwall apron below it, sidewalls up both sides.
        const Chain sides = chainOf({RunKind::Headwall, RunKind::Sidewall});
        QCOMPARE(layingOf(sides, 1).from, LaidFrom::End);
        QCOMPARE(layingOf(chainOf({RunKind::Eave, RunKind::Sidewall}), 1).from, LaidFrom::Start);
    }
    void wallCornersRiseToTheRoof()
    {
        const Chain corner = chainOf({RunKind::Eave, RunKind::OutsideCorner, RunKind::WallBase});
        QCOMPARE(layingOf(corner, 1).from, LaidFrom::End);
        QCOMPARE(layingOf(chainOf({RunKind::WallBase, RunKind::InsideCorner, RunKind::Parapet}), 1).from,
                 LaidFrom::Start);
        QCOMPARE(layingOf(chainOf({RunKind::Eave, RunKind::OutsideCorner}), 1).from, LaidFrom::End);
        QCOMPARE(
            layingOf(chainOf({RunKind::OpeningHead, RunKind::OpeningJamb, RunKind::OpeningSill}), 1).from,
            LaidFrom::End);
    }
    void aloneASlopingRunStartsLow_data()
    {
        QTest::addColumn<int>("kind");
        for (const RunKind kind : {RunKind::Rake, RunKind::Hip, RunKind::Valley, RunKind::Sidewall,
                                   RunKind::OutsideCorner, RunKind::InsideCorner, RunKind::OpeningJamb})
            QTest::addRow("kind %d", static_cast<int>(kind)) << static_cast<int>(kind);
    }
    void aloneASlopingRunStartsLow()
    {
        QFETCH(int, kind);
        const Laying laying = layingOf(chainOf({static_cast<RunKind>(kind)}), 0);
        QCOMPARE(laying.from, LaidFrom::Start);
        QVERIFY(laying.derivation.statement.text.find("low end") != std::string::npos);
    }
    void levelRunsAreLaidFromTheStart()
    {
        const Chain house = chainOf({RunKind::Eave, RunKind::Rake, RunKind::Rake}, true);
        const Laying laying = layingOf(house, 0);
        QCOMPARE(laying.from, LaidFrom::Start);
        QVERIFY(laying.derivation.statement.text.find("down-wind") != std::string::npos);
    }
    void lettersNeverRepeat()
    {
        QCOMPARE(trimLetter(0), std::string("a"));
        QCOMPARE(trimLetter(1), std::string("b"));
        QCOMPARE(trimLetter(25), std::string("z"));
        QCOMPARE(trimLetter(26), std::string("aa"));
        QCOMPARE(trimLetter(701), std::string("zz"));
        QCOMPARE(trimLetter(702), std::string("aaa"));
        std::set<std::string> seen;
        for (std::size_t i = 0; i < 2'000; ++i)
            QVERIFY(seen.insert(trimLetter(i)).second);
    }
    void aMarkIsPrefixPointOrdinal() { QCOMPARE(markOf("S1b", 4), std::string("S1b.4")); }
};

QTEST_APPLESS_MAIN(LayingTest)
#include "tst_laying.moc"
