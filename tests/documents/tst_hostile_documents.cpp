// Guards: hostile and damaged documents cost an error that says where and what was expected, never a crash;
// bounds on size, depth and number of values; the schema check agrees with a general validator.
#include "documents/catalogue.h"
#include "documents/cut.h"
#include "documents/embedded_schemas.h"
#include "documents/envelope.h"
#include "documents/job.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/order.h"
#include "documents/profile.h"
#include "documents/rates.h"
#include "documents/rules.h"
#include "documents/schedule.h"
#include "documents/schema.h"
#include "documents/shop.h"
#include "documents/trim.h"
#include "shipped_orders.h"

#include <QtTest>

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <cstdlib>
#include <random>
#include <set>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

/// One kind of document: its schema, a sound text, and how it is read.
struct Case {
    const Kind* kind;
    std::string text;
    std::vector<Error> (*errors)(std::string_view);
};

template <auto read>
std::vector<Error> errorsOf(std::string_view text)
{
    const auto document = read(text);
    return document.ok() ? std::vector<Error>() : document.errors();
}

std::string invented()
{
    return writeOrder(
        texts::orderOf(readJob(texts::ofCase("cottage.job.json"))->value, texts::shippedCatalogue()));
}

std::string firstOf(const char* folder)
{
    const auto all = texts::ofFolder(folder);
    return all.empty() ? std::string() : all.front().text;
}

std::vector<Case> cases()
{
    return {{&kinds::job, texts::ofCase("cottage.job.json"), errorsOf<readJob>},
            {&kinds::order, invented(), errorsOf<readOrder>},
            {&kinds::profile, texts::ofCase("gutter-hook.profile.json"), errorsOf<readProfile>},
            {&kinds::metal, firstOf("metal-library"), errorsOf<readMetal>},
            {&kinds::trim, firstOf("trim-library"), errorsOf<readTrim>},
            {&kinds::machine, firstOf("machines"), errorsOf<readMachine>},
            {&kinds::rules, firstOf("rule-sets"), errorsOf<readRules>},
            {&kinds::stock, texts::ofCase("shelves.stock.json"), errorsOf<readStock>},
            {&kinds::floor, texts::ofCase("tinbridge.floor.json"), errorsOf<readFloor>},
            {&kinds::schedule, texts::ofCase("two-houses.schedule.json"), errorsOf<readSchedule>},
            {&kinds::load, texts::ofCase("first.load.json"), errorsOf<readLoad>},
            {&kinds::receipt, texts::ofCase("first.receipt.json"), errorsOf<readReceipt>},
            {&kinds::rates, texts::ofCase("shop.rates.json"), errorsOf<readRates>},
            {&kinds::cutProblem, texts::ofCase("two-girths.cut-problem.json"), errorsOf<readCutProblem>},
            {&kinds::cutPlan,
             texts::read(QString::fromStdString(texts::released() + "/two-girths.cut-plan.json")),
             errorsOf<readCutPlan>}};
}

std::string firstError(std::string_view text, const Limits& limits = {})
{
    const auto json = parseJson(text, limits);
    return json ? "no error" : json.errors().front().sentence();
}

/// Changes one thing somewhere in a document.
class Mutator {
public:
    explicit Mutator(unsigned seed) : random_(seed) {}

    void mutate(Json& root)
    {
        std::vector<Json*> places;
        collect(root, places);
        Json& place = *places[below(places.size())];
        switch (below(6)) {
        case 0:
            return remove(place);
        case 1:
            if (place.is_object()) {
                place["unheard of"] = value();
                return;
            }
            break;
        case 2:
            if (place.is_array() && !place.empty()) {
                place.push_back(place[below(place.size())]);
                return;
            }
            break;
        case 3:
            if (place.is_string() && !place.get_ref<std::string&>().empty()) {
                std::string& text = place.get_ref<std::string&>();
                text[below(text.size())] = static_cast<char>('!' + below(90));
                return;
            }
            break;
        case 4:
            if (place.is_number()) {
                place = place.get<double>() * 1.5 - 20.25;
                return;
            }
            break;
        default:
            break;
        }
        if (&place != &root)
            place = value();
    }

private:
    std::size_t below(std::size_t count)
    {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
    }

