// Guards: every end condition adds to or takes from the measured length what it should, worked by hand.
#include "pieces/ends.h"

#include <QtTest>

using namespace lapwright::pieces;
using lapwright::Length;
using lapwright::site::EndKind;

namespace {

lapwright::trim::Installation installation()
{
    lapwright::trim::Installation how;
    how.mitreClearance = Length::sixtyFourths(4);
    how.wrapTab = Length::inches(1);
    how.closedEnd = Length::sixtyFourths(96);
    how.turnUp = Length::inches(4);
    return how;
}

} // namespace

class EndsTest : public QObject {
    Q_OBJECT
private slots:
    void eachEnd_data()
    {
        QTest::addColumn<int>("end");
        QTest::addColumn<int>("kind");
        QTest::addColumn<int>("sixtyFourths");
        const auto row = [](const char* name, EndKind end, PieceEnd::Kind kind, int sixtyFourths) {
            QTest::newRow(name) << static_cast<int>(end) << static_cast<int>(kind) << sixtyFourths;
        };
        row("free: as measured", EndKind::Free, PieceEnd::Kind::Square, 0);
        row("butt: 1/16 in clear", EndKind::Butt, PieceEnd::Kind::Butt, -4);
        row("wrap tab: 1 in", EndKind::WrapTab, PieceEnd::Kind::WrapTab, 64);
        row("closed: 1 1/2 in", EndKind::Closed, PieceEnd::Kind::Closed, 96);
        row("turn-up: 4 in", EndKind::TurnUp, PieceEnd::Kind::TurnUp, 256);
    }
    void eachEnd()
    {
        QFETCH(int, end);
        QFETCH(int, kind);
        QFETCH(int, sixtyFourths);
        const RunEnd made = endOf(static_cast<EndKind>(end), installation(), std::nullopt);
        QCOMPARE(made.end.kind, static_cast<PieceEnd::Kind>(kind));
        QCOMPARE(made.end.allowance, Length::sixtyFourths(sixtyFourths));
        QCOMPARE(made.alongLine, made.end.allowance);
        QVERIFY(made.findings.empty() && made.end.cut.empty());
    }
    void anOutsideMitreReachesItsLongestPoint()
    {
        // Square outside corner: a mould line 3 in out is 3 in longer, one 2 in back on the roof 2 in
        // shorter; 1/16 in clearance comes off each.
        const std::vector<Length> reach{-Length::inches(2), Length(), Length::inches(3)};
        const RunEnd made = endOf(EndKind::Mitre, installation(), reach);
        QVERIFY(made.findings.empty());
        QCOMPARE(made.end.kind, PieceEnd::Kind::Mitre);
        QCOMPARE(made.end.cut, (std::vector<Length>{Length::sixtyFourths(-132), Length::sixtyFourths(-4),
                                                    Length::sixtyFourths(188)}));
        QCOMPARE(made.end.allowance, Length::sixtyFourths(188));
        QCOMPARE(made.alongLine, Length::sixtyFourths(-4));
    }
    void anInsideMitreMayTakeAway()
    {
        const std::vector<Length> reach{-Length::inches(1), -Length::inches(3)};
        const RunEnd made = endOf(EndKind::Mitre, installation(), reach);
        QCOMPARE(made.end.allowance, Length::sixtyFourths(-68));
    }
    void aMitreWithoutACornerIsAFinding()
    {
        const RunEnd made = endOf(EndKind::Mitre, installation(), std::nullopt);
        QCOMPARE(made.findings.size(), std::size_t{1});
        QCOMPARE(made.findings.front().code, std::string("pieces.end.no_corner"));
        QCOMPARE(made.findings.front().weight, lapwright::rules::Weight::Blocks);
    }
    void aTrimWithoutTheMeasureIsAFinding()
    {
        for (const EndKind kind : {EndKind::WrapTab, EndKind::TurnUp}) {
            const RunEnd made = endOf(kind, {}, std::nullopt);
            QCOMPARE(made.findings.size(), std::size_t{1});
            QCOMPARE(made.findings.front().code, std::string("pieces.end.no_measure"));
            QCOMPARE(made.end.allowance, Length());
        }
        // A closed end without a measure is closed by a cap of its own.
        QVERIFY(endOf(EndKind::Closed, {}, std::nullopt).findings.empty());
    }
};

QTEST_APPLESS_MAIN(EndsTest)
#include "tst_ends.moc"
