// Guards: what a plan cuts leaves the stock and its remnants come back under labels of their own; no count or
// length ever falls below nothing, and what the book did not have is said; a person's count is one entry; an
// item is described anew without undoing what was cut meanwhile.
#include "schedule/stock_book.h"

#include <QtTest>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

const site::Material slate{"galvanised-steel", "24 ga", "Slate"};

cutting::Stock item(const char* key, cutting::StockKind kind, std::optional<std::int64_t> count)
{
    cutting::Stock stock;
    stock.key = key;
    stock.kind = kind;
    stock.width = Length::inches(48);
    stock.length = Length::feet(10);
    stock.count = count;
    return stock;
}

ShopStock rack()
{
    ShopStock stock;
    stock.items = {{slate, item("sheet", cutting::StockKind::Sheet, 5)},
                   {slate, item("coil", cutting::StockKind::Coil, 1)},
                   {slate, item("R1", cutting::StockKind::Remnant, 1)}};
    return stock;
}

cutting::Plan planOf(std::size_t stock, std::int64_t count, Length length)
{
    cutting::Plan plan;
    cutting::Pattern pattern;
    pattern.stock = stock;
    pattern.count = count;
    pattern.length = length;
    plan.patterns = {pattern};
    return plan;
}

std::vector<cutting::Stock> stocksOf(const ShopStock& stock)
{
    std::vector<cutting::Stock> stocks;
    for (const StockItem& one : stock.items)
        stocks.push_back(one.stock);
    return stocks;
}

} // namespace

