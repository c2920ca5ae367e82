// Guards: what an order costs at a shop's rates, to the cent, by figures worked out by hand; the sum is that
// of its lines; a material without a rate costs an error message, not a guess.
#include "measure/writing.h"
#include "schedule/cost.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::schedule;

namespace {

const site::Material slate{"galvanised-steel", "24 ga", "Slate"};
const site::Material bone{"galvanised-steel", "24 ga", "Bone"};
const site::Material bronze{"aluminium-3105", "0.040 in", "Bronze"};

/// Three bends and a closed hem, girth 250 mm, 1.5 kg to the metre.
pieces::OrderedProfile profileOf(const site::Material& material)
{
    pieces::OrderedProfile profile;
    profile.material = material;
    profile.girth = Length::millimetres(250);
    profile.kilogramsPerMetre = 1.5;
    profile.profile.legs.resize(4);
    profile.profile.bends.resize(3);
    profile.profile.startHem = trim::Hem();
    return profile;
}

pieces::Piece pieceOf(std::size_t profile, std::int64_t count, std::int64_t millimetres)
{
    pieces::Piece piece;
    piece.profile = profile;
    piece.count = count;
    piece.blankLength = Length::millimetres(millimetres);
    return piece;
}

CostRates rates()
{
    CostRates all;
    all.currency = "USD";
    all.materials = {{"galvanised-steel", "24 ga", std::nullopt, 410, std::nullopt},
                     {"galvanised-steel", "24 ga", "Bone", 455, std::nullopt},
                     {"aluminium-3105", "0.040 in", std::nullopt, std::nullopt, 2890}};
    all.wastePercent = 12;
    all.centsPerHour = 5800;
    all.labour = {1200, 390, 45, 15};
    return all;
}

} // namespace

class CostTest : public QObject {
    Q_OBJECT
private slots:
    void byMassWithWasteAndLabour()
    {
        pieces::Order order;
        order.profiles = {profileOf(slate)};
        order.pieces = {pieceOf(0, 4, 3000), pieceOf(0, 1, 2000)};
        const auto cost = costOf(order, rates());
        QVERIFY(cost.ok());
        QCOMPARE(cost->lines.size(), std::size_t{2});
        // 14 m × 1.5 kg/m = 21 kg × 4.10 = 86.10; 12 % of it 10.332, to the cent 10.33.
        QCOMPARE(cost->lines[0].cents, std::int64_t{8610 + 1033});
        QCOMPARE(QString::fromStdString(say(cost->lines[0].how, {})),
                 QString("21.00 kg at 4.10 USD a kg, and 12 % waste"));
        // 1200 + 390 + 5 × (45 + (3 + 2) × 15) = 2190 s at 58.00 an hour = 35.2833….
        QCOMPARE(cost->lines[1].cents, std::int64_t{3528});
        QCOMPARE(QString::fromStdString(say(cost->lines[1].how, {})),
                 QString("37 minutes at 58.00 USD an hour"));
        QCOMPARE(cost->cents, std::int64_t{8610 + 1033 + 3528});
    }
    void byAreaAndByColour()
    {
        pieces::Order order;
        order.profiles = {profileOf(bronze), profileOf(bone), profileOf(slate)};
        order.pieces = {pieceOf(0, 3, 2500), pieceOf(1, 1, 1000), pieceOf(2, 1, 1000)};
        CostRates plain = rates();
        plain.wastePercent = 0;
        const auto cost = costOf(order, plain);
        QVERIFY(cost.ok());
        QCOMPARE(cost->lines.size(), std::size_t{4});
        // 3 × 0.25 × 2.5 m² = 1.875 m² × 28.90 = 54.1875, to the cent 54.19.
        QCOMPARE(cost->lines[0].cents, std::int64_t{5419});
        // Bone has a rate of its own: 1.5 kg × 4.55 = 6.825, halves up; Slate takes the general one: 6.15.
        QCOMPARE(cost->lines[1].cents, std::int64_t{683});
        QCOMPARE(cost->lines[2].cents, std::int64_t{615});
    }
    void taxIsOnTheSum()
    {
        pieces::Order order;
        order.profiles = {profileOf(slate)};
        order.pieces = {pieceOf(0, 2, 1000)};
        CostRates taxed = rates();
        taxed.centsPerHour = 0;
        taxed.wastePercent = 0;
        taxed.taxHundredths = 825;
        const auto cost = costOf(order, taxed);
        QVERIFY(cost.ok());
        // 3 kg × 4.10 = 12.30; 8.25 % of it 1.01475, to the cent 1.01.
        QCOMPARE(cost->lines.back().what.text, std::string("tax"));
        QCOMPARE(say(cost->lines.back().how, {}), std::string("8.25 %"));
        QCOMPARE(cost->lines.back().cents, std::int64_t{101});
        QCOMPARE(cost->cents, std::int64_t{1230 + 101});
    }
    void noRateIsAnError()
    {
        pieces::Order order;
        order.profiles = {profileOf({"copper", "16 oz", ""}), profileOf({"zinc", "0.7 mm", ""})};
        order.pieces = {pieceOf(0, 1, 1000), pieceOf(1, 1, 1000)};
        const auto cost = costOf(order, rates());
        QVERIFY(!cost.ok());
        QCOMPARE(cost.errors().size(), std::size_t{2});
        QVERIFY(cost.errors().front().sentence().find("16 oz copper") != std::string::npos);
    }
    void nothingCostsOnlyTheOrder()
    {
        const auto cost = costOf({}, rates());
        QVERIFY(cost.ok());
        QCOMPARE(cost->cents, std::int64_t{1933}); // 1200 s at 58.00 an hour = 19.333…
    }
    void theLargestOrderFits()
    {
        // Far more than any house, at the highest rate the schema admits.
        pieces::Order order;
        order.profiles = {profileOf(bronze)};
        order.profiles.front().girth = Length::millimetres(10'000);
        order.pieces = {pieceOf(0, 100'000, 100'000)};
        CostRates dear = rates();
        dear.wastePercent = 0;
        dear.materials[2].centsPerSquareMetre = 10'000'000;
        const auto cost = costOf(order, dear);
        QVERIFY(cost.ok());
        // 10^5 pieces × 10 m × 100 m = 10^8 m² × 10^7 cents.
        QCOMPARE(cost->lines[0].cents, std::int64_t{1'000'000'000'000'000});
    }
    void moneyInWords()
    {
        QCOMPARE(writeMoney(0, "USD"), std::string("0.00 USD"));
        QCOMPARE(writeMoney(123450, "USD"), std::string("1 234.50 USD"));
        QCOMPARE(writeMoney(100000005, ""), std::string("1 000 000.05"));
    }
};

QTEST_APPLESS_MAIN(CostTest)
#include "tst_cost.moc"
