// Guards: a run is divided into the least number of pieces whose lengths with laps sum exactly and stay
// within the limits, for every policy; and what cannot be divided is refused with the reason.
#include "pieces/split.h"

#include <QtTest>

#include <numeric>
#include <random>

using lapwright::Length;
using lapwright::pieces::split;
using lapwright::pieces::SplitOutcome;
using lapwright::pieces::SplitProblem;
using lapwright::site::PiecePolicy;
using Lengths = std::vector<Length>;

namespace {

constexpr PiecePolicy policies[] = {PiecePolicy::FullAndRemainder, PiecePolicy::EqualLengths,
                                    PiecePolicy::StockLengths};

Length sum(const Lengths& lengths)
{
    return std::accumulate(lengths.begin(), lengths.end(), Length());
}

QString codeOf(const SplitOutcome& outcome)
{
    const auto* finding = std::get_if<lapwright::rules::Finding>(&outcome);
    return finding ? QString::fromStdString(finding->code) : QString("split");
}

/// Whether any number of pieces, each of a whole number of nanometres in [m, M], covers L with laps o.
/// Tries every count; written from the words of the promise, not from the formula.
bool anySplitExists(std::int64_t length, std::int64_t limit, std::int64_t lap, std::int64_t shortest)
{
    for (std::int64_t count = 2; count <= length + 1; ++count) {
        std::int64_t least = 0, most = 0;
        for (std::int64_t i = 0; i < count; ++i) {
            least += std::max(shortest, std::max<std::int64_t>(lap, 0) + 1);
            most += limit;
        }
        const std::int64_t total = length + (count - 1) * lap;
        if (least <= total && total <= most && limit > lap)
            return true;
    }
    return false;
}

} // namespace

