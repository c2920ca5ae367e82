// Guards: the flat width of a profile and where its bend lines stand on the blank, against published worked
// examples, so that a blank cut to it folds to the outside sizes asked for.
#include "trim/girth.h"

#include "measure/rounding.h"
#include "measure/writing.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

metal::Metal metalWithK(double k)
{
    metal::Metal metal;
    metal.id = "test";
    metal.name = "Test metal";
    metal.k = k;
    return metal;
}

metal::Metal dinMetal()
{
    metal::Metal metal = metalWithK(0.0);
    metal.neutralAxis = metal::NeutralAxisRule::Din6935;
    return metal;
}

metal::Sheet sheetOf(Length thickness)
{
    return {"test gauge", thickness, 0.0};
}

Profile channel(Length side, Length base, Length radius)
{
    Profile profile;
    profile.legs = {{"first side", side}, {"base", base}, {"second side", side}};
    profile.bends = {{quarterTurn, radius}, {quarterTurn, radius}};
    return profile;
}

bool near(double actual, double expected, double tolerance)
{
    if (std::abs(actual - expected) <= tolerance)
        return true;
    qWarning("%.9g is not within %.3g of %.9g", actual, tolerance, expected);
    return false;
}

} // namespace

class GirthTest : public QObject {
    Q_OBJECT
private slots:
    void channelOfTheAircraftHandbook()
    {
        // FAA-H-8083-31, sheet-metal chapter: U-channel 1.00 x 2.00 x 1.00 in mould-line sizes, T 0.040,
        // R 0.16; setback 0.200, flats 0.80 / 1.60 / 0.80. The handbook's empirical allowance
        // (0.01743 R + 0.0078 T) per degree is K = 0.447. From memory: bend allowance 0.27, total developed
        // width 3.74 (it cuts 0.279 to 0.27 before it adds up; unrounded it is 3.758, and 3.7588 with pi/180
        // in full).
        const Length thickness = Length::thousandths(40), radius = Length::thousandths(160);
        QVERIFY(outsideSetback(quarterTurn, radius, thickness) == Length::thousandths(200));
        const double empirical = (0.01743 * 0.16 + 0.0078 * 0.040) * 90.0;
        QVERIFY(near(inInches(bendAllowance(quarterTurn, radius, thickness, 0.447)), empirical, 4e-4));
        const auto flat = flatPattern(channel(Length::inches(1), Length::inches(2), radius),
                                      metalWithK(0.447), sheetOf(thickness));
        QVERIFY(flat.ok());
        QVERIFY(near(inInches(flat->girth), 3.758, 0.001));
        QVERIFY(near(inInches(flat->girth), 3.74, 0.02));
        // Flat, bend, flat, bend, flat: a bend line is the middle of its bend.
        QVERIFY(near(inInches(flat->lines[0].position), 0.80 + empirical / 2.0, 4e-4));
        QVERIFY(near(inInches(flat->lines[1].position - flat->lines[0].position), 1.60 + empirical, 4e-4));
        QVERIFY(near(inInches(flat->girth - flat->lines[1].position), 0.80 + empirical / 2.0, 4e-4));
    }

    void squareBendsOfMachinerysHandbook()
    {
        // Machinery's Handbook, sheet-metal bending, from memory: length of metal in a 90° bend
        // 0.55 T + 1.57 R (soft copper and brass), 0.64 T + 1.57 R (soft steel, aluminium, half-hard copper),
        // 0.71 T + 1.57 R (bronze, cold-rolled steel); so K = factor × 2 / pi.
        struct Row {
            double thickness, radius, soft, half, hard;
        };
        for (const Row& row : {Row{.0239, .03, .0602, .0624, .0641}, Row{.0625, .125, .2306, .2363, .2406},
                               Row{.125, .25, .4613, .4725, .4813}}) {
            const auto allowance = [&row](double factor) {
                return inInches(bendAllowance(quarterTurn, nearestFromInches(row.radius),
                                              nearestFromInches(row.thickness), factor * 2.0 / M_PI));
            };
            QVERIFY(near(allowance(0.55), row.soft, 3e-4));
            QVERIFY(near(allowance(0.64), row.half, 3e-4));
            QVERIFY(near(allowance(0.71), row.hard, 3e-4));
        }
    }

