// Guards: hostile and damaged documents of every kind cost an error that says where and what was expected,
// never a crash; what is shipped is read, and a newer version is refused by name.
#include "documents/catalogue.h"
#include "documents/embedded_schemas.h"
#include "mutator.h"
#include "sound_documents.h"

#include <QtTest>

#include <random>
#include <set>

using namespace lapwright;
using namespace lapwright::documents;
using texts::cases, texts::errorsOf, texts::firstOf, texts::Mutator, texts::rounds;

class HostileDocumentsTest : public QObject {
    Q_OBJECT
private slots:
    void soundDocumentsAreRead()
    {
        for (const texts::Case& sound : cases()) {
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
    void mutatedDocumentsNameWhatIsWrong()
    {
        std::size_t refused = 0, read = 0;
        unsigned seed = 1;
        for (const texts::Case& sound : cases()) {
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
        for (const texts::Case& sound : cases()) {
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
        for (const texts::Case& sound : cases()) {
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
};

QTEST_APPLESS_MAIN(HostileDocumentsTest)
#include "tst_hostile_documents.moc"
