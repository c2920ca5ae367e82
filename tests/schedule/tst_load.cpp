// Guards: every piece that is ready goes on the load exactly once, no bundle is over the weight limit unless
// it is a single piece, and what one person cannot carry is marked.
#include "schedule/load.h"

#include <QtTest>

#include <map>
#include <random>

using namespace lapwright;
using namespace lapwright::schedule;

class LoadTest : public QObject {
    Q_OBJECT
private slots:
    void heavyAndLongBundlesAreForTwo()
    {
        const site::Material material{"galvanised-steel", "24 ga", "slate"};
        // A 10 ft piece 24 in wide of 24 gauge galvanised sheet: 20 ft2 at 1.156 lb/ft2 = 23.1 lb
        // (arithmetic).
        const double each = 20.0 * 1.156 * 0.45359237;
        const auto bundles =
            bundle({{"order", "House", material, {"V1.1", 3, "V1", "P1", Length::feet(10)}, each}}, {});
        QCOMPARE(bundles.size(), 1U);
        QVERIFY(bundles.front().twoPeople);
        QVERIFY(!bundle({{"order", "House", material, {"V1.1", 2, "V1", "P1", Length::feet(10)}, each}}, {})
                     .front()
                     .twoPeople);
        QVERIFY(bundle({{"order", "House", material, {"V1.1", 1, "V1", "P1", Length::inches(121)}, 1.0}}, {})
                    .front()
                    .twoPeople);
    }
    void whatNestsGoesTogether()
    {
        const site::Material slate{"steel", "26 ga", "Slate"}, ivory{"steel", "26 ga", "Ivory"};
        const auto piece = [](const char* order, const site::Material& material, const char* mark,
                              const char* profile) {
            return ReadyPiece{order, "House", material, {mark, 2, "E1", profile, Length::feet(5)}, 1.0};
        };
        const std::vector<Bundle> bundles =
            bundle({piece("one", slate, "E1.1", "P1"), piece("one", slate, "E2.1", "P2"),
                    piece("one", slate, "E3.1", "P1"), piece("one", ivory, "E4.1", "P1"),
                    piece("two", slate, "E1.1", "P1")},
                   {});
        QCOMPARE(bundles.size(), std::size_t{4});
        std::vector<std::string> labels;
        for (const Bundle& one : bundles)
            labels.push_back(one.label);
        QCOMPARE(labels, (std::vector<std::string>{"B1", "B2", "B3", "B4"}));
        QCOMPARE(bundles[0].pieces.size(), std::size_t{2});
        QCOMPARE(bundles[0].pieces[1].mark, std::string("E3.1"));
        QCOMPARE(bundles[0].kilograms, 4.0);
        QVERIFY(!bundles[0].twoPeople);
        QVERIFY(bundles[2].material == ivory);
        QCOMPARE(bundles[3].order, std::string("two"));
        QVERIFY(bundle({}, {}).empty());
    }
    void marksThatFollowOneAnotherAreOneRange()
    {
        Bundle bundle;
        for (const auto& [mark, count] : std::vector<std::pair<std::string, std::int64_t>>{{"E1.9", 1},
                                                                                           {"E1.10", 1},
                                                                                           {"E1.11", 2},
                                                                                           {"E1.13", 2},
                                                                                           {"E2.14", 2},
                                                                                           {"X", 1},
                                                                                           {"X.", 1},
                                                                                           {"X.1", 1}})
            bundle.pieces.push_back({mark, count, "E1", "P1", Length::feet(5)});
        const std::vector<MarkRange> ranges = markRanges(bundle);
        const std::vector<MarkRange> expected{
            {"E1.9", "E1.10", 1}, {"E1.11", "E1.11", 2}, {"E1.13", "E1.13", 2}, {"E2.14", "E2.14", 2},
            {"X", "X", 1},        {"X.", "X.", 1},       {"X.1", "X.1", 1}};
        QVERIFY(ranges == expected);
        QVERIFY(markRanges({}).empty());
    }
    void aFullBundleIsFollowedByAnother()
    {
        BundleLimits limits;
        limits.mostKilograms = 10.0;
        const auto bundles = bundle({{"one", "House", {}, {"E1.1", 7, "E1", "P1", Length::feet(5)}, 3.0},
                                     {"one", "House", {}, {"E1.2", 1, "E1", "P1", Length::feet(5)}, 12.0}},
                                    limits);
        std::vector<double> kilograms;
        for (const Bundle& one : bundles)
            kilograms.push_back(one.kilograms);
        QCOMPARE(kilograms, (std::vector<double>{9.0, 9.0, 3.0, 12.0}));
    }
    void aPieceWithoutMassIsStillLoaded()
    {
        const auto bundles =
            bundle({{"one", "House", {}, {"E1.1", 50, "E1", "P1", Length::feet(5)}, 0.0}}, {});
        QCOMPARE(bundles.size(), std::size_t{1});
        QCOMPARE(bundles.front().pieces.front().count, std::int64_t{50});
    }
    void nothingIsLostOrDoubled()
    {
        std::mt19937 random(3);
        for (int trial = 0; trial < 500; ++trial) {
            std::vector<ReadyPiece> ready;
            std::map<std::string, std::int64_t> wanted;
            const auto marks = random() % 30;
            for (std::uint32_t mark = 0; mark < marks; ++mark) {
                const std::string name = std::to_string(mark);
                const auto count = static_cast<std::int64_t>(random() % 40 + 1);
                ready.push_back({std::to_string(random() % 2),
                                 "House",
                                 {"steel", "26 ga", std::to_string(random() % 2)},
                                 {name, count, "E1", std::to_string(random() % 3), Length::feet(9)},
                                 static_cast<double>(random() % 90)});
                wanted[name] = count;
            }
            std::map<std::string, std::int64_t> loaded;
            for (const Bundle& one : bundle(ready, {})) {
                std::int64_t pieces = 0;
                for (const LoadedPiece& piece : one.pieces) {
                    loaded[piece.mark] += piece.count;
                    pieces += piece.count;
                }
                QVERIFY(one.kilograms <= 60.0 || pieces == 1);
            }
            QCOMPARE(loaded, wanted);
        }
    }
};

QTEST_APPLESS_MAIN(LoadTest)
#include "tst_load.moc"