    void blankOfMachinerysHandbook()
    {
        // Machinery's Handbook, from memory: soft steel 1/8 in thick, straight parts 3.5 in together, a 180°
        // bend of inside radius 3/8 (1.338 in) and a 60° bend of 5/8 (0.707 in): 5.545 in.
        const Length thickness = Length::sixtyFourths(8);
        const double k = 0.64 * 2.0 / M_PI;
        const double half = inInches(bendAllowance(halfTurn, Length::sixtyFourths(24), thickness, k));
        const double sixty =
            inInches(bendAllowance(Angle::degrees(60.0), Length::sixtyFourths(40), thickness, k));
        QVERIFY(near(half, 1.338, 0.001));
        QVERIFY(near(sixty, 0.707, 0.001));
        QVERIFY(near(3.5 + half + sixty, 5.545, 0.0015));
    }

    void neutralAxisOfKalpakjian()
    {
        // Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition SI, p. 418, eq. 16.2:
        // Lb = a (R + kT), k 0.33 for R < 2T to 0.5 for R > 2T; a = 90°, R = T = 1 mm.
        QVERIFY(near(
            inMillimetres(bendAllowance(quarterTurn, Length::millimetres(1), Length::millimetres(1), 0.33)),
            M_PI / 2.0 * 1.33, 1e-6));
        QVERIFY(near(
            inMillimetres(bendAllowance(quarterTurn, Length::millimetres(10), Length::millimetres(1), 0.5)),
            M_PI / 2.0 * 10.5, 1e-6));
    }

    void exampleIn24Gauge()
    {
        // A web page on bending sheet steel with a small radius works out
        // 0.017453 × 90 × (0.020 + 0.33 × 0.024) = 0.0438558984 in. Its pi/180 is cut to six decimals, and
        // lengths are whole nanometres, which allows 1e-6 in of difference.
        const Length allowance =
            bendAllowance(quarterTurn, Length::thousandths(20), Length::thousandths(24), 0.33);
        QVERIFY(near(inInches(allowance), 0.0438558984, 1e-6));
        QVERIFY(near(inInches(allowance) * 0.017453 / (M_PI / 180.0), 0.0438558984, 3e-8));
    }

    void factorsOfDin6935_data()
    {
        QTest::addColumn<double>("openingAngle");
        QTest::addColumn<double>("radius");
        QTest::addColumn<double>("thickness");
        QTest::addColumn<double>("v");
        // DIN 6935: v = pi (180° − b)/180° (r + s k/2) − 2 (r + s), last term × tan((180° − b)/2) for
        // b > 90°; k = 0.65 + 0.5 log10(r/s). Tables print 1.9, 2.1 and 2.4 for s 1 and r 1, 1.6, 2.5.
        QTest::newRow("90 r1 s1") << 90.0 << 1.0 << 1.0 << -1.919;
        QTest::newRow("90 r1 s0.6") << 90.0 << 1.0 << 0.6 << -1.271;
        QTest::newRow("90 r1 s0.75") << 90.0 << 1.0 << 0.75 << -1.509;
        QTest::newRow("90 r1.6 s1") << 90.0 << 1.6 << 1.0 << -2.096;
        QTest::newRow("90 r2.5 s1") << 90.0 << 2.5 << 1.0 << -2.406;
        QTest::newRow("90 r2 s2") << 90.0 << 2.0 << 2.0 << -3.837;
        QTest::newRow("90 r3 s2") << 90.0 << 3.0 << 2.0 << -4.128;
        QTest::newRow("135 r1 s1") << 135.0 << 1.0 << 1.0 << -0.616;
        QTest::newRow("120 r2 s1") << 120.0 << 2.0 << 1.0 << -0.951;
        QTest::newRow("45 r1 s1") << 45.0 << 1.0 << 1.0 << -0.878;
    }
    void factorsOfDin6935()
    {
        QFETCH(double, openingAngle);
        QFETCH(double, radius);
        QFETCH(double, thickness);
        QFETCH(double, v);
        const Length r = nearestFromMillimetres(radius), s = nearestFromMillimetres(thickness);
        const Angle fold = Angle::degrees(180.0 - openingAngle);
        if (openingAngle >= 90.0) {
            QVERIFY(near(-inMillimetres(bendDeduction(dinMetal(), sheetOf(s), fold, r)), v, 0.001));
            return;
        }
        // For acute openings the standard measures legs to the outer tangent of the arc, not to the apex.
        const Length allowance = bendAllowance(fold, r, s, neutralAxisK(dinMetal(), r, s));
        QVERIFY(near(inMillimetres(allowance - 2 * (r + s)), v, 0.001));
    }

