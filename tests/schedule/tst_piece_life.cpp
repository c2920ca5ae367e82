// Guards: no piece is made, loaded or received that was not there before, and every event leaves the pieces
// that were ordered accounted for.
#include "schedule/piece_life.h"

#include <QtTest>

#include <numeric>
#include <random>

using namespace lapwright::schedule;
using Kind = PieceEvent::Kind;

class PieceLifeTest : public QObject {
    Q_OBJECT
private slots:
    void aPieceGoesThroughTheShop()
    {
        PieceCounts counts;
        const std::array<PieceEvent, 6> day = {PieceEvent{Kind::Order, PieceState::Ordered, 3},
                                               PieceEvent{Kind::Advance, PieceState::Cut, 3},
                                               PieceEvent{Kind::Advance, PieceState::Folded, 3},
                                               PieceEvent{Kind::Advance, PieceState::Bundled, 3},
                                               PieceEvent{Kind::Advance, PieceState::Loaded, 3},
                                               PieceEvent{Kind::Advance, PieceState::Received, 2}};
        for (const PieceEvent& event : day)
            counts = after(counts, event).value();
        QCOMPARE(counts.of(PieceState::Received), 2);
        QCOMPARE(counts.of(PieceState::Loaded), 1);
        counts = after(counts, {Kind::Advance, PieceState::Short, 1}).value();
        QCOMPARE(counts.awaitingRemake(), 1);
        counts = after(counts, {Kind::Remake, PieceState::Ordered, 1}).value();
        QCOMPARE(counts.awaitingRemake(), 0);
        QCOMPARE(counts.of(PieceState::Ordered), 1);
    }
    void whatIsNotThereCannotMove()
    {
        PieceCounts counts = after({}, {Kind::Order, PieceState::Ordered, 1}).value();
        QVERIFY(!after(counts, {Kind::Advance, PieceState::Cut, 2}).ok());
        QVERIFY(!after(counts, {Kind::Advance, PieceState::Folded, 1}).ok());
        QVERIFY(!after(counts, {Kind::Remake, PieceState::Ordered, 1}).ok());
        QVERIFY(!after(counts, {Kind::Order, PieceState::Ordered, 0}).ok());
        QCOMPARE(after(counts, {Kind::Advance, PieceState::Cut, 2}).errors().front().sentence(),
                 std::string("found 1 ordered, expected at least 2"));
    }
    void aCrewLeadCorrectsWhatWasReceived()
    {
        PieceCounts counts;
        counts.of(PieceState::Received) = 3;
        counts = after(counts, {Kind::Advance, PieceState::Damaged, 2}).value();
        QCOMPARE(counts.of(PieceState::Received), 1);
        QCOMPARE(counts.of(PieceState::Damaged), 2);
        QVERIFY(!after(counts, {Kind::Advance, PieceState::Wrong, 2}).ok());
        // What is still on the truck goes first, then what was said to be received.
        counts.of(PieceState::Loaded) = 1;
        counts = after(counts, {Kind::Advance, PieceState::Short, 2}).value();
        QCOMPARE(counts.of(PieceState::Loaded), 0);
        QCOMPARE(counts.of(PieceState::Received), 0);
        QCOMPARE(counts.awaitingRemake(), 4);
    }
    void whatIsShortCannotBeReceivedAfterwards()
    {
        PieceCounts counts;
        counts.of(PieceState::Short) = 1;
        QVERIFY(!after(counts, {Kind::Advance, PieceState::Received, 1}).ok());
        QVERIFY(!after(counts, {Kind::Advance, PieceState::Ordered, 1}).ok());
    }
    void scrapIsOrderedAgain()
    {
        PieceCounts counts;
        counts.of(PieceState::Folded) = 2;
        counts = after(counts, {Kind::Scrap, PieceState::Folded, 1}).value();
        QCOMPARE(counts.of(PieceState::Folded), 1);
        QCOMPARE(counts.of(PieceState::Ordered), 1);
        for (const PieceState state : {PieceState::Ordered, PieceState::Loaded, PieceState::Received})
            QVERIFY(!after(counts, {Kind::Scrap, state, 1}).ok());
        QVERIFY(!after(counts, {Kind::Scrap, PieceState::Cut, 1}).ok());
    }
    void onlyFoldingIsDoneAgain()
    {
        PieceCounts counts;
        counts.of(PieceState::Folded) = 2;
        counts = after(counts, {Kind::Again, PieceState::Folded, 1}).value();
        QCOMPARE(counts.of(PieceState::Folded), 1);
        QCOMPARE(counts.of(PieceState::Cut), 1);
        QVERIFY(!after(counts, {Kind::Again, PieceState::Folded, 2}).ok());
        QVERIFY(!after(counts, {Kind::Again, PieceState::Cut, 1}).ok());
        QCOMPARE(pieceEventKind(name(Kind::Again)).value(), Kind::Again);
    }
    void everyStateHasItsWord()
    {
        for (std::size_t state = 0; state < pieceStates; ++state) {
            const std::string_view word = name(static_cast<PieceState>(state));
            QVERIFY(pieceState(word).value() == static_cast<PieceState>(state));
        }
        QCOMPARE(pieceState("lost").errors().front().found, std::string("lost"));
    }
    void randomEventsKeepTheCount()
    {
        std::mt19937 random(20261125);
        int taken = 0;
        for (int day = 0; day < 2000; ++day) {
            PieceCounts counts;
            std::int64_t ordered = 0;
            for (int step = 0; step < 40; ++step) {
                const PieceEvent event{static_cast<Kind>(random() % 6),
                                       static_cast<PieceState>(random() % pieceStates),
                                       static_cast<std::int64_t>(random() % 4)};
                const auto next = after(counts, event);
                if (!next.ok())
                    continue;
                ++taken;
                counts = *next;
                ordered += event.kind == Kind::Order || event.kind == Kind::Remake ? event.count : 0;
                ordered -= event.kind == Kind::Withdraw ? event.count : 0;
                QCOMPARE(std::accumulate(counts.in.begin(), counts.in.end(), std::int64_t{0}), ordered);
                for (const std::int64_t count : counts.in)
                    QVERIFY(count >= 0);
                QVERIFY(counts.awaitingRemake() >= 0);
            }
        }
        qInfo("%d random events taken", taken);
        QVERIFY(taken > 10'000);
    }
};

QTEST_APPLESS_MAIN(PieceLifeTest)
#include "tst_piece_life.moc"
