// Guards: an order comes back from its file as it went in, derivations and unknown members at every level
// included; its words stand once; orders of a hundred thousand runs stay within what is read; references that
// lead nowhere and words without end are refused with their place.
#include "documents/formulas.h"
#include "documents/profile_names.h"
#include "pieces/why.h"
#include "shipped_orders.h"
#include "unknown_members.h"

#include <QtTest>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

const pieces::Catalogue& catalogue()
{
    static const pieces::Catalogue shipped = texts::shippedCatalogue();
    return shipped;
}

/// One gable house: eaves that meet in mitres, and a rake with the level run under it.
void addHouse(std::size_t number, site::Job& job)
{
    const std::string name = "H" + std::to_string(number);
    const auto run = [&](const char* id, site::RunKind kind, const char* trim, Length length) {
        site::Run made;
        made.id = name + id;
        made.kind = kind;
        made.lengths = {{length, ""}};
        made.slope = Slope::twelfths(static_cast<std::int64_t>(3 + number % 8));
        made.trims.emplace_back();
        made.trims.front().trim = trim;
        return made;
    };
    const Length front =
        Length::feet(20) + Length::sixtyFourths(static_cast<std::int64_t>(number % 4'999) * 4);
    site::Chain eaves;
    eaves.id = name + " eaves";
    eaves.closed = true;
    for (const char* id : {"E1", "E2", "E3", "E4"}) {
        eaves.runs.push_back(run(id, site::RunKind::Eave, "eave-drip-edge", front));
        eaves.runs.back().start = eaves.runs.back().end = site::EndKind::Mitre;
        eaves.corners.emplace_back(site::SquareOutside());
    }
    job.chains.push_back(std::move(eaves));
    site::Chain rake;
    rake.id = name + " rake";
    rake.runs = {run("R1", site::RunKind::Rake, "rake-drip-edge", Length::feet(12))};
    rake.runs.front().levelRun = site::Measured{Length::feet(10), "10'"};
    job.chains.push_back(std::move(rake));
}

OrderDocument houses(std::size_t count)
{
    site::Job job;
    job.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e21";
    job.name = "Houses";
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    job.ruleSets = {"irc-flashing"};
    for (std::size_t house = 1; house <= count; ++house)
        addHouse(house, job);
    return texts::orderOf(job, catalogue());
}

Json jsonOf(const OrderDocument& order)
{
    return Json::parse(writeOrder(order));
}

std::string firstError(const Json& json)
{
    const auto order = readOrder(json.dump());
    return order ? "no error" : order.errors().front().sentence();
}

std::size_t valuesOf(const Json& json)
{
    std::size_t values = 1;
    if (json.is_structured())
        for (const Json& inner : json)
            values += valuesOf(inner);
    return values;
}

/// The formulas in another sequence, one of them twice and one that nothing refers to.
void shuffleFormulas(Json& order)
{
    Json& formulas = order["formulas"];
    const std::size_t count = formulas.size();
    std::reverse(formulas.begin(), formulas.end());
    formulas.push_back(formulas.front());
    formulas.push_back({{"text", "nobody asks"}, {"why", "kept"}});
    const std::function<void(Json&)> renumber = [&](Json& json) {
        if (json.is_object() && json.contains("formula"))
            json["formula"] = count - 1 - json["formula"].get<std::size_t>();
        if (json.is_structured())
            for (Json& inner : json)
                renumber(inner);
    };
    for (const char* list : {"profiles", "runs", "accessories"})
        renumber(order[list]);
}

} // namespace

class OrderDocumentTest : public QObject {
    Q_OBJECT
private slots:
    void comesBackAsItWent()
    {
        const OrderDocument order = houses(3);
        QVERIFY(!rules::anyBlocks(order.value.findings));
        QVERIFY(order.value.pieces.size() >= 30);
        for (const Layout layout : {Layout::Canonical, Layout::Readable}) {
            const std::string text = writeOrder(order, layout);
            const auto again = readOrder(text);
            QVERIFY2(again.ok(), again.ok() ? "" : again.errors().front().sentence().c_str());
            QVERIFY(again->extras == order.extras);
            QCOMPARE(writeOrder(*again, layout), text);
            QVERIFY(again->value.runs.front().derivations == order.value.runs.front().derivations);
            for (const char* mark : {"H1E1.1", "H2R1.1", "H3E4.2"}) {
                const auto why = pieces::explain(order.value, mark);
                QVERIFY(why.has_value());
                QCOMPARE(pieces::writeDerivation(*pieces::explain(again->value, mark), {}),
                         pieces::writeDerivation(*why, {}));
            }
        }
        QVERIFY(jsonOf(order) == Json::parse(writeOrder(order, Layout::Canonical)));
    }
    void profilesAreNamedWithoutReadingTheRest()
    {
        const OrderDocument order = houses(3);
        std::vector<std::pair<std::string, std::string>> expected;
        for (const pieces::OrderedProfile& profile : order.value.profiles)
            expected.emplace_back(profile.id, profile.profile.name);
        QVERIFY(expected.size() > 3);
        for (const Layout layout : {Layout::Canonical, Layout::Readable})
            QVERIFY(profileNames(writeOrder(order, layout)).value() == expected);
        Json json = jsonOf(order);
        int serial = 0;
        QVERIFY(unknown::add(json, serial) > 200);
        QVERIFY(profileNames(json.dump()).value() == expected);
        json["profiles"] = Json::array();
        QVERIFY(profileNames(json.dump()).value().empty());
        const std::string text = writeOrder(order);
        QVERIFY(!profileNames(text.substr(0, text.find("\"profiles\"") + 40)).ok());
        QVERIFY(!profileNames("").ok());
    }
    void valuesOfEveryKindComeBack()
    {
        OrderDocument order = houses(1);
        const Phrase all{"{a}{b}{c}{d}{e}{f}{g}",
                         {{"a", std::string("E1")},
                          {"b", Length::inches(12)},
                          {"c", Angle::degrees(22.5)},
                          {"d", Slope::twelfths(6)},
                          {"e", std::int64_t{3}},
                          {"f", 0.44},
                          {"g", Mass::kilograms(12.34)}}};
        order.value.findings.push_back({rules::Weight::Informs, "test.kinds", "", all, {}, {}});
        order.value.runs.front().derivations.push_back({all, "", {}});
        const auto again = readOrder(writeOrder(order));
        QVERIFY2(again.ok(), again.ok() ? "" : again.errors().front().sentence().c_str());
        const std::string said = say(all, {});
        QCOMPARE(say(again->value.findings.back().statement, {}), said);
        QCOMPARE(say(again->value.runs.front().derivations.back().statement, {}), said);
        for (const auto& phrase :
             {again->value.findings.back().statement, again->value.runs.front().derivations.back().statement})
            for (std::size_t at = 0; at < all.values.size(); ++at)
                QCOMPARE(phrase.values.at(at).second.index(), all.values[at].second.index());
    }
    void unknownMembersStayAtEveryLevel()
    {
        Json json = jsonOf(houses(2));
        int serial = 0;
        const std::size_t added = unknown::add(json, serial);
        QVERIFY(added > 200);
        const auto order = readOrder(json.dump());
        QVERIFY2(order.ok(), order.ok() ? "" : order.errors().front().sentence().c_str());
        const std::string once = writeOrder(*order);
        QVERIFY(unknown::contains(Json::parse(once), json));
        QCOMPARE(writeOrder(*readOrder(once)), once);
        QCOMPARE(revisionHash(*readOrder(once)), revisionHash(*order));
    }
    void unknownMembersStayWithTheirPieceAndFormula()
    {
        Json json = jsonOf(houses(1));
        json["pieces"][2]["chalk"] = "see sketch";
        json["formulas"][1]["in_german"] = "Sparren";
        const std::string mark = json["pieces"][2]["mark"], words = json["formulas"][1]["text"];
        auto order = readOrder(json.dump());
        QVERIFY(order.ok());
        std::rotate(order->value.pieces.begin(), order->value.pieces.begin() + 1, order->value.pieces.end());
        Derivation first{{"{n} of a kind", {{"n", std::int64_t{2}}}}, {}, {}};
        order->value.profiles.front().derivations.insert(order->value.profiles.front().derivations.begin(),
                                                         first);
        const Json again = jsonOf(*order);
        QCOMPARE(again["pieces"][1]["mark"].get<std::string>(), mark);
        QCOMPARE(again["pieces"][1]["chalk"].get<std::string>(), std::string("see sketch"));
        QCOMPARE(again["formulas"][1]["text"].get<std::string>(), words);
        QCOMPARE(again["formulas"][1]["in_german"].get<std::string>(), std::string("Sparren"));
        QCOMPARE(again["formulas"].back()["text"].get<std::string>(), std::string("{n} of a kind"));
    }
    void anotherProgramsFormulasKeepTheirPlaces()
    {
        const OrderDocument order = houses(2);
        Json json = jsonOf(order);
        shuffleFormulas(json);
        const auto again = readOrder(json.dump());
        QVERIFY2(again.ok(), again.ok() ? "" : again.errors().front().sentence().c_str());
        QVERIFY(again->value.runs.front().derivations == order.value.runs.front().derivations);
        QVERIFY(jsonOf(*again)["formulas"] == json["formulas"]);
        QCOMPARE(writeOrder(*readOrder(writeOrder(*again))), writeOrder(*again));
    }
    void wordsStandOnce()
    {
        const Json few = jsonOf(houses(8)), many = jsonOf(houses(80));
        QCOMPARE(many["formulas"].size(), few["formulas"].size());
        QVERIFY(many["formulas"].size() > 5);
    }
    /// Bytes and values grow with the runs and with nothing else, so what a thousand runs take says what a
    /// hundred thousand take; the benchmark reads such an order back.
    void aHundredThousandRunsAreWithinWhatIsRead()
    {
        constexpr std::size_t houseCount = 200, runs = houseCount * 5, many = 100'000;
        const std::string text = writeOrder(houses(houseCount));
        const Limits limits;
        const std::size_t values = valuesOf(Json::parse(text));
        qInfo("%zu bytes and %zu values a run", text.size() / runs, values / runs);
        QVERIFY(text.size() / runs * many < limits.bytes);
        QVERIFY(values / runs * many < limits.values);
    }
    void referencesThatLeadNowhereAreNamed()
    {
        const Json sound = jsonOf(houses(1));
        const std::size_t count = sound["formulas"].size();
        const Json::json_pointer first("/runs/0/derivations/0");
        Json json = sound;
        json[first]["formula"] = count;
        QCOMPARE(firstError(json), "/runs/0/derivations/0/formula: found " + std::to_string(count) +
                                       ", expected the position of a formula, counted from 0; there are " +
                                       std::to_string(count));
        json = sound;
        json[first]["values"].push_back(3);
        QVERIFY(firstError(json).find("/runs/0/derivations/0/values: found ") == 0);
        json = sound;
        json[first]["values"][0] = "a foot";
        QCOMPARE(firstError(json), std::string("/runs/0/derivations/0/values/0: found \"a foot\", expected a "
                                               "number of millimetres"));
        json = sound;
        json.erase("formulas");
        QVERIFY(firstError(json).find("there are 0") != std::string::npos);
        json = sound;
        json["pieces"][0]["profile"] = 99;
        QVERIFY(firstError(json).find("/pieces/0/profile: found 99") == 0);
        json = sound;
        json["pieces"][1]["mark"] = json["pieces"][0]["mark"];
        QVERIFY(firstError(json).find("/pieces/1/mark: found a mark used before") == 0);
        json = sound;
        json["revision"] = 2;
        QVERIFY(firstError(json).find("/previous_hash") == 0);
    }
    void wordsWithoutEndAreRefused()
    {
        const Json members = {{"formulas", {{{"text", std::string(1'000, 'x')}}}}};
        Reading reading;
        FormulaReader formulas(members, reading.errors, 10'000);
        reading.formulas = &formulas;
        std::vector<Derivation> read;
        get(Json::parse(R"([{"formula":0},{"formula":0,"because":[{"formula":0}]}])"), read, reading);
        QVERIFY(reading.errors.empty());
        QCOMPARE(read[1].because.front().statement.text.size(), std::size_t{1'000});
        const Json many = Json(std::vector<Json>(8, Json{{"formula", 0}}));
        get(many, read, reading);
        QVERIFY(!reading.errors.empty());
        QCOMPARE(reading.errors.front().sentence(),
                 std::string("/7: found derivations of more than 10000 characters, expected fewer"));
    }
    void deepDerivationsAreRefusedAndNeverCrash()
    {
        Json json = jsonOf(houses(1));
        std::string deep = "{\"formula\":0}";
        for (int level = 0; level < 10'000; ++level)
            deep = "{\"because\":[" + deep + "]}";
        std::string text = json.dump();
        const std::string marker = "\"derivations\":[";
        text.insert(text.find(marker) + marker.size(), deep + ",");
        const auto order = readOrder(text);
        QVERIFY(!order.ok());
        QVERIFY(order.errors().front().sentence().find("64 deep") != std::string::npos);
    }
};

QTEST_APPLESS_MAIN(OrderDocumentTest)
#include "tst_order_document.moc"
