// Guards: every size, count and slope that a shipped clause asks about is the one its text gives, and none is
// there without a text.
#include "documents/rules.h"
#include "source_directory.h"

#include <QDir>
#include <QtTest>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>

using namespace lapwright;
using namespace lapwright::rules;
using Comparison = Condition::Comparison;

namespace {

constexpr auto atLeast = Comparison::AtLeast;
constexpr auto atMost = Comparison::AtMost;
constexpr auto over = Comparison::Greater;

struct Published {
    const char* number;
    const char* fact;
    Comparison comparison;
    Fact value;
};
using Texts = std::vector<Published>;

Fact inches(double value)
{
    return Length::nanometres(std::llround(value * 25.4e6));
}
Fact feet(std::int64_t value)
{
    return Length::feet(value);
}
Fact millimetres(double value)
{
    return Length::nanometres(std::llround(value * 1e6));
}
Fact count(std::int64_t value)
{
    return value;
}

/// International Residential Code: R905.2.8.5 at inspect2code.com/2015-residential-code-for-roof-drip-edge-
/// flashing; R903.2.1 and the valley table at professionalroofing.net 11-01-2017/4120; R905.2.8.1 at
/// online.flipbuilder.com/mewf/mima, page 462; R905.2.8.2 and R905.2.8.3 at lf.yelmwa.gov, document 3550681;
/// R905.4.6 at 98905.com/119564, its lap on page 375 of the International Building Code; R903.2.2 at
/// inspectionnews.net.
Texts residentialCode()
{
    return {{"IRC R905.2.8.5", "lap", atLeast, inches(2)},
            {"IRC R905.2.8.5", "deck_width", atLeast, inches(2)},
            {"IRC R905.2.8.5", "face_height", atLeast, inches(0.25)},
            {"IRC R905.2.8.5", "fastener_spacing", atMost, inches(12)},
            {"IRC R903.2.1", "thickness", atLeast, inches(0.019)},
            {"IRC R905.2.8.1", "thickness", atLeast, inches(0.019)},
            {"IRC R905.2.8.2", "girth", atLeast, inches(24)},
            {"IRC Table R905.2.8.2", "thickness", atLeast, inches(0.0216)}, // cold-rolled copper
            {"IRC Table R905.2.8.2", "thickness", atLeast, inches(0.024)},  // aluminium
            {"IRC Table R905.2.8.2", "thickness", atLeast, inches(0.027)},  // zinc
            {"IRC Table R905.2.8.2", "thickness", atLeast, inches(0.0179)}, // galvanised steel
            {"IRC R905.2.8.3", "wall_height", atLeast, inches(4)},
            {"IRC R905.2.8.3", "roof_width", atLeast, inches(4)},
            {"IRC R905.4.6", "roof_width", atLeast, inches(8)},
            {"IRC R905.4.6", "rib_height", atLeast, inches(0.75)},
            {"IRC R905.4.6", "lap", atLeast, inches(4)},
            {"IRC R903.2.2", "width", over, inches(30)}};
}

/// International Building Code: 1507.2.8.3 at professionalroofing.net 06-01-2019/4466, 1503.2 at 11-01-2017/
/// 4120.
Texts buildingCode()
{
    return {{"IBC 1507.2.8.3", "face_height", atLeast, inches(1.5)},
            {"IBC 1507.2.8.3", "lap", atLeast, inches(2)},
            {"IBC 1507.2.8.3", "deck_width", atLeast, inches(2)},
            {"IBC 1507.2.8.3", "fastener_spacing", atMost, inches(12)},
            {"IBC 1503.2", "thickness", atLeast, inches(0.019)}};
}

/// Unified Facilities Guide Specification 07600, public domain, at ufgscriteriadocreport.tpub.com/07600,
/// pages 076000010 to 076000022.
Texts guideSpecification()
{
    return {{"UFGS 07600 2.1", "piece_count", over, count(1)},
            {"UFGS 07600 2.1", "piece_length", atLeast, feet(8)},
            {"UFGS 07600 2.1", "piece_length", atMost, feet(10)},
            {"UFGS 07600 3.1.4", "girth", atLeast, inches(18)},
            {"UFGS 07600 3.1.4", "cleat_spacing", atMost, inches(12)},
            {"UFGS 07600 3.1.6", "lap", atLeast, inches(3)},
            {"UFGS 07600 3.1.10", "joint_interval", atMost, feet(40)}, // copper, stainless
            {"UFGS 07600 3.1.10", "joint_interval", atMost, feet(32)}, // aluminium
            {"UFGS 07600 3.1.26", "joint_interval", atMost, feet(12)}, // aluminium gravel stops, fascias
            {"UFGS 07600 3.1.11", "wall_height", atLeast, inches(8)},
            {"UFGS 07600 3.1.11", "roof_width", atLeast, inches(4)},
            {"UFGS 07600 3.1.11", "lap", atLeast, inches(3)},
            {"UFGS 07600 3.1.12", "masonry_depth", atLeast, inches(2)},
            {"UFGS 07600 3.1.12", "leg.turn_up", atLeast, inches(0.25)},
            {"UFGS 07600 3.1.15", "fastener_spacing", atMost, inches(3)},
            {"UFGS 07600 3.1.15", "fastener_rows", atLeast, count(2)},
            {"UFGS 07600 3.1.15", "leg.kick", atLeast, inches(0.75)},
            {"UFGS 07600 3.1.16", "fastener_spacing", atMost, inches(10)},
            {"UFGS 07600 3.1.16", "deck_width", atMost, inches(3)}};
}

/// Copper Development Association, Copper in Architecture Design Handbook A4050, at copper.org: valleys.html,
/// gravel_stops.html, roofing/standing_seam.html; structural considerations at live.copper.org.
Texts copperHandbook()
{
    Texts texts{{"CDA A4050 valleys", "thickness", atLeast, inches(0.0216)}, // 16 oz
                {"CDA A4050 valleys", "lap", atLeast, inches(8)},
                {"CDA A4050 valleys", "slope", atLeast, *Slope::fromMillionths(4'500'000, 12'000'000)},
                {"CDA A4050 copings", "piece_length", atMost, feet(10)},
                {"CDA A4050 gravel stops", "lap", atLeast, inches(3)},
                {"CDA A4050 gravel stops", "fastener_spacing", atMost, inches(3)},
                {"CDA A4050 gravel stops", "leg.flange", atMost, inches(4)},
                {"CDA A4050 gravel stops", "measure.dam_height", atLeast, inches(0.75)},
                {"CDA A4050 standing seam", "lap", atLeast, inches(3)},
                // "Narrow" is read as 12 in, the width from which the older manual asks for cleats
                // (roofonline.com, Copper Flashings, page 7).
                {"CDA A4050 structural considerations", "girth", atMost, inches(12)},
                {"CDA A4050 structural considerations", "fastener_spacing", atMost, inches(3)}};
    // Table 9.7A: highest fascia in inches for 16, 20, 24 and 32 oz, by velocity pressure up to 20, 21 to 30
    // and 31 to 45 lb per sq ft.
    const char* const table = "CDA A4050 Table 9.7A";
    const auto upTo = [&](std::int64_t from, std::int64_t most, std::initializer_list<double> faces) {
        for (const double face : faces) {
            if (from > 0)
                texts.push_back({table, "velocity_pressure_psf", atLeast, count(from)});
            texts.push_back({table, "velocity_pressure_psf", atMost, count(most)});
            texts.push_back({table, "face_height", atMost, inches(face)});
        }
    };
    upTo(0, 20, {8, 10});
    upTo(21, 30, {6, 8, 10});
    upTo(31, 45, {4, 6, 8, 10});
    texts.push_back({table, "velocity_pressure_psf", atMost, count(45)});
    for (const double leastWind : {8, 10, 10, 10})
        texts.push_back({table, "face_height", atMost, inches(leastWind)});
    return texts;
}

/// SMACNA, Architectural Sheet Metal Manual, 5th edition, at snipsmag.com/articles/85054; ARCA TP-8.2 at
/// arcaonline.ca/node/89 (gauges by the tables in tst_gauge); New Zealand code of practice v3 at
/// metalroofing.org.nz; DIN 18339:2000-12 at nedzink.com.
Texts tradeManuals()
{
    return {{"SMACNA counterflashing", "leg.face", atLeast, inches(4)},
            {"SMACNA base flashing", "wall_height", atLeast, inches(10)},
            {"SMACNA joints", "lap", atLeast, inches(4)},
            {"ARCA TP-8.2", "thickness", atLeast, inches(0.021)}, // aluminium
            {"ARCA TP-8.2", "thickness", atMost, inches(0.044)},
            {"ARCA TP-8.2", "thickness", atLeast, inches(0.0216)},    // copper, 16 oz
            {"ARCA TP-8.2", "thickness", atMost, inches(0.027)},      // 20 oz
            {"ARCA TP-8.2", "thickness", atLeast, millimetres(0.50)}, // coated steel
            {"ARCA TP-8.2", "thickness", atMost, inches(0.0336)},     // 22 ga galvanised
            {"ARCA TP-8.2", "thickness", atLeast, millimetres(0.36)}, // stainless
            {"ARCA TP-8.2", "thickness", atMost, inches(0.03125)},    // 22 ga
            {"ARCA TP-8.2", "face_height", atMost, inches(10)},
            {"NZMRM CoP flashing laps", "lap", atLeast, millimetres(100)}, // sealed
            {"NZMRM CoP flashing laps", "lap", atLeast, millimetres(150)},
            {"NZMRM CoP flashing cover C1", "roof_width", atLeast, millimetres(130)},
            {"DIN 18339", "joint_interval", atMost, millimetres(8'000)},
            {"DIN 18339", "joint_interval", atMost, millimetres(6'000)}};
}

std::string line(const std::string& number, const std::string& fact, Comparison comparison, const Fact& value)
{
    std::string text = number + ", " + fact + ", " + std::to_string(static_cast<int>(comparison)) + ": ";
    if (const auto* length = std::get_if<Length>(&value))
        return text + std::to_string(length->inNanometres()) + " nm";
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        return text + std::to_string(*whole);
    if (const auto* slope = std::get_if<Slope>(&value))
        return text + std::to_string(slope->riseMillionths()) + " in " +
               std::to_string(slope->runMillionths());
    return {};
}

/// All conditions of the file that are about a size, a count or a slope.
std::multiset<std::string> kept(const QString& id)
{
    std::multiset<std::string> lines;
    QFile file(QString::fromStdString(sourceDirectory() + "/shared-core/rule-sets/") + id + ".json");
    if (!file.open(QIODevice::ReadOnly))
        return lines;
    const auto read = documents::readRules(file.readAll().toStdString());
    if (!read)
        return lines;
    for (const Clause& clause : read->value.clauses)
        for (const auto* conditions : {&clause.applies, &clause.demands})
            for (const Condition& condition : *conditions)
                for (const Fact& value : condition.values)
                    if (std::string text = line(clause.number, condition.fact, condition.comparison, value);
                        !text.empty())
                        lines.insert(std::move(text));
    return lines;
}

} // namespace

class RuleValuesTest : public QObject {
    Q_OBJECT
private slots:
    void asPublished_data()
    {
        QTest::addColumn<QString>("set");
        for (const auto& [id, texts] : published())
            QTest::addRow("%s", id.c_str()) << QString::fromStdString(id);
    }
    void asPublished()
    {
        QFETCH(QString, set);
        std::multiset<std::string> expected;
        for (const Published& text : published().at(set.toStdString()))
            expected.insert(line(text.number, text.fact, text.comparison, text.value));
        const std::multiset<std::string> found = kept(set);
        std::vector<std::string> different;
        std::set_symmetric_difference(found.begin(), found.end(), expected.begin(), expected.end(),
                                      std::back_inserter(different));
        for (const std::string& text : different)
            qWarning("%s", text.c_str());
        QVERIFY(different.empty());
    }
    void everyShippedSetIsHere()
    {
        const QStringList files =
            QDir(QString::fromStdString(sourceDirectory() + "/shared-core/rule-sets")).entryList({"*.json"});
        QCOMPARE(static_cast<std::size_t>(files.size()), published().size());
    }

private:
    static const std::map<std::string, Texts>& published()
    {
        static const std::map<std::string, Texts> all{{"irc-flashing", residentialCode()},
                                                      {"ibc-flashing", buildingCode()},
                                                      {"ufgs-sheet-metal", guideSpecification()},
                                                      {"cda-copper", copperHandbook()},
                                                      {"trade-manuals", tradeManuals()}};
        return all;
    }
};

QTEST_APPLESS_MAIN(RuleValuesTest)
#include "tst_rule_values.moc"
