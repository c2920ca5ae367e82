// Guards: the shipped rule sets — every clause at the boundary of each of its demands, and the numbers of the
// clauses against the published texts.
#include "documents/rules.h"
#include "measure/writing.h"
#include "rules/facts.h"
#include "source_directory.h"

#include <QDir>
#include <QtTest>

using namespace lapwright;
using namespace lapwright::rules;
using Comparison = Condition::Comparison;

namespace {

std::map<std::string, RuleSet> shippedSets()
{
    std::map<std::string, RuleSet> sets;
    const QDir folder(QString::fromStdString(sourceDirectory() + "/shared-core/rule-sets"));
    for (const QString& name : folder.entryList({"*.json"})) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const auto read = documents::readRules(file.readAll().toStdString());
        if (!read)
            qWarning("%s: %s", qPrintable(name), read.errors().front().sentence().c_str());
        else
            sets.emplace(read->value.id, read->value);
    }
    return sets;
}

const std::map<std::string, RuleSet> sets = shippedSets();

constexpr Length step = Length::thousandths(1);

/// The value a little up (+1) or down (-1); nothing for what has no order.
std::optional<Fact> moved(const Fact& value, int direction)
{
    if (const auto* length = std::get_if<Length>(&value))
        return *length + direction * step;
    if (const auto* count = std::get_if<std::int64_t>(&value))
        return *count + direction;
    if (const auto* slope = std::get_if<Slope>(&value))
        return *Slope::fromMillionths(slope->riseMillionths() + direction, slope->runMillionths());
    return std::nullopt;
}

Fact other(const Fact& value)
{
    if (const auto* yes = std::get_if<bool>(&value))
        return !*yes;
    return moved(value, 1).value_or(Fact(std::string("something else")));
}

/// A value that just meets the condition, and one that just does not.
std::pair<Fact, Fact> boundary(const Condition& condition)
{
    const Fact& value = condition.values.front();
    switch (condition.comparison) {
    case Comparison::AtLeast:
        return {value, *moved(value, -1)};
    case Comparison::AtMost:
        return {value, *moved(value, 1)};
    case Comparison::Greater:
        return {*moved(value, 1), value};
    case Comparison::Less:
        return {*moved(value, -1), value};
    case Comparison::NotEqual:
        return {other(value), value};
    default:
        return {value, other(value)};
    }
}

/// What the clause applies to; a second condition on the same fact keeps the first one's value.
Facts applying(const Clause& clause)
{
    Facts facts;
    for (const Condition& condition : clause.applies)
        facts.emplace(condition.fact, boundary(condition).first);
    return facts;
}

std::size_t found(const std::string& set, const Facts& facts, const std::string& number)
{
    std::size_t count = 0;
    for (const Finding& finding : apply(sets.at(set), facts, ""))
        count += finding.clause->number == number ? 1 : 0;
    return count;
}

Fact inches(double value)
{
    return Length::nanometres(std::llround(value * 25.4e6));
}

Fact text(const char* value)
{
    return std::string(value);
}

} // namespace