class SplitTest : public QObject {
    Q_OBJECT
private slots:
    void onePieceWithinTheLimit()
    {
        const SplitProblem problem{Length::inches(126), Length::inches(126), Length::inches(2),
                                   Length::inches(12), PiecePolicy::FullAndRemainder};
        QCOMPARE(std::get<Lengths>(split(problem)), Lengths{Length::inches(126)});
        // A short return between two corners is still one piece.
        SplitProblem shortReturn = problem;
        shortReturn.length = Length::inches(7);
        QCOMPARE(std::get<Lengths>(split(shortReturn)), Lengths{Length::inches(7)});
    }
    void fullLengthsAndTheRest()
    {
        // 30 ft in pieces of 10 ft with 2 in laps, by hand: 120 + 120 + 120 + rest, 3 laps: 360 + 6 = 366.
        const SplitProblem problem{Length::feet(30), Length::feet(10), Length::inches(2), Length::inches(3),
                                   PiecePolicy::FullAndRemainder};
        QCOMPARE(std::get<Lengths>(split(problem)),
                 (Lengths{Length::feet(10), Length::feet(10), Length::feet(10), Length::inches(6)}));
    }
    void lastTwoShareIfTheRestIsTooShort()
    {
        const SplitProblem problem{Length::feet(30), Length::feet(10), Length::inches(2), Length::inches(12),
                                   PiecePolicy::FullAndRemainder};
        QCOMPARE(std::get<Lengths>(split(problem)),
                 (Lengths{Length::feet(10), Length::feet(10), Length::inches(63), Length::inches(63)}));
    }
    void moreThanTwoShareIfItTakesMore()
    {
        // 366 in over four pieces of 85 to 120 in: two sharing 126 in would have 63, three sharing 246 in 82,
        // so all four share.
        const SplitProblem problem{Length::feet(30), Length::feet(10), Length::inches(2), Length::inches(85),
                                   PiecePolicy::FullAndRemainder};
        const Lengths all(4, Length::sixtyFourths(366 * 16));
        QCOMPARE(std::get<Lengths>(split(problem)), all);
    }
    void equalLengthsDifferOnlyInTheLast()
    {
        // 25 ft 1/8 in: 300 1/8 + 2 × 2 = 304 1/8 in over three pieces: 101 3/8 in each.
        const SplitProblem even{Length::sixtyFourths(300 * 64 + 8), Length::feet(10), Length::inches(2),
                                Length::inches(12), PiecePolicy::EqualLengths};
        QCOMPARE(std::get<Lengths>(split(even)), Lengths(3, Length::sixtyFourths(101 * 64 + 24)));
        // 25 ft: 304 in over three: 101 5/16 twice, 101 3/8 last.
        SplitProblem uneven = even;
        uneven.length = Length::feet(25);
        QCOMPARE(std::get<Lengths>(split(uneven)),
                 (Lengths{Length::sixtyFourths(101 * 64 + 20), Length::sixtyFourths(101 * 64 + 20),
                          Length::sixtyFourths(101 * 64 + 24)}));
    }
    void openJointsAreNegativeLaps()
    {
        // UFGS 07600 3.1.15: gravel stop with open joints of 1/4 in. 30 ft less two joints is 359 1/2 in.
        const SplitProblem problem{Length::feet(30), Length::feet(10), -Length::sixtyFourths(16),
                                   Length::inches(12), PiecePolicy::FullAndRemainder};
        QCOMPARE(std::get<Lengths>(split(problem)),
                 (Lengths{Length::feet(10), Length::feet(10), Length::sixtyFourths(119 * 64 + 32)}));
    }
    void whatCannotBeDividedSaysWhy_data()
    {
        QTest::addColumn<int>("length");
        QTest::addColumn<int>("limit");
        QTest::addColumn<int>("lap");
        QTest::addColumn<int>("shortest");
        QTest::addColumn<QString>("code");
        QTest::newRow("nothing left") << 0 << 120 << 2 << 12 << "pieces.split.length";
        QTest::newRow("ends take more than there is") << -3 << 120 << 2 << 12 << "pieces.split.length";
        QTest::newRow("no limit") << 100 << 0 << 2 << 12 << "pieces.split.limit";
        QTest::newRow("lap as long as the piece") << 130 << 120 << 120 << 12 << "pieces.split.lap";
        QTest::newRow("shortest over half of a little too long")
            << 121 << 120 << 2 << 70 << "pieces.split.shortest";
        QTest::newRow("shortest over the limit") << 1'000 << 120 << 2 << 121 << "pieces.split.shortest";
        QTest::newRow("a run of a thousand miles") << 63'360'000 << 120 << 2 << 12 << "pieces.split.count";
    }
    void whatCannotBeDividedSaysWhy()
    {
        QFETCH(int, length);
        QFETCH(int, limit);
        QFETCH(int, lap);
        QFETCH(int, shortest);
        QFETCH(QString, code);
        for (const PiecePolicy policy : policies) {
            const SplitOutcome outcome = split({Length::inches(length), Length::inches(limit),
                                                Length::inches(lap), Length::inches(shortest), policy});
            QCOMPARE(codeOf(outcome), code);
            const auto& finding = std::get<lapwright::rules::Finding>(outcome);
            QCOMPARE(finding.weight, lapwright::rules::Weight::Blocks);
            QVERIFY(!finding.statement.text.empty() && !finding.remedy.text.empty());
        }
    }
    void smallSplitsAgreeWithTryingThemAll()
    {
        int divided = 0, refused = 0;
        for (std::int64_t length = 2; length <= 24; ++length)
            for (std::int64_t limit = 1; limit < length; ++limit)
                for (std::int64_t lap = -2; lap <= limit; ++lap)
                    for (std::int64_t shortest = 1; shortest <= limit + 1; ++shortest)
                        for (const PiecePolicy policy : policies) {
                            const SplitOutcome outcome =
                                split({Length::nanometres(length), Length::nanometres(limit),
                                       Length::nanometres(lap), Length::nanometres(shortest), policy});
                            const bool possible = anySplitExists(length, limit, lap, shortest);
                            QCOMPARE(std::holds_alternative<Lengths>(outcome), possible);
                            ++(possible ? divided : refused);
                            if (!possible)
                                continue;
                            const Lengths& lengths = std::get<Lengths>(outcome);
                            // One piece fewer would not reach.
                            const auto fewer = static_cast<std::int64_t>(lengths.size()) - 1;
                            QVERIFY(fewer * limit - (fewer - 1) * lap < length);
                        }
        qInfo("%d small problems divided, %d refused", divided, refused);
        QVERIFY(divided > 1'000 && refused > 1'000);
    }
    void randomSplitsKeepEveryPromise()
    {
        std::mt19937_64 random(20'260'601);
        const auto between = [&](std::int64_t low, std::int64_t high) {
            return std::uniform_int_distribution<std::int64_t>(low, high)(random);
        };
        int divided = 0;
        for (int round = 0; round < 30'000; ++round) {
            const bool metric = between(0, 1) == 1;
            const Length unit = metric ? Length::micrometres(100) : Length::sixtyFourths(1);
            const Length limit = unit * between(2'000, 30'000);
            const SplitProblem problem{unit * between(1, 300'000), limit, unit * between(-20, 600),
                                       unit * between(1, 12'000),
                                       policies[static_cast<std::size_t>(between(0, 2))]};
            const SplitOutcome outcome = split(problem);
            const auto* lengths = std::get_if<Lengths>(&outcome);
            if (!lengths)
                continue;
            ++divided;
            const auto count = static_cast<std::int64_t>(lengths->size());
            QCOMPARE(sum(*lengths), problem.length + problem.lap * (count - 1));
            for (const Length length : *lengths) {
                QVERIFY(length <= problem.limit);
                QVERIFY(count == 1 || (length >= problem.shortest && length > problem.lap));
            }
        }
        qInfo("%d of 30000 random problems divided", divided);
        QVERIFY(divided > 20'000);
    }
};

QTEST_APPLESS_MAIN(SplitTest)
#include "tst_split.moc"