    static void collect(Json& place, std::vector<Json*>& places)
    {
        places.push_back(&place);
        if (place.is_structured())
            for (Json& inner : place)
                collect(inner, places);
    }
    void remove(Json& place)
    {
        if (!place.is_structured() || place.empty())
            return;
        auto entry = place.begin();
        std::advance(entry, static_cast<std::ptrdiff_t>(below(place.size())));
        place.erase(entry);
    }
    Json value()
    {
        switch (below(14)) {
        case 0:
            return nullptr;
        case 1:
            return true;
        case 2:
            return -1;
        case 3:
            return 0.5;
        case 4:
            return std::int64_t{1'000'000'000};
        case 5:
            return 1e300;
        case 6:
            return "";
        case 7:
            return std::string(5'000, 'x');
        case 8:
            return Json::array();
        case 9:
            return Json::object();
        case 10:
            return Json::array({Json::object({{"id", "a"}}), 3});
        case 11:
            return std::numeric_limits<std::uint64_t>::max();
        case 12:
            return "../../etc/passwd";
        default:
            return 12;
        }
    }

    std::mt19937 random_;
};

/// A schema with all it refers to in one text, as a general validator takes it.
class Bundle {
public:
    Json of(const std::string& file)
    {
        Json root = textOf(file);
        rewrite(root, file, true);
        while (!waiting_.empty()) {
            const std::string next = *waiting_.begin();
            waiting_.erase(waiting_.begin());
            Json other = textOf(next);
            for (auto& [name, schema] : other["definitions"].items()) {
                rewrite(schema, next, false);
                root["definitions"][next + ":" + name] = schema;
            }
        }
        root.erase("$id");
        return root;
    }

private:
    static Json textOf(const std::string& file)
    {
        for (std::size_t index = 0; index < embeddedSchemaCount(); ++index)
            if (firstEmbeddedSchema()[index].file == file)
                return Json::parse(firstEmbeddedSchema()[index].text);
        return nullptr;
    }
    void rewrite(Json& schema, const std::string& file, bool root)
    {
        if (!schema.is_structured())
            return;
        for (auto& [name, value] : schema.items()) {
            if (name == "$ref" && value.is_string()) {
                const std::string reference = value.get<std::string>();
                const std::size_t hash = reference.find('#');
                const std::string target = hash == 0 ? file : reference.substr(0, hash);
                if (hash != 0 && done_.insert(target).second)
                    waiting_.insert(target);
                if (hash != 0 || !root)
                    value = "#/definitions/" + target + ":" + reference.substr(reference.rfind('/') + 1);
            } else {
                rewrite(value, file, root);
            }
        }
    }

    std::set<std::string> waiting_, done_;
};

std::size_t rounds(std::size_t usual)
{
    return std::getenv("LAPWRIGHT_LONG") != nullptr ? usual * 20 : usual;
}

} // namespace

class HostileDocumentsTest : public QObject {
    Q_OBJECT
private slots:
    void soundDocumentsAreRead()
    {
        for (const Case& sound : cases()) {
            const auto errors = sound.errors(sound.text);
            QVERIFY2(errors.empty(), errors.empty() ? "" : errors.front().sentence().c_str());
        }
    }
    void everyShippedFileIsRead()
    {
        std::size_t files = 0;
        const auto check = [&files](const char* folder, std::vector<Error> (*errors)(std::string_view)) {
            for (const texts::Text& text : texts::ofFolder(folder)) {
                for (const Error& error : errors(text.text))
                    qWarning("%s", error.within(text.file).sentence().c_str());
                if (!errors(text.text).empty())
                    return false;
                ++files;
            }
            return true;
        };
        QVERIFY(check("metal-library", errorsOf<readMetal>));
        QVERIFY(check("trim-library", errorsOf<readTrim>));
        QVERIFY(check("machines", errorsOf<readMachine>));
        QVERIFY(check("rule-sets", errorsOf<readRules>));
        qInfo("shipped files read: %zu", files);
        QVERIFY(files >= 30);
    }
    void twoFilesWithOneIdAreNamed()
    {
        const std::string metal = firstOf("metal-library");
        CatalogueBuilder builder;
        builder.add("shop/one.json", metal).add("shop/two.json", metal).add("shop/three.json", "{");
        const auto built = builder.build();
        QVERIFY(!built.ok());
        QCOMPARE(built.errors().size(), std::size_t{2});
        QVERIFY(built.errors()[0].sentence().find("as in shop/one.json") != std::string::npos);
        QCOMPARE(built.errors()[0].place, std::string("shop/two.json/id"));
        QCOMPARE(built.errors()[1].place, std::string("shop/three.json: line 1, column 2"));
    }
    void textThatIsNoJson()
    {
        QCOMPARE(
            firstError(""),
            std::string("line 1, column 1: found the end of the text, expected JSON (RFC 8259) in UTF-8"));
        QCOMPARE(firstError("{\"a\":1,\n \"a\":2}").substr(0, 26), std::string("line 2, column 4, /a: foun"));
        for (const char* text : {"{\"a\":NaN}", "{\"a\":Infinity}", "{\"a\":1e999}", "{\"a\":01}", "{a:1}",
                                 "{\"a\":1}x", "{\"a\":\"\\ud800\"}", "{\"a\":\"\xff\"}",
                                 "{\"a\":\"\xc0\xaf\"}", "// no\n{}", "[1,]", "{\"a\":\"\n\"}", "\"open"})
            QVERIFY2(firstError(text).find("expected JSON") != std::string::npos, text);
    }
    void depthSizeAndNumberAreBounded()
    {
        const std::string deep = std::string(1'000'000, '[') + std::string(1'000'000, ']');
        QVERIFY(firstError(deep).find("more than 64 deep") != std::string::npos);
        const std::string allowed = std::string(64, '[') + std::string(64, ']');
        QCOMPARE(firstError(allowed), std::string("no error"));
        QVERIFY(firstError("[" + allowed + "]").find("deep") != std::string::npos);
        Limits few;
        few.values = 5;
        QCOMPARE(firstError("[1,2,3,4]", few), std::string("no error"));
        QVERIFY(firstError("[1,2,3,4,5]", few).find("more than 5 values") != std::string::npos);
        few.bytes = 4;
        QCOMPARE(firstError("[1,2]", few), std::string("found 5 bytes, expected at most 4 bytes"));
    }
    void oneLongTextNumberOrGapIsRefusedUnread_data()
    {
        QTest::addColumn<QByteArray>("open");
        QTest::addColumn<char>("fill");
        QTest::addColumn<QByteArray>("close");
        QTest::addColumn<QString>("place");
        QTest::newRow("text") << QByteArray("{\"a\": 1,\n\"") << 'x' << QByteArray("\": 2}")
                              << "line 2, column 1";
        QTest::newRow("escaped text")
            << QByteArray("[\"") << '\\' << QByteArray("\\\"\"]") << "line 1, column 2";
        QTest::newRow("text without an end") << QByteArray("\"") << '[' << QByteArray() << "line 1, column 1";
        QTest::newRow("number") << QByteArray("[1,") << '1' << QByteArray("]") << "line 1, column 4";
        QTest::newRow("gap") << QByteArray("[1,") << ' ' << QByteArray("2]") << "line 1, column 4";
    }
    void oneLongTextNumberOrGapIsRefusedUnread()
    {
        QFETCH(QByteArray, open);
        QFETCH(char, fill);
        QFETCH(QByteArray, close);
        QFETCH(QString, place);
        const auto text = [&](std::size_t long_) {
            return open.toStdString() + std::string(long_, fill) + close.toStdString();
        };
        constexpr std::size_t hundredsOfMegabytes = 240'000'000;
        QCOMPARE(QString::fromStdString(firstError(text(hundredsOfMegabytes))),
                 place + ": found a text, number or gap of more than 16777216 bytes, expected a shorter one");
        Limits few;
        few.token = 20;
        QVERIFY(firstError(text(16), few).find("more than 20 bytes") == std::string::npos);
        QVERIFY(firstError(text(22), few).find("more than 20 bytes") != std::string::npos);
        QVERIFY(firstError(text(300'000'000)).find("at most 268435456 bytes") != std::string::npos);
    }
    // Nothing in a document refers to another part of it that refers on, so nothing small can unfold to
    // something large: a leg takes measures that are typed, never legs.
    void aLegThatRefersToALegIsRefused()
    {
        const Json sound = Json::parse(firstOf("trim-library"));
        QVERIFY(readTrim(sound.dump()).ok());
        for (std::size_t from = 0; from < sound["legs"].size(); ++from)
            for (const Json& to : sound["legs"]) {
                Json trim = sound;
                trim["legs"][from]["length"] = {{"plus", {{{"coefficient", 2}, {"measure", to["name"]}}}}};
                const auto errors = errorsOf<readTrim>(trim.dump());
                QCOMPARE(errors.size(), std::size_t{1});
                QVERIFY2(errors.front().place.rfind("/legs/" + std::to_string(from) + "/length", 0) == 0,
                         errors.front().sentence().c_str());
            }
        Json shared = sound;
        shared["legs"] = {{"$ref", "#/legs"}};
        QVERIFY(!readTrim(shared.dump()).ok());
    }
    void numbersAreWrittenOneWay_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("text");
        QTest::newRow("whole") << 12.0 << "12";
        QTest::newRow("negative zero") << -0.0 << "0";
        QTest::newRow("nanometre") << 3819.525001 << "3819.525001";
        QTest::newRow("tenth") << 0.1 << "0.1";
        QTest::newRow("negative") << -0.25 << "-0.25";
        QTest::newRow("tiny") << 1.76e-05 << "0.0000176";
        QTest::newRow("third") << 1.0 / 3.0 << "0.3333333333333333";
        QTest::newRow("huge") << 1e300 << "1e+300";
    }
    void numbersAreWrittenOneWay()
    {
        QFETCH(double, value);
        QFETCH(QString, text);
        std::string written;
        writeJson(Json(value), written);
        QCOMPARE(QString::fromStdString(written), text);
    }
    void textsAreWrittenAsUtf8()
    {
        std::string written;
        writeJsonText("a\"\\\n\x01 é \xff \xed\xa0\x80 \xf0\x9f\x8f\xa0", written);
        QCOMPARE(
            Json::parse(written).get<std::string>(),
            std::string("a\"\\\n\x01 é \xef\xbf\xbd \xef\xbf\xbd\xef\xbf\xbd\xef\xbf\xbd \xf0\x9f\x8f\xa0"));
    }
    void mutatedDocumentsNameWhatIsWrong()
    {
        std::size_t refused = 0, read = 0;
        unsigned seed = 1;
        for (const Case& sound : cases()) {
            const Json original = Json::parse(sound.text);
            for (std::size_t round = 0; round < rounds(60); ++round) {
                Mutator mutator(seed++);
                Json document = original;
                for (std::size_t changes = 1 + round % 3; changes > 0; --changes)
                    mutator.mutate(document);
                const auto errors = sound.errors(document.dump());
                (errors.empty() ? read : refused) += 1;
                for (const Error& error : errors)
                    QVERIFY2(!error.found.empty() && !error.expected.empty() &&
                                 error.sentence().size() < 4'000,
                             error.sentence().c_str());
            }
        }
        qInfo("mutated documents: %zu refused, %zu read", refused, read);
        QVERIFY(refused > 100 && read > 50);
    }
    void damagedTextsNeverCrash()
    {
        std::mt19937 random(7);
        std::size_t refused = 0;
        for (const Case& sound : cases()) {
            for (std::size_t round = 0; round < rounds(30); ++round) {
                std::string text = sound.text;
                const std::size_t at = random() % text.size();
                if (round % 2 == 0)
                    text.resize(at);
                else
                    text[at] = static_cast<char>(random());
                refused += sound.errors(text).empty() ? 0 : 1;
            }
        }
        qInfo("damaged texts refused: %zu", refused);
        QVERIFY(refused > 200);
    }
    void aNewerVersionOfAnyKindIsRefusedWithTheProgramThatReadsIt()
    {
        std::set<std::string_view> kinds;
        for (const Case& sound : cases()) {
            Json document = Json::parse(sound.text);
            document["version"] = sound.kind->version + 1;
            document["program"] = "7.2.1";
            document["id"] = Json::array({"what only that program understands"});
            const auto errors = sound.errors(document.dump());
            QCOMPARE(errors.size(), std::size_t{1});
            QCOMPARE(errors.front().place, std::string("/version"));
            QVERIFY(errors.front().expected.find("Lapwright 7.2.1 or later") != std::string::npos);
            document.erase("program");
            QVERIFY(sound.errors(document.dump()).front().expected.find("a later version") !=
                    std::string::npos);
            kinds.insert(sound.kind->format);
        }
        QCOMPARE(kinds.size(), embeddedSchemaCount() - 2); // all but what they share, and an item of stock
    }
    // The schema check is our own because a general validator is too slow for a house of 100 000 runs; here
    // the two must agree.
    void schemaCheckAgreesWithAGeneralValidator()
    {
        std::size_t agreed = 0, allowed = 0;
        unsigned seed = 100'000;
        for (const Case& sound : cases()) {
            const auto& schema = Schema::embedded(sound.kind->schemaFile);
            QVERIFY2(schema.ok(), schema.ok() ? "" : schema.errors().front().sentence().c_str());
            const Json bundled = Bundle().of(std::string(sound.kind->schemaFile));
            valijson::Schema general;
            valijson::SchemaParser parser;
            parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(bundled), general);
            valijson::Validator validator;
            const Json original = Json::parse(sound.text);
            for (std::size_t round = 0; round < rounds(25); ++round) {
                Mutator mutator(seed++);
                Json document = original;
                for (std::size_t changes = round % 4; changes > 0; --changes)
                    mutator.mutate(document);
                const bool ours = schema->check(document).empty();
                const bool theirs =
                    validator.validate(general, valijson::adapters::NlohmannJsonAdapter(document), nullptr);
                QVERIFY2(ours == theirs, (std::string(sound.kind->schemaFile) + " " +
                                          (ours ? "" : schema->check(document).front().sentence()) + "\n" +
                                          document.dump().substr(0, 3'000))
                                             .c_str());
                ++agreed;
                allowed += ours ? 1 : 0;
            }
        }
        qInfo("documents on which both agree: %zu, of them allowed: %zu", agreed, allowed);
        QVERIFY(allowed > 50 && agreed - allowed > 50);
    }
};

QTEST_APPLESS_MAIN(HostileDocumentsTest)
#include "tst_hostile_documents.moc"
