// Guards: the guide for cutting stock lengths on site loses nothing and never cuts more than is there.
#include "pieces/site_cuts.h"

#include <QtTest>

#include <algorithm>
#include <functional>
#include <map>
#include <random>
#include <set>

using namespace lapwright::pieces;
using lapwright::Length;

namespace {

/// Least number of stock lengths by trying every placement. Only for a handful of cuts.
std::size_t fewestStocks(const std::vector<int>& cuts, int stock)
{
    std::size_t best = cuts.size();
    std::vector<int> used;
    const std::function<void(std::size_t)> place = [&](std::size_t at) {
        if (used.size() >= best && at < cuts.size())
            return;
        if (at == cuts.size()) {
            best = std::min(best, used.size());
            return;
        }
        for (std::size_t i = 0; i < used.size(); ++i)
            if (used[i] + cuts[at] <= stock) {
                used[i] += cuts[at];
                place(at + 1);
                used[i] -= cuts[at];
            }
        used.push_back(cuts[at]);
        place(at + 1);
        used.pop_back();
    };
    place(0);
    return best;
}

} // namespace

class SiteCutsTest : public QObject {
    Q_OBJECT
private slots:
    void anOffcutServesTheNextRun()
    {
        // 10 ft stock: 84 in leaves 36, which serves 30 and leaves 6; 70 in leaves 50, which serves 48.
        const auto cuts = cutFromStock({{"E1.1", Length::inches(30)},
                                        {"E2.1", Length::inches(84)},
                                        {"E3.1", Length::inches(70)},
                                        {"E4.1", Length::inches(48)}},
                                       Length::feet(10), 5);
        const std::vector<SiteCut> expected{{5, "E2.1", Length::inches(84), Length::inches(36)},
                                            {5, "E1.1", Length::inches(30), Length::inches(6)},
                                            {6, "E3.1", Length::inches(70), Length::inches(50)},
                                            {6, "E4.1", Length::inches(48), Length::inches(2)}};
        QCOMPARE(cuts, expected);
    }
    void nothingWantedCutsNothing() { QVERIFY(cutFromStock({}, Length::feet(10), 1).empty()); }
    void randomGuidesAddUp()
    {
        std::mt19937 random(77);
        std::size_t lines = 0, stocks = 0, atBest = 0, small = 0;
        for (int round = 0; round < 1'500; ++round) {
            const int stock = 120;
            const std::size_t count = round < 500 ? 1 + random() % 7 : 1 + random() % 60;
            std::vector<WantedCut> wanted;
            std::vector<int> lengths;
            for (std::size_t i = 0; i < count; ++i) {
                lengths.push_back(1 + static_cast<int>(random() % stock));
                wanted.push_back({"R." + std::to_string(i + 1), Length::inches(lengths.back())});
            }
            const auto cuts = cutFromStock(wanted, Length::inches(stock), 1);
            QCOMPARE(cuts.size(), count);
            std::map<std::int64_t, Length> left;
            std::set<std::string> marks;
            for (const SiteCut& cut : cuts) {
                const Length before = left.count(cut.stock) ? left[cut.stock] : Length::inches(stock);
                QCOMPARE(cut.left, before - cut.length);
                QVERIFY(cut.left >= Length());
                left[cut.stock] = cut.left;
                QVERIFY(marks.insert(cut.mark).second);
            }
            QCOMPARE(left.begin()->first, std::int64_t{1});
            QCOMPARE(left.rbegin()->first, static_cast<std::int64_t>(left.size()));
            if (round < 500) {
                const std::size_t fewest = fewestStocks(lengths, stock);
                QVERIFY(left.size() >= fewest);
                QVERIFY(left.size() <= fewest + 1);
                atBest += left.size() == fewest ? 1 : 0;
                ++small;
            }
            lines += cuts.size();
            stocks += left.size();
        }
        qInfo("%zu cuts from %zu stock lengths; %zu of %zu small guides use the fewest possible", lines,
              stocks, atBest, small);
        QVERIFY(atBest * 100 >= small * 95);
    }
};

QTEST_APPLESS_MAIN(SiteCutsTest)
#include "tst_site_cuts.moc"
