// Guards: every open piece is in one batch or held; a batch knows its due date, priority and orders, and
// where a shop asks for it its coil width; cut plans and fold plans become tasks with the right pieces, times
// and setups, and what no machine can make is named.
#include "schedule/batch.h"
#include "schedule/record.h"
#include "schedule/solve.h"
#include "schedule/work.h"

#include <QtTest>

#include <map>
#include <random>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

const site::Material slate{"galvanised-steel", "24 ga", "Slate"};
const site::Material bone{"galvanised-steel", "24 ga", "Bone"};

OpenPiece piece(const char* order, const char* mark, const site::Material& material, std::int64_t count,
                std::optional<Date> wanted = {}, int priority = 0)
{
    return {order,
            std::string("House ") + order,
            mark,
            material,
            Length::inches(8),
            Length::feet(10),
            count,
            wanted,
            priority,
            false};
}

StockItem coil(const char* key, std::int64_t inches)
{
    return {slate, {key, cutting::StockKind::Coil, Length::inches(inches), Length::feet(300), {}, {}, {}}};
}

/// Two sheets alike, each slit into two strips of two blanks: 4 blanks of E1 and 4 of E2.
PlannedCut twoSheets()
{
    PlannedCut cut;
    cut.plan = "plan";
    cut.material = slate;
    cut.blanks = {{"one/E1.1", Length::inches(8), Length::feet(5), 4, false, 0, 0},
                  {"two/E2.1", Length::inches(6), Length::feet(5), 4, false, 0, 0}};
    cut.stocks = {{"S-48", cutting::StockKind::Sheet, Length::inches(48), Length::feet(10), {}, {}, {}}};
    cutting::Pattern pattern;
    pattern.length = Length::feet(10);
    pattern.count = 2;
    pattern.strips = {{Length(), Length::inches(8), {{0, 2, false}}, Length()},
                      {Length::inches(8), Length::inches(8), {{1, 2, false}}, Length()}};
    cut.patterns = {pattern};
    return cut;
}