class StockBookTest : public QObject {
    Q_OBJECT

private slots:
    void sheetsAndRemnantsLeaveAndOffcutsComeBack()
    {
        ShopStock stock = rack();
        const auto stocks = stocksOf(stock);
        cutting::Plan plan = planOf(0, 2, Length::feet(10));
        cutting::NewRemnant left;
        left.label = "R1"; // a label that is on the shelf already
        left.width = Length::inches(12);
        left.length = Length::feet(4);
        left.count = 1;
        plan.remnants = {left};
        const auto changes = consume(stock, {slate, stocks, plan});
        QCOMPARE(changes.size(), 2U);
        QCOMPARE(*stock.items[0].stock.count, std::int64_t{3});
        QCOMPARE(stock.items.back().stock.key, std::string("R1'"));
        const auto gone = planOf(2, 1, Length::feet(10));
        (void)consume(stock, {slate, stocks, gone});
        for (const StockItem& one : stock.items)
            QVERIFY(one.stock.key != "R1");
    }
    void nothingFallsBelowNothing()
    {
        ShopStock stock = rack();
        const auto stocks = stocksOf(stock);
        const auto sheets = planOf(0, 7, Length::feet(10));
        const auto changes = consume(stock, {slate, stocks, sheets});
        QCOMPARE(*stock.items[0].stock.count, std::int64_t{0});
        QCOMPARE(changes.back().kind, StockChange::Kind::Corrected);
        QCOMPARE(changes.back().count, std::int64_t{2});
        const auto coil = planOf(1, 3, Length::feet(4));
        const auto ofCoil = consume(stock, {slate, stocks, coil});
        QVERIFY(stock.items[1].stock.length == Length());
        QVERIFY(ofCoil.back().length == Length::feet(2));
    }
    void waitingPlansReserve()
    {
        const ShopStock stock = rack();
        const auto stocks = stocksOf(stock);
        std::map<std::string, Reserved> reserved;
        for (const auto& plan :
             {planOf(0, 2, Length::feet(10)), planOf(0, 1, Length::feet(10)), planOf(1, 3, Length::feet(2))})
            reserve(reserved, {slate, stocks, plan});
        QCOMPARE(reserved["sheet"].count, std::int64_t{3});
        QVERIFY(reserved["coil"].length == Length::feet(6));
    }
    void aPersonsCountIsOneEntry()
    {
        ShopStock stock = rack();
        const auto change = correct(stock, "sheet", 9, std::nullopt, "counted");
        QCOMPARE(change->count, std::int64_t{4});
        QCOMPARE(*stock.items[0].stock.count, std::int64_t{9});
        QVERIFY(correct(stock, "coil", std::nullopt, Length::feet(3), "measured")->length ==
                -Length::feet(7));
        QVERIFY(!correct(stock, "coil", 1, std::nullopt, "").ok());
        ShopStock endless = rack();
        const auto coil = std::find_if(endless.items.begin(), endless.items.end(),
                                       [](const StockItem& item) { return item.stock.key == "coil"; });
        coil->stock.count.reset();
        QVERIFY(correct(endless, "coil", std::nullopt, Length::feet(3), "measured").ok());
        QCOMPARE(coil->stock.count, std::optional<std::int64_t>(1));
        QVERIFY(!correct(stock, "coil", 0, Length::feet(3), "").ok());
        QVERIFY(!correct(stock, "sheet", -1, std::nullopt, "").ok());
        QVERIFY(!correct(stock, "sheet", std::nullopt, Length::feet(3), "").ok());
        QVERIFY(!correct(stock, "nothing", 1, std::nullopt, "").ok());
        QVERIFY(correct(stock, "R1", 0, std::nullopt, "scrapped").ok());
        QCOMPARE(stock.items.size(), 2U);
    }
    void whatIsPutOnTheRacksHasANameOfItsOwn()
    {
        ShopStock stock = rack();
        const auto given = put(stock, std::nullopt, {slate, item("rack 5", cutting::StockKind::Sheet, 12)});
        QCOMPARE(*given, (std::vector<StockChange>{{StockChange::Kind::Given, "rack 5", 12, Length(), ""}}));
        QCOMPARE(stock.items.size(), 4U);
        const auto coil = put(stock, std::nullopt, {slate, item("coil 2", cutting::StockKind::Coil, 1)});
        QCOMPARE(coil->front().length, Length::feet(10));
        QVERIFY(!put(stock, std::nullopt, {slate, item("coil", cutting::StockKind::Sheet, 1)}).ok());
        QVERIFY(!put(stock, stock.items[0], {slate, item("coil", cutting::StockKind::Sheet, 1)}).ok());
        QCOMPARE(stock.items.size(), 5U);
    }
    void anItemIsDescribedAnewInItsPlace()
    {
        ShopStock stock = rack();
        StockItem wider = stock.items[0];
        wider.stock.width = Length::inches(50);
        wider.stock.count = 7;
        const auto changes = put(stock, stock.items[0], wider);
        QCOMPARE(*changes, (std::vector<StockChange>{
                               {StockChange::Kind::Corrected, "sheet", 2, Length(), "described anew"}}));
        QVERIFY(stock.items[0] == wider);
        QVERIFY(put(stock, wider, wider)->empty());
        StockItem renamed = wider;
        renamed.stock.key = "rack 1";
        const auto moved = put(stock, wider, renamed);
        QCOMPARE(moved->size(), 2U);
        QCOMPARE(moved->front(), (StockChange{StockChange::Kind::Gone, "sheet", 7, Length(), ""}));
        QCOMPARE(moved->back(), (StockChange{StockChange::Kind::Given, "rack 1", 7, Length(), ""}));
        QVERIFY(stock.items[0] == renamed);
        QVERIFY(!put(stock, wider, wider).ok()); // there is no "sheet" any more
    }
    void whatWasCutMeanwhileIsNotPutBack()
    {
        ShopStock stock = rack();
        const StockItem seen = stock.items[0];
        QVERIFY(correct(stock, "sheet", 3, std::nullopt, "").ok());
        StockItem dearer = seen;
        dearer.stock.cost = 6100;
        QVERIFY(put(stock, seen, dearer).ok());
        QCOMPARE(*stock.items[0].stock.count, std::int64_t{3});
        QCOMPARE(*stock.items[0].stock.cost, std::int64_t{6100});
        // Two who say different things of one item: the second is asked to look again.
        StockItem wider = seen, counted = stock.items[0];
        wider.stock.width = Length::inches(50);
        QVERIFY(!put(stock, seen, wider).ok());
        counted.stock.count = 9;
        const StockItem opened = stock.items[0];
        QVERIFY(correct(stock, "sheet", 2, std::nullopt, "").ok());
        QVERIFY(!put(stock, opened, counted).ok());
        QCOMPARE(*stock.items[0].stock.count, std::int64_t{2});
    }
    void whatIsTakenOffTheRacksIsGoneWhole()
    {
        ShopStock stock = rack();
        QCOMPARE(*remove(stock, "coil"),
                 (StockChange{StockChange::Kind::Gone, "coil", 0, Length::feet(10), ""}));
        QCOMPARE(remove(stock, "sheet")->count, std::int64_t{5});
        QCOMPARE(stock.items.size(), 1U);
        QVERIFY(!remove(stock, "sheet").ok());
        QCOMPARE(std::string(name(StockChange::Kind::Given)), std::string("given"));
        QCOMPARE(std::string(name(StockChange::Kind::Gone)), std::string("gone"));
    }
};

QTEST_GUILESS_MAIN(StockBookTest)
#include "tst_stock_book.moc"