    void shallowBendsOfDin6935()
    {
        // DIN 6935 lets v be 0 for opening angles over 165°; the formula kept here goes on smoothly instead
        // and stays within a fifth of the thickness of that.
        const Length s = Length::millimetres(1);
        for (int fold = 1; fold < 15; ++fold) {
            const Length deduction =
                bendDeduction(dinMetal(), sheetOf(s), Angle::degrees(static_cast<double>(fold)), s);
            QVERIFY(deduction > Length() && deduction < s / 5);
        }
    }

    void kOfDin6935()
    {
        // DIN 6935, k = 0.65 + 0.5 log10(r/s), 1 beyond r/s = 5; K is half of it.
        const Length s = Length::millimetres(1);
        for (const auto& [ratio, k] : std::vector<std::pair<double, double>>{
                 {.25, .349}, {.5, .4995}, {1, .65}, {1.5, .738}, {2, .8005}, {3, .8886}, {5, .9995}})
            QVERIFY(near(2.0 * neutralAxisK(dinMetal(), nearestFromMillimetres(ratio), s), k, 0.0006));
        QCOMPARE(neutralAxisK(dinMetal(), Length::millimetres(50), s), 0.5);
        QCOMPARE(neutralAxisK(dinMetal(), Length(), s), 0.0);
    }

    void twoLegsByDin6935()
    {
        Profile angle;
        angle.legs = {{"a", Length::millimetres(50)}, {"b", Length::millimetres(50)}};
        angle.bends = {{-quarterTurn, Length::millimetres(1)}};
        // DIN 6935 as above: 50 + 50 − 1.271.
        const auto flat = flatPattern(angle, dinMetal(), sheetOf(Length::micrometres(600)));
        QVERIFY(flat.ok());
        QVERIFY(near(inMillimetres(flat->girth), 98.729, 0.001));
        QVERIFY(near(inMillimetres(flat->lines[0].position), 98.729 / 2.0, 0.001));
    }

    void measuredDeductionWins()
    {
        metal::Metal metal = metalWithK(0.44);
        const metal::Sheet sheet = sheetOf(Length::thousandths(24));
        const Length radius = Length::thousandths(30);
        const Length formula = bendDeduction(metal, sheet, quarterTurn, radius);
        metal.measuredDeductions = {{"test gauge", quarterTurn, radius, Length::thousandths(50)},
                                    {"other gauge", Angle::degrees(45.0), radius, Length::thousandths(7)}};
        QVERIFY(formula != Length::thousandths(50));
        QVERIFY(bendDeduction(metal, sheet, quarterTurn, radius) == Length::thousandths(50));
        QVERIFY(bendDeduction(metal, sheet, Angle::degrees(89.0), radius) != Length::thousandths(50));
        QVERIFY(bendDeduction(metal, sheet, Angle::degrees(45.0), radius) != Length::thousandths(7));
        QVERIFY(bendDeduction(metal, sheet, quarterTurn, radius * 2) != Length::thousandths(50));
        const auto flat = flatPattern(channel(Length::inches(1), Length::inches(2), radius), metal, sheet);
        QVERIFY(flat.ok());
        QVERIFY(flat->girth == Length::inches(4) - Length::thousandths(100));
        QVERIFY(flat->derivation.because.at(0).source.find("own table") != std::string::npos);
    }

    void hemEdgesAreHalfTurns()
    {
        Profile profile;
        profile.legs = {{"face", Length::inches(4)}};
        profile.startHem = Hem{HemKind::Closed, Length::sixtyFourths(32), Side::Right, Length()};
        profile.endHem = Hem{HemKind::Open, Length::sixtyFourths(32), Side::Left, Length::thousandths(24)};
        const Length thickness = Length::thousandths(24);
        const auto flat = flatPattern(profile, metalWithK(0.44), sheetOf(thickness));
        QVERIFY(flat.ok());
        QCOMPARE(flat->lines.size(), std::size_t{2});
        QVERIFY(flat->lines[0].kind == BendLine::Kind::StartHem && flat->lines[0].turn == -halfTurn);
        QVERIFY(flat->lines[1].kind == BendLine::Kind::EndHem && flat->lines[1].turn == halfTurn);
        // A closed hem: 2 (R + T) − pi (R + K T) with R = 0.
        QVERIFY(near(inInches(flat->lines[0].deduction), 0.024 * (2.0 - M_PI * 0.44), 1e-7));
        QVERIFY(near(inInches(flat->lines[1].deduction), 0.096 - M_PI * 0.024 * 1.44, 1e-7));
        QVERIFY(flat->girth == Length::inches(5) - flat->lines[0].deduction - flat->lines[1].deduction);
        QVERIFY(flat->lines[0].position == Length::sixtyFourths(32) - flat->lines[0].deduction / 2);
    }

