// Guards: on cases small enough to try every plan, the search never claims less than the true least, its
// bound never passes it, and where it says proven the plan is as good as the best of all.
#include "cutting/checker.h"
#include "cutting/one_dimension.h"
#include "cutting/solve.h"

#include <QtTest>

#include <algorithm>
#include <map>
#include <random>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

/// Fewest bars by trying every item in every open bar and in a new one.
int fewestBars(const std::vector<int>& items, std::size_t at, std::vector<int>& room, int capacity, int best)
{
    if (static_cast<int>(room.size()) >= best)
        return best;
    if (at == items.size())
        return static_cast<int>(room.size());
    for (std::size_t bar = 0; bar < room.size(); ++bar) {
        if (room[bar] < items[at])
            continue;
        room[bar] -= items[at];
        best = std::min(best, fewestBars(items, at + 1, room, capacity, best));
        room[bar] += items[at];
    }
    room.push_back(capacity - items[at]);
    best = std::min(best, fewestBars(items, at + 1, room, capacity, best));
    room.pop_back();
    return best;
}

struct Piece {
    int girth, length;
};

struct OpenStrip {
    std::size_t sheet;
    int width, left;
};

/// Fewest sheets, pieces by descending girth: each goes into an open strip that takes it, a new strip of an
/// open sheet, or a new sheet. The first piece of a strip is its widest, so this tries every two-stage plan.
class EveryPlan {
public:
    EveryPlan(std::vector<Piece> pieces, int width, int length, bool exact)
        : pieces_(std::move(pieces)), width_(width), length_(length), exact_(exact)
    {
        std::ranges::sort(pieces_,
                          [](const Piece& left, const Piece& right) { return left.girth > right.girth; });
        best_ = static_cast<int>(pieces_.size());
        tryFrom(0);
    }
    [[nodiscard]] int fewest() const { return best_; }

private:
    void tryFrom(std::size_t at)
    {
        if (static_cast<int>(sheets_.size()) >= best_)
            return;
        if (at == pieces_.size()) {
            best_ = static_cast<int>(sheets_.size());
            return;
        }
        const Piece piece = pieces_[at];
        for (std::size_t index = 0; index < strips_.size(); ++index) {
            if (strips_[index].left < piece.length || (exact_ && strips_[index].width != piece.girth))
                continue;
            strips_[index].left -= piece.length;
            tryFrom(at + 1);
            strips_[index].left += piece.length;
        }
        for (std::size_t sheet = 0; sheet <= sheets_.size(); ++sheet) {
            const bool fresh = sheet == sheets_.size();
            if (fresh)
                sheets_.push_back(width_);
            if (sheets_[sheet] >= piece.girth) {
                sheets_[sheet] -= piece.girth;
                strips_.push_back({sheet, piece.girth, length_ - piece.length});
                tryFrom(at + 1);
                strips_.pop_back();
                sheets_[sheet] += piece.girth;
            }
            if (fresh) {
                sheets_.pop_back();
                break;
            }
        }
    }

    std::vector<Piece> pieces_;
    int width_, length_;
    bool exact_;
    int best_ = 0;
    std::vector<int> sheets_;
    std::vector<OpenStrip> strips_;
};

int scaled(int cases)
{
    return qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? cases * 10 : cases;
}

} // namespace

class CuttingSmallTest : public QObject {
    Q_OBJECT
private slots:
    void barsAgainstEveryPlan();
    void sheetsAgainstEveryPlan();
    void tripletsFillEveryBar();
    void textbookRoll();
};

void CuttingSmallTest::barsAgainstEveryPlan()
{
    std::mt19937 random(3);
    const int cases = scaled(600);
    int met = 0;
    for (int round = 0; round < cases; ++round) {
        BarProblem problem;
        problem.capacity = 10 + static_cast<int>(random() % 30);
        problem.mostPieces = problem.capacity;
        std::map<int, int> counts;
        for (unsigned item = 0; item < 3 + random() % 6; ++item)
            ++counts[1 + static_cast<int>(random() % static_cast<unsigned>(problem.capacity))];
        std::vector<int> items;
        for (const auto& [size, count] : counts) {
            problem.sizes.push_back(size);
            problem.demands.push_back(count);
            items.insert(items.end(), static_cast<std::size_t>(count), size);
        }
        std::ranges::reverse(items);
        std::vector<int> room;
        const int least = fewestBars(items, 0, room, problem.capacity, static_cast<int>(items.size()) + 1);
        const BarPlan plan = cutBars(problem, {});
        QVERIFY(plan.bound <= least);
        QVERIFY(plan.bars >= least);
        met += plan.bars == least ? 1 : 0;
    }
    QCOMPARE(met, cases);
    qInfo("%d bar cases", cases);
}

