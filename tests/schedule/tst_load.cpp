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
