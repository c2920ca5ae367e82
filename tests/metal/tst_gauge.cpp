// Guards: the gauge rules give the tables that mills and the statute print, and a gauge number means a
// different thickness in each of them.
#include "measure/rounding.h"
#include "metal/gauge.h"

#include <QtTest>

#include <cmath>
#include <set>

using lapwright::Length;
namespace metal = lapwright::metal;

namespace {

struct Row {
    int gauge;
    double uncoated;
    double galvanised;
    double wire;
};

// Steel, galvanised and aluminium columns of greaseralley.com/2010/12/09/sheet-metal-gauge-chart, in inches.
constexpr Row printedTable[] = {
    {16, 0.0598, 0.0635, 0.0508}, {17, 0.0538, 0.0575, 0.0453}, {18, 0.0478, 0.0516, 0.0403},
    {19, 0.0418, 0.0456, 0.0359}, {20, 0.0359, 0.0396, 0.0320}, {21, 0.0329, 0.0366, 0.0285},
    {22, 0.0299, 0.0336, 0.0253}, {23, 0.0269, 0.0306, 0.0226}, {24, 0.0239, 0.0276, 0.0201},
    {25, 0.0209, 0.0247, 0.0179}, {26, 0.0179, 0.0217, 0.0159}, {27, 0.0164, 0.0202, 0.0142},
    {28, 0.0149, 0.0187, 0.0126}, {29, 0.0135, 0.0172, 0.0113}, {30, 0.0120, 0.0157, 0.0100},
};

struct StatuteRow {
    int gauge;
    double inches;
    double ounces;
};

// 15 U.S.C. 206: approximate thickness in decimal parts of an inch, weight per square foot in ounces.
constexpr StatuteRow statute[] = {
    {-6, 0.5, 320},        {-5, 0.46875, 300},  {-4, 0.4375, 280},     {-3, 0.40625, 260},
    {-2, 0.375, 240},      {-1, 0.34375, 220},  {0, 0.3125, 200},      {1, 0.28125, 180},
    {2, 0.265625, 170},    {3, 0.25, 160},      {4, 0.234375, 150},    {5, 0.21875, 140},
    {6, 0.203125, 130},    {7, 0.1875, 120},    {8, 0.171875, 110},    {9, 0.15625, 100},
    {10, 0.140625, 90},    {11, 0.125, 80},     {12, 0.109375, 70},    {13, 0.09375, 60},
    {14, 0.078125, 50},    {15, 0.0703125, 45}, {16, 0.0625, 40},      {17, 0.05625, 36},
    {18, 0.05, 32},        {19, 0.04375, 28},   {20, 0.0375, 24},      {21, 0.034375, 22},
    {22, 0.03125, 20},     {23, 0.028125, 18},  {24, 0.025, 16},       {25, 0.021875, 14},
    {26, 0.01875, 12},     {27, 0.0171875, 11}, {28, 0.015625, 10},    {29, 0.0140625, 9},
    {30, 0.0125, 8},       {31, 0.0109375, 7},  {32, 0.01015625, 6.5}, {33, 0.009375, 6},
    {34, 0.00859375, 5.5}, {35, 0.0078125, 5},  {36, 0.00703125, 4.5}, {37, 0.006640625, 4.25},
    {38, 0.00625, 4},
};

double inches(const std::optional<Length>& thickness)
{
    return thickness ? lapwright::inInches(*thickness) : -1.0;
}

bool prints(const std::optional<Length>& thickness, double printed)
{
    return std::abs(inches(thickness) - printed) < 1e-9;
}

} // namespace