LotWork lot(const char* order, const char* mark)
{
    return {order, "P1", std::string(order) + " P1", {mark}, 0, {{"long-folder", "200u900", "", 40'000}}};
}

std::string firstCode(const rules::Findings& findings)
{
    return findings.empty() ? std::string() : findings.front().code;
}

} // namespace

class ShopWorkTest : public QObject {
    Q_OBJECT
private slots:
    void batchesByMaterialWithWhatTheyServe()
    {
        const Date soon{2026, 12, 1}, later{2026, 12, 8};
        OpenPiece held = piece("three", "H1", slate, 9, soon);
        held.held = true;
        const Batches batches =
            batchesOf({piece("one", "E1.1", slate, 3, later), piece("two", "E1.1", bone, 2, soon),
                       piece("two", "E2.1", slate, 4, soon, 2), piece("four", "R1", slate, 1), held},
                      {});
        QCOMPARE(batches.batches.size(), std::size_t{2});
        // Both due on 1 December; the batch with the higher priority first.
        const Batch& first = batches.batches.front();
        QVERIFY(first.material == slate && batches.batches.back().material == bone);
        QVERIFY(first.due == soon && first.priority == 2);
        QCOMPARE(first.pieces, std::int64_t{8});
        std::vector<int> classes;
        for (const BatchLine& line : first.lines)
            classes.push_back(line.dueClass);
        QCOMPARE(classes, (std::vector<int>{1, 0, 2}));
        std::vector<std::string> orders;
        for (const ServedOrder& served : first.orders)
            orders.push_back(served.order);
        QCOMPARE(orders, (std::vector<std::string>{"two", "one", "four"}));
        QCOMPARE(batches.held.size(), std::size_t{1});
    }
    void aCoilThatIsUsedUpIsNoStock()
    {
        ShopStock stock;
        cutting::Stock coil{"coil", cutting::StockKind::Coil, Length::inches(48), Length(), 1, {}, {}};
        cutting::Stock sheet{"sheet", cutting::StockKind::Sheet, Length::inches(48), Length::feet(10), {}, {},
                             {}};
        stock.items = {{slate, coil}, {slate, sheet}};
        const Batches batches = batchesOf({piece("one", "E1.1", slate, 3)}, stock, true);
        const auto from = stockFor(batches.batches.front(), stock);
        QCOMPARE(from.size(), std::size_t{1});
        QCOMPARE(from.front().key, std::string("sheet"));
    }
    void coilWidthsWhereTheyMatter()
    {
        ShopStock stock;
        stock.items = {coil("narrow", 10), coil("wide", 40)};
        OpenPiece wide = piece("one", "W1", slate, 1), tooWide = wide;
        wide.girth = Length::inches(20);
        tooWide.mark = "W2";
        tooWide.girth = Length::inches(50);
        const std::vector<OpenPiece> pieces{piece("one", "E1", slate, 1), wide, tooWide};
        QCOMPARE(batchesOf(pieces, stock).batches.size(), std::size_t{1});
        const Batches apart = batchesOf(pieces, stock, true);
        QCOMPARE(apart.batches.size(), std::size_t{2});
        QVERIFY(apart.batches[0].coilWidth == Length::inches(10));
        QVERIFY(apart.batches[1].coilWidth == Length::inches(40));
        QCOMPARE(apart.batches[1].lines.size(), std::size_t{2});
        stock.items.push_back(
            {slate, {"R1", cutting::StockKind::Remnant, Length::inches(30), Length::feet(9), 1, {}, {}}});
        QCOMPARE(stockFor(batchesOf(pieces, stock, true).batches[0], stock).size(), std::size_t{2});
        QCOMPARE(stockFor(batchesOf(pieces, stock, true).batches[1], stock).size(), std::size_t{1});
        // Sheets can take any girth: nothing is kept apart.
        stock.items.push_back(
            {slate, {"S", cutting::StockKind::Sheet, Length::inches(48), Length::feet(10), {}, {}, {}}});
        QCOMPARE(batchesOf(pieces, stock, true).batches.size(), std::size_t{1});
    }
    void nothingIsLostOrDoubled()
    {
        std::mt19937 random(6);
        ShopStock stock;
        stock.items = {coil("narrow", 10), coil("wide", 40)};
        for (int trial = 0; trial < 300; ++trial) {
            std::vector<OpenPiece> pieces;
            std::int64_t wanted = 0;
            for (auto left = random() % 20; left > 0; --left) {
                OpenPiece one =
                    piece(random() % 2 == 0 ? "one" : "two", "M", random() % 2 == 0 ? slate : bone,
                          static_cast<std::int64_t>(1 + random() % 9));
                one.girth = Length::inches(static_cast<std::int64_t>(1 + random() % 50));
                one.held = random() % 5 == 0;
                wanted += one.count;
                pieces.push_back(one);
            }
            std::int64_t found = 0;
            const Batches batches = batchesOf(pieces, stock, trial % 2 == 0);
            for (const Batch& batch : batches.batches) {
                std::int64_t lines = 0, served = 0;
                for (const BatchLine& line : batch.lines)
                    lines += line.piece.count;
                for (const ServedOrder& order : batch.orders)
                    served += order.pieces;
                QCOMPARE(lines, batch.pieces);
                QCOMPARE(served, batch.pieces);
                found += lines;
            }
            for (const OpenPiece& one : batches.held)
                found += one.count;
            QCOMPARE(found, wanted);
        }
    }
    void cuttingTimeByHand()
    {
        // Laid in 60 s, two slits of 15 s, four crosscuts of 12 s, and the two blanks of 6 in lie in a strip
        // of 8 in: trimmed by two more slits (arithmetic).
        QCOMPARE(cuttingTime(twoSheets().blanks, twoSheets().patterns.front(), usualRates()),
                 std::int64_t{1'000 * (60 + 4 * 15 + 4 * 12)});
    }
    void plansBecomeTasks()
    {
        Floor floor = usualFloor({{"long-folder", "Long folder"}});
        floor.machines[1].measured.foldPercent = 150;
        ShopWork work;
        work.cuts = {twoSheets()};
        work.lots = {lot("one", "E1.1"), lot("two", "E2.1")};
        work.lots[1].cutAlready = 3;
        work.orders = {{"one", "House one", Date{2026, 12, 1}, 0},
                       {"two", "House two", Date{2026, 12, 2}, 1}};
        const Moment begin = momentOf({2026, 11, 30}, Duration::hours(7));
        const auto assembly = assemble(work, floor, begin);
        QVERIFY(assembly.ok() && assembly->findings.empty() && assembly->problem);
        const Problem& problem = *assembly->problem;
        QCOMPARE(problem.tasks().size(), std::size_t{3});
        QCOMPARE(problem.tasks()[0].units, std::int64_t{2});
        QCOMPARE(problem.tasks()[1].units, std::int64_t{4});
        QCOMPARE(problem.tasks()[2].units, std::int64_t{7});
        // 40 s of handling, half as much again as measured, and 15 s to take up and lay aside.
        QCOMPARE(problem.tasks()[1].ways.front().millisecondsEach, std::int64_t{75'000});
        QVERIFY(problem.deliveries()[0].due == momentOf({2026, 12, 1}, Duration::hours(7)));
        QCOMPARE(problem.deliveries()[1].weight, std::int64_t{5});
        const Schedule schedule = solve(problem, {});
        QVERIFY(schedule.feasibility.all());
        QCOMPARE(schedule.lateDeliveries, std::int64_t{0});
        // One rack, one set of knives, one program for both: one setup of each.
        QCOMPARE(schedule.setups.fittings, std::int64_t{1});
        QCOMPARE(schedule.setups.settings, std::int64_t{2});
        const ScheduleRecord record = recordOf(problem, schedule, assembly->cuts);
        for (const RecordedTask& task : record.tasks)
            QCOMPARE(task.cut, task.order ? std::nullopt : std::optional(CutOf{"plan", 0}));
    }
    void theKnivesAreSaidAsTheyAreSet()
    {
        const auto knives = [](cutting::CutOrder order, std::vector<std::int64_t> inches) {
            ShopWork work;
            work.cuts = {twoSheets()};
            cutting::Pattern& pattern = work.cuts[0].patterns[0];
            pattern.order = order;
            pattern.strips.clear();
            for (const std::int64_t wide : inches)
                pattern.strips.push_back({Length(), Length::inches(wide), {{0, 1, false}}, Length()});
            const auto assembly = assemble(work, usualFloor({{"long-folder", "Long folder"}}),
                                           momentOf({2026, 11, 30}, Duration::hours(7)));
            return assembly->problem->tasks()[0].ways.front().ready.setting;
        };
        using cutting::CutOrder;
        QCOMPARE(knives(CutOrder::StripsFirst, {8}), std::string("1 strip of 203.2 mm"));
        QCOMPARE(knives(CutOrder::StripsFirst, {8, 8}), std::string("2 strips of 203.2 mm"));
        QCOMPARE(knives(CutOrder::StripsFirst, {8, 8, 10, 8}),
                 std::string("2 strips of 203.2 mm, 1 of 254 mm, 1 of 203.2 mm"));
        QCOMPARE(knives(CutOrder::LengthsFirst, {10, 10, 10}), std::string("3 lengths of 254 mm"));
    }
    void whatNoMachineMakesIsNamed()
    {
        Floor floor = usualFloor({{"long-folder", "Long folder"}});
        ShopWork work;
        work.cuts = {twoSheets()};
        work.lots = {lot("one", "E1.1"), lot("two", "E2.1")};
        work.lots[1].ways.clear();
        const Moment begin = momentOf({2026, 11, 30}, Duration::hours(7));
        QCOMPARE(firstCode(assemble(work, floor, begin)->findings), std::string("schedule.no_folder"));
        QVERIFY(assemble(work, floor, begin)->problem.has_value());
        floor.machines[0].longest = Length::feet(9);
        QCOMPARE(firstCode(assemble(work, floor, begin)->findings), std::string("schedule.no_cutter"));
        floor.machines.pop_back();
        QVERIFY(!assemble(work, floor, begin)->problem.has_value());
        QCOMPARE(firstCode(assemble({}, floor, begin, {{"gone", {}, {}, {}}})->findings),
                 std::string("schedule.pin.gone"));
    }
    void floorsThatCannotBeAreNamed()
    {
        Floor floor = usualFloor({{"long-folder", "Long folder"}});
        QVERIFY(faultsOf(floor).empty());
        floor.machines.push_back(floor.machines.back());
        floor.machines.back().model.clear();
        floor.rates.slit = Duration::seconds(-1);
        floor.latenessWeights.clear();
        std::vector<std::string> places;
        for (const Error& error : faultsOf(floor))
            places.push_back(error.place);
        QCOMPARE(places, (std::vector<std::string>{"/rates", "/machines/2/id", "/machines/2/model",
                                                   "/lateness_weights"}));
        QCOMPARE(latenessWeight(usualFloor({}), 7), std::int64_t{5});
    }
};

QTEST_APPLESS_MAIN(ShopWorkTest)
#include "tst_shop_work.moc"
