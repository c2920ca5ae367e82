// Guards: cutting problems and plans, stock, loads and receipts come back from their files as they went in;
// what they refer to and is not there, or name twice, is refused with its place; a plan from a file is
// checked again.
#include "cutting/checker.h"
#include "cutting/solve.h"
#include "document_texts.h"
#include "documents/cut.h"
#include "documents/rates.h"
#include "documents/shop.h"
#include "unknown_members.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

Json caseJson(const char* file)
{
    return Json::parse(texts::ofCase(file));
}

template <class Document>
std::string firstError(const Result<Document>& document)
{
    return document ? "no error" : document.errors().front().sentence();
}

/// A plan with strips, a remnant and blanks that the stock does not suffice for.
Document<CutPlan> planned()
{
    Json problem = caseJson("two-girths.cut-problem.json");
    problem["stocks"][0]["count"] = 1;
    problem["blanks"][0]["count"] = 40;
    const CutProblem wanted = readCutProblem(problem.dump())->value;
    const cutting::Admission admission = admit(wanted);
    cutting::Settings settings;
    settings.workLimit = 200;
    return {{writtenDown(*admission.problem), cutting::solve(*admission.problem, settings)}, {}};
}

} // namespace

class ShopDocumentsTest : public QObject {
    Q_OBJECT
private slots:
    void ratesSayWhatTheyMean()
    {
        const auto rates = readRates(texts::ofCase("shop.rates.json"));
        QVERIFY2(rates.ok(), firstError(rates).c_str());
        QCOMPARE(rates->value.materials.size(), std::size_t{3});
        QCOMPARE(rates->value.labour, (schedule::LabourTimes{1200, 390, 45, 15}));
        QVERIFY(!rates->value.materials[0].colour && rates->value.materials[1].colour == "Bone");
        Json twice = caseJson("shop.rates.json");
        twice["materials"][1].erase("colour");
        QVERIFY(firstError(readRates(twice.dump())).find("/materials/1") == 0);
        Json both = caseJson("shop.rates.json");
        both["materials"][0]["cents_per_square_metre"] = 10;
        QVERIFY(firstError(readRates(both.dump())).find("either") != std::string::npos);
        Json none = caseJson("shop.rates.json");
        none["materials"][2].erase("cents_per_square_metre");
        QVERIFY(firstError(readRates(none.dump())).find("no rate") != std::string::npos);
    }
    void aPlanComesBackAndHolds()
    {
        const Document<CutPlan> plan = planned();
        QVERIFY(!plan.value.plan.patterns.empty() && !plan.value.plan.notCut.empty());
        for (const Layout layout : {Layout::Canonical, Layout::Readable}) {
            const std::string text = writeCutPlan(plan, layout);
            const auto again = readCutPlan(text);
            QVERIFY2(again.ok(), firstError(again).c_str());
            QVERIFY(again->value.problem == plan.value.problem);
            QVERIFY(again->value.plan.patterns == plan.value.plan.patterns);
            QVERIFY(again->value.plan.certificate == plan.value.plan.certificate);
            QCOMPARE(writeCutPlan(*again, layout), text);
            const cutting::Admission admission = admit(again->value.problem);
            QVERIFY(admission.problem.has_value() && admission.refusals.empty());
            QVERIFY(cutting::check(*admission.problem, again->value.plan).feasibility.cuttable());
        }
    }
    void aPlanKeepsUnknownMembers()
    {
        Json json = Json::parse(writeCutPlan(planned()));
        int serial = 0;
        QVERIFY(unknown::add(json, serial) > 10);
        const auto plan = readCutPlan(json.dump());
        QVERIFY2(plan.ok(), firstError(plan).c_str());
        QVERIFY(unknown::contains(Json::parse(writeCutPlan(*plan)), json));
    }
    void aForgedPlanIsSeenThrough()
    {
        Json json = Json::parse(writeCutPlan(planned()));
        json["plan"]["patterns"][0]["count"] = 7;
        const auto plan = readCutPlan(json.dump());
        QVERIFY(plan.ok());
        const cutting::Admission admission = admit(plan->value.problem);
        QVERIFY(!cutting::check(*admission.problem, plan->value.plan).feasibility.cuttable());
    }
    void referencesThatLeadNowhereAreNamed_data()
    {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<QString>("place");
        QTest::newRow("stock") << "/plan/patterns/0/stock"
                               << "/plan/patterns/0/stock: found 99";
        QTest::newRow("blank") << "/plan/patterns/0/strips/0/crosscuts/0/blank"
                               << "/plan/patterns/0/strips/0: found 99";
        QTest::newRow("short") << "/plan/not_cut/0/blank"
                               << "/plan/not_cut/0: found 99";
    }
    void referencesThatLeadNowhereAreNamed()
    {
        QFETCH(QString, pointer);
        QFETCH(QString, place);
        Json json = Json::parse(writeCutPlan(planned()));
        json[Json::json_pointer(pointer.toStdString())] = 99;
        const std::string error = firstError(readCutPlan(json.dump()));
        QVERIFY2(error.find(place.toStdString()) == 0, error.c_str());
        QVERIFY2(error.find("counted from 0; there are") != std::string::npos, error.c_str());
    }
    void remnantsReferToTheirPatternAndStrip()
    {
        Json json = Json::parse(writeCutPlan(planned()));
        json["plan"]["remnants"] = {{{"label", "R1"},
                                     {"pattern", 0},
                                     {"strip", 99},
                                     {"across_mm", 0},
                                     {"along_mm", 0},
                                     {"width_mm", 300},
                                     {"length_mm", 300},
                                     {"count", 1}}};
        QVERIFY(firstError(readCutPlan(json.dump())).find("/plan/remnants/0/strip: found 99") == 0);
        json["plan"]["remnants"][0]["pattern"] = 99;
        QVERIFY(firstError(readCutPlan(json.dump())).find("/plan/remnants/0/pattern: found 99") == 0);
    }
    void stockKeepsRulesAndLabels()
    {
        const auto stock = readStock(texts::ofCase("shelves.stock.json"));
        QVERIFY2(stock.ok(), firstError(stock).c_str());
        QCOMPARE(stock->value.machines, std::vector<std::string>{"long-folder-up"});
        QCOMPARE(*stock->value.rules.mostStrips, 12);
        QCOMPARE(stock->value.items.at(1).stock.kind, cutting::StockKind::Coil);
        QVERIFY(*stock->value.items[1].stock.longestCrosscut == Length::feet(12));
        QVERIFY(*readStock(writeStock(*stock)) == *stock);
    }
    void anItemIsReadByItselfAndSaysWhatCannotBe()
    {
        const auto stock = readStock(texts::ofCase("shelves.stock.json"));
        for (const schedule::StockItem& item : stock->value.items) {
            const std::string text = writeStockItem({item, stock->extras.ofEntry("items", item.stock.key)});
            const auto again = readStockItem(text);
            QVERIFY2(again.ok(), firstError(again).c_str());
            QVERIFY(again->value == item);
            QCOMPARE(writeStockItem(*again), text);
            QVERIFY(text.find("\"key\"") < text.find("\"material\"") &&
                    text.find("\"metal\"") < text.find("\"gauge\""));
        }
        Json rack = Json::parse(writeStockItem({stock->value.items.at(0), {}}));
        const auto refused = [&](const char* member, const Json& value) {
            Json wrong = rack;
            wrong[member] = value;
            const auto read = readStockItem(wrong.dump());
            return read.ok() ? std::string("nothing") : read.errors().front().place;
        };
        QCOMPARE(refused("width_mm", 0), std::string("/width_mm"));
        QCOMPARE(refused("length_mm", 2e7), std::string("/length_mm"));
        QCOMPARE(refused("cost", 0), std::string("/cost"));
        QCOMPARE(refused("count", -1), std::string("/count"));
        QCOMPARE(refused("count", 6'000'000), std::string("/count")); // no plan would take it
        QCOMPARE(refused("longest_crosscut_mm", 1000), std::string("/longest_crosscut_mm"));
        QCOMPARE(refused("key", ""), std::string("/key"));
        QCOMPARE(refused("count", 0), std::string("nothing"));
        rack["kind"] = "remnant";
        QCOMPARE(refused("count", 2), std::string("/count"));
        QVERIFY(!readStockItem("[]").ok() && !readStockItem("{").ok());
    }
    void whatAnItemSaysBesideStaysWithItWhereverItStands()
    {
        auto stock = readStock(texts::ofCase("shelves.stock.json"));
        QVERIFY(writeStock(*stock).find("north wall") != std::string::npos);
        stock->value.items.erase(stock->value.items.begin());
        const Json moved = Json::parse(writeStock(*stock));
        QCOMPARE(moved["items"][1]["shelf"], Json("north wall"));
        documents::Extras beside = stock->extras.ofEntry("items", "R12");
        stock->extras.putEntry("items", "R12", {});
        QVERIFY(writeStock(*stock).find("north wall") == std::string::npos);
        stock->value.items.back().stock.key = "R13";
        stock->extras.putEntry("items", "R13", beside);
        QVERIFY(writeStock(*stock).find("north wall") != std::string::npos);
    }
    void namesGivenTwiceAreRefused()
    {
        Json stock = caseJson("shelves.stock.json");
        stock["items"][2]["key"] = "rack 4";
        QCOMPARE(firstError(readStock(stock.dump())),
                 std::string("/items/2/key: found rack 4 again, expected each only once"));
        Json load = caseJson("first.load.json");
        load["bundles"].push_back(load["bundles"][0]);
        QCOMPARE(firstError(readLoad(load.dump())),
                 std::string("/bundles/1/label: found B1 again, expected each only once"));
        Json receipt = caseJson("first.receipt.json");
        receipt["events"][1]["id"] = receipt["events"][0]["id"];
        QVERIFY(firstError(readReceipt(receipt.dump())).find("/events/1/id: found 7c1d5a02") == 0);
    }
    void loadsAndReceiptsComeBack()
    {
        const auto load = readLoad(texts::ofCase("first.load.json"));
        QVERIFY2(load.ok(), firstError(load).c_str());
        QVERIFY(load->value.bundles.front().twoPeople);
        QCOMPARE(load->value.bundles.front().pieces.at(1).count, std::int64_t{2});
        QVERIFY(*readLoad(writeLoad(*load, Layout::Canonical)) == *load);
        const auto receipt = readReceipt(texts::ofCase("first.receipt.json"));
        QVERIFY2(receipt.ok(), firstError(receipt).c_str());
        QCOMPARE(receipt->value.events.at(1).found, schedule::PieceState::Damaged);
        QCOMPARE(receipt->value.events[1].note, std::string("bent at the lap"));
        QVERIFY(*readReceipt(writeReceipt(*receipt, Layout::Canonical)) == *receipt);
    }
    void whatNobodyCanFindIsRefused_data()
    {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<QString>("value");
        QTest::newRow("state") << "/events/0/found"
                               << "\"cut\"";
        QTest::newRow("none") << "/events/0/count"
                              << "0";
        QTest::newRow("negative") << "/events/0/count"
                                  << "-2";
        QTest::newRow("a part") << "/events/0/count"
                                << "1.5";
        QTest::newRow("time") << "/events/0/at"
                              << "\"yesterday\"";
        QTest::newRow("order") << "/events/0/order"
                               << "\"../order\"";
        QTest::newRow("no mark") << "/events/0/mark"
                                 << "\"\"";
    }
    void whatNobodyCanFindIsRefused()
    {
        QFETCH(QString, pointer);
        QFETCH(QString, value);
        Json receipt = caseJson("first.receipt.json");
        receipt[Json::json_pointer(pointer.toStdString())] = Json::parse(value.toStdString());
        const std::string error = firstError(readReceipt(receipt.dump()));
        QVERIFY2(error.find(pointer.toStdString() + ": found " + value.toStdString()) == 0, error.c_str());
    }
};

QTEST_APPLESS_MAIN(ShopDocumentsTest)
#include "tst_shop_documents.moc"