class GaugeTest : public QObject {
    Q_OBJECT
private slots:
    void theStatute()
    {
        QCOMPARE(std::size(statute), std::size_t{45});
        for (const StatuteRow& row : statute) {
            QCOMPARE(metal::usStandardQuarterOunces(row.gauge).value_or(0) / 4.0, row.ounces);
            // To the nanometre: some of the statute's decimals are not whole nanometres.
            QVERIFY2(std::abs(inches(metal::usStandardThickness(row.gauge)) - row.inches) < 2.1e-8,
                     qPrintable(QString::number(row.gauge)));
        }
        QVERIFY(!metal::usStandardThickness(-7) && !metal::usStandardThickness(39));
    }
    void thePrintedTable()
    {
        for (const Row& row : printedTable) {
            QVERIFY(prints(metal::manufacturersStandardThickness(row.gauge), row.uncoated));
            QVERIFY(prints(metal::galvanisedThickness(row.gauge), row.galvanised));
            QVERIFY(prints(metal::americanWireThickness(row.gauge), row.wire));
        }
        // offroaders.com/tech/sheet-metal-gauge-thickness.htm: 10 ga is 0.1345 in and 5.625 lb per sq ft.
        QVERIFY(prints(metal::manufacturersStandardThickness(10), 0.1345));
        QCOMPARE(metal::usStandardQuarterOunces(10).value_or(0) / 64.0, 5.625);
        QVERIFY(!metal::manufacturersStandardThickness(2) && !metal::manufacturersStandardThickness(39));
        QVERIFY(!metal::galvanisedThickness(7) && !metal::galvanisedThickness(33));
        QVERIFY(!metal::americanWireThickness(-4) && !metal::americanWireThickness(41));
    }
    void theEndsOfTheWireGauge()
    {
        // ASTM B258 (from memory): the rule is fixed by 4/0 = 0.4600 in and 36 = 0.0050 in.
        QVERIFY(prints(metal::americanWireThickness(-3), 0.46));
        QVERIFY(prints(metal::americanWireThickness(36), 0.005));
    }
    void copperByWeight()
    {
        // IBC 2015 Table 1507.2.9.2 as printed at professionalroofing.net (11-01-2017/4120): cold-rolled
        // copper, 16 oz, 0.0216 in. From memory: high-yield copper, 12 oz, 0.0162 in.
        QVERIFY(prints(metal::copperThickness(16), 0.0216));
        QVERIFY(prints(metal::copperThickness(12), 0.0162));
        QVERIFY(prints(metal::copperThickness(20), 0.0270));
        QVERIFY(prints(metal::copperThickness(32), 0.0431));
        QVERIFY(!metal::copperThickness(0) && !metal::copperThickness(1'001));
    }
    void oneNumberIsFourThicknesses()
    {
        const double uncoated = inches(metal::manufacturersStandardThickness(26));
        const double galvanised = inches(metal::galvanisedThickness(26));
        const double stainless = inches(metal::usStandardThickness(26));
        const double wire = inches(metal::americanWireThickness(26));
        QCOMPARE((std::set<double>{uncoated, galvanised, stainless, wire}.size()), std::size_t{4});
        // Codes write "0.019 in (No. 26 galvanized)"; no rule gives that, and the decimal governs
        // (professionalroofing.net, 11-01-2017/4120).
        for (const double thickness : {uncoated, galvanised, stainless, wire})
            QVERIFY(std::abs(thickness - 0.019) > 1e-4);
    }
    void higherNumbersAreThinner()
    {
        const auto falls = [](auto rule, int thickest, int thinnest) {
            for (int gauge = thickest; gauge < thinnest; ++gauge)
                if (!(rule(gauge + 1) && rule(gauge) && *rule(gauge + 1) < *rule(gauge)))
                    return false;
            return true;
        };
        QVERIFY(falls(metal::usStandardThickness, -6, 38));
        QVERIFY(falls(metal::manufacturersStandardThickness, 3, 38));
        QVERIFY(falls(metal::galvanisedThickness, 8, 32));
        QVERIFY(falls(metal::americanWireThickness, -3, 40));
    }
    void weightPerArea()
    {
        // 1 lb = 0.45359237 kg, 1 ft = 0.3048 m exactly: 1 lb per sq ft is 4.882428 kg per sq m.
        QVERIFY(std::abs(metal::surfaceMass(64) - 4.882428) < 5e-7);
        QVERIFY(std::abs(metal::surfaceMass(4) - 0.305152) < 5e-7);
    }
};

QTEST_APPLESS_MAIN(GaugeTest)
#include "tst_gauge.moc"
