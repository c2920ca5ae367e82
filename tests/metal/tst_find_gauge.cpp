// Guards: a sheet is found by what people call it; a gauge number without a metal is refused with what it
// might be; a measured thickness is one gauge or is refused.
#include "metal/find_gauge.h"
#include "metal_files.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

using lapwright::Length;
using lapwright::Reading;
namespace metal = lapwright::metal;

namespace {

const std::map<std::string, metal::Metal>& library()
{
    static const std::map<std::string, metal::Metal> metals = metal_files::metals();
    return metals;
}

template <class T>
std::string told(const Reading<T>& reading)
{
    return lapwright::say(reading.problem(), {});
}

bool contains(const std::string& text, const char* part)
{
    return text.find(part) != std::string::npos;
}

Length inches(int tenThousandths)
{
    return Length::nanometres(std::int64_t{tenThousandths} * 2'540);
}

/// The metal sold in even gauges only, as a shop keeps it.
metal::Metal evenGauges(const std::string& id)
{
    metal::Metal one = library().at(id);
    one.sheets.erase(
        std::remove_if(one.sheets.begin(), one.sheets.end(),
                       [](const metal::Sheet& sheet) { return std::stoi(sheet.gauge) % 2 != 0; }),
        one.sheets.end());
    return one;
}

} // namespace

class FindGaugeTest : public QObject {
    Q_OBJECT
private slots:
    void bySheetAndMetal_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("metal");
        QTest::addColumn<QString>("gauge");
        const auto add = [](const char* text, const char* id, const char* gauge) {
            QTest::addRow("%s", text) << text << id << gauge;
        };
        add("26 ga galvanised steel", "galvanised-steel", "26 ga");
        add("26 gauge galvanized", "galvanised-steel", "26 ga");
        add("Galv. 26", "galvanised-steel", "26 ga");
        add("No. 26 galvanized", "galvanised-steel", "26 ga");
        add("#26 galv", "galvanised-steel", "26 ga");
        add("26-gauge uncoated", "uncoated-steel", "26 ga");
        add("gauge 24, stainless", "", "");
        add("24 ga stainless", "stainless-304", "24 ga");
        add("24 ga 304", "stainless-304", "24 ga");
        add("Aluminum-zinc 24 ga", "aluminium-zinc-coated-steel", "24 ga");
        add("16 oz copper", "copper", "16 oz");
        add("16 oz", "copper", "16 oz");
        add("copper 20 ounce", "copper", "20 oz");
        add("0.032\" aluminum", "aluminium-3105", "0.032 in");
        add(".032 aluminium 3105", "", "");
        add(".032 in aluminium 3105", "aluminium-3105", "0.032 in");
        add(".032 alu", "aluminium-3105", "0.032 in");
        add("0.7 mm zinc", "zinc", "0.70 mm");
        add("zinc 0,70", "zinc", "0.70 mm");
        add("2.5 lb lead", "lead", "2.5 lb");
        add("0.0276 in galv", "galvanised-steel", "24 ga");
    }
    void bySheetAndMetal()
    {
        QFETCH(QString, text);
        QFETCH(QString, metal);
        QFETCH(QString, gauge);
        const auto reading = metal::findGauge(text.toStdString(), library());
        if (metal.isEmpty()) {
            QVERIFY(reading.isNonsense());
            return;
        }
        QVERIFY2(reading.isExact(), told(reading).c_str());
        QCOMPARE(QString::fromStdString(reading.value()->metal), metal);
        QCOMPARE(QString::fromStdString(reading.value()->sheet.gauge), gauge);
    }
    void aGaugeNumberWithoutAMetalIsRefused()
    {
        for (const char* text : {"26 gauge", "26 ga", "26", "#26", "No. 26", "26 ga sheet metal"}) {
            const auto reading = metal::findGauge(text, library());
            QVERIFY2(reading.isAmbiguous(), text);
            const std::string problem = told(reading);
            // 26 ga: 0.0179 is common practice, no source; the others as in tst_gauge.
            for (const char* thickness : {"0.0179\"", "0.0217\"", "0.0159\""})
                QVERIFY2(contains(problem, thickness), problem.c_str());
            const bool stainless = contains(problem, "0.0187\"") || contains(problem, "0.0188\"");
            QVERIFY2(stainless, problem.c_str()); // 0.01875 in, 15 U.S.C. 206
            QVERIFY2(contains(problem, "name the metal"), problem.c_str());
        }
        // Even where the shop has one metal only, and where it has none.
        const std::map<std::string, metal::Metal> one{{"galvanised-steel", library().at("galvanised-steel")}};
        QVERIFY(!metal::findGauge("26 ga", one).isExact());
        QVERIFY(!metal::findGauge("26 ga", {}).isExact());
        QVERIFY(metal::findGauge("26 ga galv", one).isExact());
    }
    void aWordThatNamesSeveralMetals()
    {
        const auto reading = metal::findGauge("26 ga steel", library());
        QVERIFY(reading.isAmbiguous());
        QCOMPARE(reading.candidates().size(), std::size_t{4});
        QVERIFY(metal::findGauge("0.0217 in", library()).isAmbiguous());
    }
    void refusalsListWhatThereIs()
    {
        const auto notSold = told(metal::findGauge("27 ga stainless", library()));
        QVERIFY2(contains(notSold, "Stainless steel 304 16 ga, 18 ga"), notSold.c_str());
        const auto notThere = told(metal::findGauge("26 ga titanium", library()));
        QVERIFY2(contains(notThere, "found titanium") && contains(notThere, "Copper"), notThere.c_str());
        const auto noGauge = told(metal::findGauge("copper", library()));
        QVERIFY2(contains(noGauge, "a gauge such as 26 ga"), noGauge.c_str());
        QVERIFY(metal::findGauge("", library()).isNonsense());
        QVERIFY(metal::findGauge("26 ga copper", library()).isNonsense());
        QVERIFY(metal::findGauge("16 oz galv", library()).isNonsense());
        QVERIFY(metal::findGauge("99999999999999 ga", library()).isNonsense());
        QVERIFY(metal::findGauge("-26 ga", {}).isAmbiguous());
        QVERIFY(metal::findGauge("26 ga \xff", library()).isNonsense());
        QVERIFY(metal::findGauge(std::string(1'000'000, '#'), library()).isNonsense());
    }
    void aMeasuredThicknessIsOneGauge()
    {
        const metal::Metal uncoated = evenGauges("uncoated-steel"),
                           galvanised = evenGauges("galvanised-steel");
        const auto gaugeOf = [](const metal::Metal& one, int tenThousandths) {
            const auto reading = metal::gaugeOfThickness(one, inches(tenThousandths));
            return reading.value() ? reading.value()->gauge : told(reading);
        };
        // Ranges as in tst_metal_library.
        QCOMPARE(gaugeOf(uncoated, 210), std::string("24 ga"));
        QCOMPARE(gaugeOf(uncoated, 268), std::string("24 ga"));
        QCOMPARE(gaugeOf(uncoated, 170), std::string("26 ga"));
        QCOMPARE(gaugeOf(uncoated, 199), std::string("26 ga"));
        QCOMPARE(gaugeOf(galvanised, 276), std::string("24 ga"));
        QCOMPARE(gaugeOf(galvanised, 340), std::string("22 ga"));
        for (const metal::Metal* one : {&uncoated, &galvanised})
            for (const metal::Sheet& sheet : one->sheets) {
                const auto reading = metal::gaugeOfThickness(*one, sheet.thickness);
                const bool itself = reading.isExact() ? *reading.value() == sheet
                                                      : reading.candidates().front().value == sheet;
                QVERIFY2(itself, sheet.gauge.c_str());
            }
    }
    void aThicknessBetweenGaugesIsRefused()
    {
        // 0.031 in is within the printed ranges of both 22 ga (0.030-0.038) and 24 ga (0.024-0.032).
        const metal::Metal galvanised = evenGauges("galvanised-steel");
        const auto between = metal::gaugeOfThickness(galvanised, inches(310));
        QVERIFY(between.isAmbiguous());
        QCOMPARE(between.candidates().size(), std::size_t{2});
        QCOMPARE(between.candidates().front().value.gauge, std::string("22 ga"));
        const auto tooThick = metal::gaugeOfThickness(galvanised, inches(2'500));
        QVERIFY(tooThick.isNonsense());
        QVERIFY2(contains(told(tooThick), "0.2500\""), told(tooThick).c_str());
        QVERIFY(metal::gaugeOfThickness(galvanised, Length()).isNonsense());
        // A sheet without a tolerance is known within 5 %.
        metal::Metal bare = galvanised;
        bare.sheets = {{"24 ga", inches(276), 5.6}};
        QVERIFY(metal::gaugeOfThickness(bare, inches(289)).isExact());
        QVERIFY(metal::gaugeOfThickness(bare, inches(291)).isNonsense());
    }
};

QTEST_APPLESS_MAIN(FindGaugeTest)
#include "tst_find_gauge.moc"