void CuttingSmallTest::sheetsAgainstEveryPlan()
{
    std::mt19937 random(5);
    const int cases = scaled(150);
    int met = 0, proven = 0;
    for (int round = 0; round < cases; ++round) {
        const bool exact = random() % 2 == 0;
        const bool lengthsFirst = random() % 2 == 0;
        const int width = 6 + static_cast<int>(random() % 10), length = 6 + static_cast<int>(random() % 12);
        ProblemBuilder builder;
        ShopRules rules;
        rules.patterns = exact ? PatternClass::Exact : PatternClass::NonExact;
        rules.order = lengthsFirst ? CutOrder::LengthsFirst : CutOrder::StripsFirst;
        builder.rules(rules);
        builder.stock({"sheet", StockKind::Sheet, Length::inches(width), Length::inches(length), std::nullopt,
                       std::nullopt, std::nullopt});
        std::vector<Piece> pieces;
        for (unsigned index = 0; index < 3 + random() % 4; ++index) {
            const int girth = 1 + static_cast<int>(random() % static_cast<unsigned>(width));
            const int along = 1 + static_cast<int>(random() % static_cast<unsigned>(length));
            pieces.push_back(lengthsFirst ? Piece{along, girth} : Piece{girth, along});
            builder.blank(
                {std::to_string(index), Length::inches(girth), Length::inches(along), 1, false, 0, 0});
        }
        const auto problem = builder.build();
        QVERIFY(problem.ok());
        const int least =
            EveryPlan(pieces, lengthsFirst ? length : width, lengthsFirst ? width : length, exact).fewest();
        Settings settings;
        settings.workLimit = 60;
        const Plan plan = solve(*problem, settings);
        QVERIFY(plan.feasibility.all());
        QVERIFY(plan.bound <= least);
        QVERIFY(plan.value >= least);
        met += plan.value == least ? 1 : 0;
        proven += plan.proof == Proof::ProvenLeast ? 1 : 0;
    }
    qInfo("%d sheet cases, %d met, %d proven", cases, met, proven);
    QCOMPARE(met, cases);
}

/// The recipe of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2
/// (1996): bars of 1000; one item of 380 to 490, a second so that both leave 250 to 370 or so, the third
/// fills the bar.
void CuttingSmallTest::tripletsFillEveryBar()
{
    std::mt19937 random(9);
    for (const int bars : {20, 40, 83, 167}) {
        std::map<int, int> counts;
        for (int bar = 0; bar < bars; ++bar) {
            const int first = 380 + static_cast<int>(random() % 111);
            const int second =
                250 + static_cast<int>(random() % static_cast<unsigned>((1'000 - first) / 2 - 249));
            ++counts[first];
            ++counts[second];
            ++counts[1'000 - first - second];
        }
        BarProblem problem;
        problem.capacity = problem.mostPieces = 1'000;
        for (const auto& [size, count] : counts) {
            problem.sizes.push_back(size);
            problem.demands.push_back(count);
        }
        BarSearch search;
        search.attempts = 20;
        const BarPlan plan = cutBars(problem, search);
        QCOMPARE(plan.bound, bars);
        QVERIFY2(plan.bars == bars, std::to_string(plan.bars).c_str());
    }
}

/// The paper-roll example of the encyclopaedia article "Cutting stock problem" (en.wikipedia.org): 13 widths
/// from a 5600 mm master roll need 73 rolls.
void CuttingSmallTest::textbookRoll()
{
    BarProblem problem;
    problem.capacity = problem.mostPieces = 5'600;
    problem.sizes = {1'380, 1'520, 1'560, 1'710, 1'820, 1'880, 1'930,
                     2'000, 2'050, 2'100, 2'140, 2'150, 2'200};
    problem.demands = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    const BarPlan plan = cutBars(problem, {});
    QCOMPARE(plan.bars, 73);
    QCOMPARE(plan.bound, 73);
}

QTEST_APPLESS_MAIN(CuttingSmallTest)
#include "tst_cutting_small.moc"