    void springbackLeavesTheGirthAlone()
    {
        metal::Metal soft = metalWithK(0.44), hard = metalWithK(0.44);
        soft.yieldStrengthPascals = 50e6;
        soft.elasticModulusPascals = 200e9;
        hard.yieldStrengthPascals = 600e6;
        hard.elasticModulusPascals = 70e9;
        const Profile profile = channel(Length::inches(1), Length::inches(2), Length::thousandths(60));
        const metal::Sheet sheet = sheetOf(Length::thousandths(24));
        QVERIFY(flatPattern(profile, soft, sheet)->girth == flatPattern(profile, hard, sheet)->girth);
    }

    void whatCannotBeUnfoldedIsAnError()
    {
        const metal::Metal metal = metalWithK(0.44);
        const metal::Sheet sheet = sheetOf(Length::thousandths(24));
        Profile profile = channel(Length::thousandths(54), Length::inches(2), Length::thousandths(30));
        auto flat = flatPattern(profile, metal, sheet);
        QVERIFY(!flat.ok());
        QCOMPARE(flat.errors().size(), std::size_t{2});
        QCOMPARE(flat.errors()[0].place, std::string("first side"));
        QVERIFY(!flatPattern(Profile(), metal, sheet).ok());
        profile = channel(Length::inches(1), Length::inches(2), Length::thousandths(30));
        QVERIFY(flatPattern(profile, metal, sheet).ok());
        QVERIFY(!flatPattern(profile, metal, sheetOf(Length())).ok());
        profile.bends[0].turn = halfTurn;
        QVERIFY(!flatPattern(profile, metal, sheet).ok());
        profile.bends[0].turn = Angle::radians(std::nan(""));
        QVERIFY(!flatPattern(profile, metal, sheet).ok());
        profile.bends.pop_back();
        QVERIFY(!flatPattern(profile, metal, sheet).ok());
        profile = channel(Length::inches(1), Length::inches(2), Length::thousandths(30));
        profile.endHem = Hem{HemKind::Closed, Length::thousandths(24), Side::Left, Length()};
        flat = flatPattern(profile, metal, sheet);
        QVERIFY(!flat.ok());
        QCOMPARE(flat.errors()[0].place, std::string("end hem"));
    }

    void girthExplainsItself()
    {
        const auto flat = flatPattern(channel(Length::inches(1), Length::inches(2), Length::thousandths(30)),
                                      dinMetal(), sheetOf(Length::thousandths(24)));
        QVERIFY(flat.ok());
        const std::string girth = say(flat->derivation.statement, {});
        QVERIFY(girth.find("outside legs 4\"") != std::string::npos);
        QVERIFY(girth.find('{') == std::string::npos);
        const std::vector<Derivation>& because = flat->derivation.because;
        // Two bends, each with its own K, then the two formulas and the thickness.
        QCOMPARE(because.size(), std::size_t{5});
        for (std::size_t bend = 0; bend < 2; ++bend) {
            const std::string said = say(because[bend].statement, {});
            QVERIFY2(said.find("90° over an inside radius of 0.0300") != std::string::npos, said.c_str());
            QVERIFY(because[bend].because.at(0).source.find("DIN 6935") != std::string::npos);
        }
        QVERIFY(because[3].source.find("Kalpakjian") != std::string::npos);
        QVERIFY(say(because[4].statement, {}).find("0.0240\" (0.61 mm): test gauge") != std::string::npos);
        metal::Metal constant = metalWithK(0.44);
        constant.sources["k"] = "where K was read";
        const auto other = flatPattern(channel(Length::inches(1), Length::inches(2), Length::thousandths(30)),
                                       constant, sheetOf(Length::thousandths(24)));
        QCOMPARE(other->derivation.because.back().source, std::string("where K was read"));
    }
};

QTEST_APPLESS_MAIN(GirthTest)
#include "tst_girth.moc"