class RuleSetsTest : public QObject {
    Q_OBJECT
private slots:
    void allShippedSetsAreRead()
    {
        for (const char* id :
             {"irc-flashing", "ibc-flashing", "ufgs-sheet-metal", "cda-copper", "trade-manuals"})
            QVERIFY2(sets.count(id) == 1, id);
    }
    void everyClauseAtItsBoundary()
    {
        std::size_t demands = 0;
        for (const auto& [id, set] : sets) {
            for (const Clause& clause : set.clauses) {
                RuleSet alone = set;
                alone.clauses = {clause};
                Facts facts = applying(clause);
                for (const Condition& demand : clause.demands)
                    facts[demand.fact] = boundary(demand).first;
                QVERIFY2(apply(alone, facts, "").empty(), clause.statement.c_str());
                for (const Condition& demand : clause.demands) {
                    Facts short_ = facts;
                    short_[demand.fact] = boundary(demand).second;
                    const Findings findings = apply(alone, short_, "");
                    QVERIFY2(findings.size() == 1, clause.statement.c_str());
                    const std::string said = say(findings.front().statement, Style{});
                    QVERIFY2(said.find('{') == std::string::npos, said.c_str());
                    QVERIFY(say(findings.front().remedy, Style{}).find("licensed professional") !=
                            std::string::npos);
                    ++demands;
                }
            }
        }
        qInfo("demands checked: %zu", demands);
        QVERIFY(demands > 40);
    }
    // International Residential Code 2015 R905.2.8.5, read at
    // inspect2code.com/2015-residential-code-for-roof-drip-edge-flashing: laps 2 in, 2 in up the deck, 12 in.
    void dripEdge()
    {
        const Facts good{{"trim", text("eave-drip-edge")},
                         {"lap", inches(2)},
                         {"deck_width", inches(2)},
                         {"face_height", inches(1.5)},
                         {"fastener_spacing", inches(12)}};
        QCOMPARE(found("irc-flashing", good, "IRC R905.2.8.5"), std::size_t{0});
        const Facts bad{{"trim", text("eave-drip-edge")},
                        {"lap", inches(1.9375)},
                        {"deck_width", inches(1.9375)},
                        {"face_height", inches(0.1875)},
                        {"fastener_spacing", inches(12.0625)}};
        QCOMPARE(found("irc-flashing", bad, "IRC R905.2.8.5"), std::size_t{4});
        // International Building Code 1507.2.8.3, quoted at professionalroofing.net 06-01-2019/4466: 1-1/2
        // in.
        Facts lowFace = good;
        QCOMPARE(found("ibc-flashing", lowFace, "IBC 1507.2.8.3"), std::size_t{0});
        lowFace["face_height"] = inches(1.4375);
        QCOMPARE(found("ibc-flashing", lowFace, "IBC 1507.2.8.3"), std::size_t{1});
    }
    // IRC R903.2.2, quoted at inspectionnews.net: more than 30 in wide parallel to the ridge.
    void cricket()
    {
        const auto atWidth = [](double width, bool cricket) {
            return found("irc-flashing", {{"width", inches(width)}, {"cricket", cricket}}, "IRC R903.2.2");
        };
        QCOMPARE(atWidth(30.0, false), std::size_t{0});
        QCOMPARE(atWidth(30.1, false), std::size_t{1});
        QCOMPARE(atWidth(30.1, true), std::size_t{0});
    }
    // IRC R903.2.1, quoted at professionalroofing.net 11-01-2017/4120: 0.019 in, and the decimal governs.
    // 26 gauge: manufacturers' standard 0.0179, galvanised 0.0217 (greaseralley.com, sheet metal gauge
    // chart).
    void thicknessNotGaugeDecides()
    {
        const auto atThickness = [](double thickness) {
            return found("irc-flashing", {{"run_kind", text("eave")}, {"thickness", inches(thickness)}},
                         "IRC R903.2.1");
        };
        QCOMPARE(atThickness(0.0179), std::size_t{1});
        QCOMPARE(atThickness(0.0189), std::size_t{1});
        QCOMPARE(atThickness(0.0190), std::size_t{0});
        QCOMPARE(atThickness(0.0217), std::size_t{0});
    }
    // IRC R905.2.8.2, read at lf.yelmwa.gov document 3550681: 24 in; thicknesses of the table, quoted at
    // professionalroofing.net 11-01-2017/4120.
    void valleys()
    {
        const auto valley = [](const char* metal, double thickness, double girth) {
            const Facts facts{{"run_kind", text("valley")},
                              {"metal", text(metal)},
                              {"thickness", inches(thickness)},
                              {"girth", inches(girth)}};
            return found("irc-flashing", facts, "IRC R905.2.8.2") +
                   found("irc-flashing", facts, "IRC Table R905.2.8.2");
        };
        QCOMPARE(valley("copper", 0.0216, 24), std::size_t{0});
        QCOMPARE(valley("copper", 0.0215, 23.9), std::size_t{2});
        QCOMPARE(valley("aluminium-3105", 0.024, 24), std::size_t{0});
        QCOMPARE(valley("aluminium-3105", 0.019, 24), std::size_t{1});
        QCOMPARE(valley("zinc", 0.027, 24), std::size_t{0});
        QCOMPARE(valley("galvanised-steel", 0.0178, 24), std::size_t{1});
    }
    // IRC R905.2.8.3, International Residential Code 2018 page 462: 4 in high and 4 in wide.
    void sidewalls()
    {
        Facts facts{{"run_kind", text("sidewall")},
                    {"trim", text("step-flashing")},
                    {"wall_height", inches(4)},
                    {"roof_width", inches(4)}};
        QCOMPARE(found("irc-flashing", facts, "IRC R905.2.8.3"), std::size_t{0});
        facts["roof_width"] = inches(3.9);
        QCOMPARE(found("irc-flashing", facts, "IRC R905.2.8.3"), std::size_t{1});
    }
    // UFGS 07600 3.1.10 and 3.1.26, ufgscriteriadocreport.tpub.com/07600: 40 ft copper and stainless, 32 ft
    // aluminium, 12 ft aluminium gravel stops and fascias.
    void movementJoints()
    {
        const auto without = [](const char* metal, const char* kind, int feet, int thousandths) {
            const Facts facts{{"metal", text(metal)},
                              {"run_kind", text(kind)},
                              {"joint_interval", Length::feet(feet) + Length::thousandths(thousandths)}};
            return found("ufgs-sheet-metal", facts, "UFGS 07600 3.1.10") +
                   found("ufgs-sheet-metal", facts, "UFGS 07600 3.1.26");
        };
        QCOMPARE(without("copper", "eave", 40, 0), std::size_t{0});
        QCOMPARE(without("copper", "eave", 40, 1), std::size_t{1});
        QCOMPARE(without("aluminium-3105", "eave", 32, 0), std::size_t{0});
        QCOMPARE(without("aluminium-3105", "eave", 32, 1), std::size_t{1});
        QCOMPARE(without("aluminium-3105", "fascia", 12, 1), std::size_t{1});
        QCOMPARE(without("galvanised-steel", "eave", 400, 0), std::size_t{0});
    }
    // Copper in Architecture Design Handbook A4050, Table 9.7A (copper.org, gravel_stops.html): highest
    // fascia by velocity pressure 10-20 / 21-30 / 31-45 lb/sq ft.
    void copperFascias()
    {
        struct Row {
            const char* gauge;
            std::int64_t pressure;
            double most;
        };
        for (const Row& row : {Row{"16 oz", 20, 8}, Row{"16 oz", 21, 6}, Row{"16 oz", 31, 4},
                               Row{"20 oz", 20, 10}, Row{"20 oz", 30, 8}, Row{"20 oz", 45, 6},
                               Row{"24 oz", 30, 10}, Row{"24 oz", 45, 8}, Row{"32 oz", 45, 10}}) {
            Facts facts{{"metal", text("copper")},
                        {"gauge", text(row.gauge)},
                        {"run_kind", text("fascia")},
                        {"velocity_pressure_psf", row.pressure},
                        {"face_height", inches(row.most)}};
            QCOMPARE(found("cda-copper", facts, "CDA A4050 Table 9.7A"), std::size_t{0});
            facts["face_height"] = inches(row.most + 0.0625);
            QVERIFY(found("cda-copper", facts, "CDA A4050 Table 9.7A") >= 1);
        }
    }
    // UFGS 07600 (ufgscriteriadocreport.tpub.com/07600): 3.1.4 cleats at 12 in on sheets from 18 in; 3.1.6
    // unsoldered laps 3 in; 3.1.11 base flashing 8 in up the wall; 3.1.12 counterflashing 2 in into masonry,
    // turned up 1/4 in; 3.1.15 nails at 3 in, hooked edge 3/4 in; 3.1.16 drip edge nailed at 10 in, 3 in
    // back.
    void theGuideSpecification()
    {
        const auto at = [](const char* number, Facts facts) {
            return found("ufgs-sheet-metal", facts, std::string("UFGS 07600 ") + number);
        };
        QCOMPARE(at("3.1.4", {{"girth", inches(18)}, {"cleat_spacing", inches(12)}}), std::size_t{0});
        QCOMPARE(at("3.1.4", {{"girth", inches(18)}, {"cleat_spacing", inches(12.1)}}), std::size_t{1});
        QCOMPARE(at("3.1.4", {{"girth", inches(17.9)}, {"cleat_spacing", inches(12.1)}}), std::size_t{0});
        const Facts lapped{{"lap_sealed", false}, {"trim", text("ridge-cap")}, {"lap", inches(2.9)}};
        QCOMPARE(at("3.1.6", lapped), std::size_t{1});
        const Facts steps{{"lap_sealed", false}, {"trim", text("step-flashing")}, {"lap", inches(2)}};
        QCOMPARE(at("3.1.6", steps), std::size_t{0});
        const Facts base{{"trim", text("headwall-apron")},
                         {"wall_height", inches(7.9)},
                         {"roof_width", inches(4)},
                         {"lap", inches(3)}};
        QCOMPARE(at("3.1.11", base), std::size_t{1});
        const Facts counter{
            {"trim", text("counterflashing")}, {"masonry_depth", inches(2)}, {"leg.turn_up", inches(0.2)}};
        QCOMPARE(at("3.1.12", counter), std::size_t{1});
        const Facts stop{{"run_kind", text("gravel_edge")},
                         {"fastener_spacing", inches(3)},
                         {"fastener_rows", std::int64_t{2}},
                         {"leg.kick", inches(0.7)}};
        QCOMPARE(at("3.1.15", stop), std::size_t{1});
        const Facts drip{{"trim", text("rake-drip-edge")},
                         {"fastener_spacing", inches(10.1)},
                         {"deck_width", inches(3.1)}};
        QCOMPARE(at("3.1.16", drip), std::size_t{2});
    }
    // SMACNA, Architectural Sheet Metal Manual, 5th edition, quoted in Snips 85054: cover 4 in, base 10 in up
    // the wall, joints lapped 4 in. ARCA TP-8.2 (arcaonline.ca/node/89): aluminium 0.021 to 0.044 in, copper
    // 16 to 20 oz, coated steel from 0.50 mm, stainless from 0.36 mm, faces over 10 in divided. New Zealand
    // code of practice (metalroofing.org.nz): end laps 100 mm sealed, 150 mm not; ridge cover 130 mm. DIN
    // 18339, quoted at nedzink.com: zinc 8 m at copings and roof edges, 6 m at eaves.
    void tradeManuals()
    {
        const auto at = [](const std::string& number, Facts facts) {
            return found("trade-manuals", facts, number);
        };
        const auto thick = [&](const char* metal, double millimetres) {
            return at("ARCA TP-8.2", {{"metal", text(metal)},
                                      {"thickness", Length::nanometres(std::llround(millimetres * 1e6))}});
        };
        QCOMPARE(at("SMACNA counterflashing", {{"trim", text("counterflashing")}, {"leg.face", inches(3.9)}}),
                 std::size_t{1});
        QCOMPARE(
            at("SMACNA base flashing", {{"trim", text("sidewall-flashing")}, {"wall_height", inches(10)}}),
            std::size_t{0});
        QCOMPARE(thick("aluminium-3105", 0.019 * 25.4), std::size_t{1});
        QCOMPARE(thick("aluminium-3105", 0.032 * 25.4), std::size_t{0});
        QCOMPARE(thick("aluminium-3105", 0.050 * 25.4), std::size_t{1});
        QCOMPARE(thick("copper", 0.0216 * 25.4), std::size_t{0});
        QCOMPARE(thick("copper", 0.0323 * 25.4), std::size_t{1});
        QCOMPARE(thick("galvanised-steel", 0.49), std::size_t{1});
        QCOMPARE(thick("stainless-304", 0.36), std::size_t{0});
        QCOMPARE(at("ARCA TP-8.2", {{"run_kind", text("fascia")}, {"face_height", inches(10.1)}}),
                 std::size_t{1});
        for (const bool sealed : {true, false})
            for (const int millimetres : {99, 100, 149, 150})
                QCOMPARE(at("NZMRM CoP flashing laps", {{"run_kind", text("ridge")},
                                                        {"lap_sealed", sealed},
                                                        {"lap", Length::millimetres(millimetres)}}),
                         std::size_t{millimetres < (sealed ? 100 : 150) ? 1u : 0u});
        const auto zinc = [&](const char* kind, int millimetres) {
            return at("DIN 18339", {{"metal", text("zinc")},
                                    {"run_kind", text(kind)},
                                    {"joint_interval", Length::millimetres(millimetres)}});
        };
        QCOMPARE(zinc("parapet", 8'000), std::size_t{0});
        QCOMPARE(zinc("parapet", 8'001), std::size_t{1});
        QCOMPARE(zinc("eave", 6'001), std::size_t{1});
    }
    void namesOfFactsAreChecked()
    {
        const std::string rules =
            R"({"format":"lapwright/rules","version":1,"id":"a","name":"a","caution":"c",)"
            R"("clauses":[{"number":"1","source":"s","statement":"t","demands":[CONDITION]}]})";
        const auto error = [&rules](const char* condition) {
            std::string filled = rules;
            const auto read = documents::readRules(filled.replace(filled.find("CONDITION"), 9, condition));
            return read ? std::string("none") : read.errors().front().sentence();
        };
        QCOMPARE(error(R"({"fact":"lap","is":"at_least","value":50.8})"), std::string("none"));
        QCOMPARE(error(R"({"fact":"lapp","is":"at_least","value":50.8})"),
                 std::string("/clauses/0/demands/0/fact: found lapp, expected the name of a fact"));
        QCOMPARE(error(R"({"fact":"lap","is":"at_least","value":"2 in"})"),
                 std::string("/clauses/0/demands/0/value: found \"2 in\", expected a number of millimetres"));
        QCOMPARE(error(R"({"fact":"metal","is":"less","value":"zinc"})"),
                 std::string(
                     "/clauses/0/demands/0/is: found a comparison by size, expected equal, not_equal or in"));
        QCOMPARE(error(R"({"fact":"metal","is":"in","value":"zinc"})"),
                 std::string("/clauses/0/demands/0: found no member \"values\", expected one"));
    }
};

QTEST_APPLESS_MAIN(RuleSetsTest)
#include "tst_rule_sets.moc"
