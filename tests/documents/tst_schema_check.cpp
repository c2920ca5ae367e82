// Guards: the schema check agrees with a general validator on sound and on mutated documents of every kind.
#include "documents/embedded_schemas.h"
#include "documents/schema.h"
#include "mutator.h"
#include "sound_documents.h"

#include <QtTest>

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <set>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

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

} // namespace

class SchemaCheckTest : public QObject {
    Q_OBJECT
private slots:
    // The schema check is our own because a general validator is too slow for a house of 100 000 runs; here
    // the two must agree.
    void schemaCheckAgreesWithAGeneralValidator()
    {
        std::size_t agreed = 0, allowed = 0;
        unsigned seed = 100'000;
        for (const texts::Case& sound : texts::cases()) {
            const auto& schema = Schema::embedded(sound.kind->schemaFile);
            QVERIFY2(schema.ok(), schema.ok() ? "" : schema.errors().front().sentence().c_str());
            const Json bundled = Bundle().of(std::string(sound.kind->schemaFile));
            valijson::Schema general;
            valijson::SchemaParser parser;
            parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(bundled), general);
            valijson::Validator validator;
            const Json original = Json::parse(sound.text);
            for (std::size_t round = 0; round < texts::rounds(25); ++round) {
                texts::Mutator mutator(seed++);
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

QTEST_APPLESS_MAIN(SchemaCheckTest)
#include "tst_schema_check.moc"
