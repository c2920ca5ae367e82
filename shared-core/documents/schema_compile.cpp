#include "documents/embedded_schemas.h"
#include "documents/schema.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <mutex>

namespace lapwright::documents {
namespace {

constexpr std::array<std::pair<std::string_view, unsigned>, 7> typeNames{{
    {"null", SchemaNode::Null},
    {"boolean", SchemaNode::Boolean},
    {"integer", SchemaNode::Integer},
    {"number", SchemaNode::Integer | SchemaNode::Number},
    {"string", SchemaNode::Text},
    {"array", SchemaNode::List},
    {"object", SchemaNode::Object},
}};

unsigned typeOf(const Json& name)
{
    for (const auto& [known, type] : typeNames)
        if (name == known)
            return type;
    return 0;
}

} // namespace

/// Turns schema texts into nodes. A reference is compiled where it points to, once, so that schemas may refer
/// to themselves.
class SchemaCompiler {
public:
    Result<Schema> compile(const std::string& file)
    {
        const SchemaNode* root = follow(file + "#", "");
        if (!errors_.empty())
            return errors_;
        schema_.root_ = root;
        return std::move(schema_);
    }

private:
    SchemaNode* node()
    {
        schema_.nodes_.push_back(std::make_unique<SchemaNode>());
        return schema_.nodes_.back().get();
    }

    const SchemaNode* fail(std::string place, std::string found, std::string expected)
    {
        errors_.push_back({std::move(place), std::move(found), std::move(expected)});
        return node();
    }

    const Json* load(const std::string& file)
    {
        const auto known = files_.find(file);
        if (known != files_.end())
            return &known->second;
        const EmbeddedSchema* first = firstEmbeddedSchema();
        const EmbeddedSchema* last = first + embeddedSchemaCount();
        const auto* embedded =
            std::find_if(first, last, [&file](const EmbeddedSchema& row) { return row.file == file; });
        if (embedded == last)
            return nullptr;
        Result<Json> text = parseJson(embedded->text);
        if (!text) {
            errors_ = text.errorsWithin(file);
            return nullptr;
        }
        return &files_.emplace(file, *std::move(text)).first->second;
    }

    /// `reference`: "file.schema.json#/definitions/x", or "#/definitions/x" within `file`.
    const SchemaNode* follow(const std::string& reference, const std::string& file)
    {
        const std::size_t hash = std::min(reference.find('#'), reference.size());
        const std::string target = hash == 0 ? file : reference.substr(0, hash);
        const std::string pointer = hash < reference.size() ? reference.substr(hash + 1) : std::string();
        const auto known = compiled_.find({target, pointer});
        if (known != compiled_.end())
            return known->second;
        const Json* root = load(target);
        if (root == nullptr || (!pointer.empty() && pointer.front() != '/') ||
            !root->contains(Json::json_pointer(pointer)))
            return fail(file, "reference " + reference, "a schema there");
        SchemaNode* made = node();
        compiled_[{target, pointer}] = made;
        fill(*made, root->at(Json::json_pointer(pointer)), target, pointer);
        return made;
    }

    const SchemaNode* part(const Json& schema, const std::string& file, const std::string& place)
    {
        SchemaNode* made = node();
        fill(*made, schema, file, place);
        return made;
    }

    void fill(SchemaNode& made, const Json& schema, const std::string& file, const std::string& place)
    {
        if (schema.is_boolean()) {
            made.never = !schema.get<bool>();
            return;
        }
        if (!schema.is_object()) {
            fail(file + place, schema.type_name(), "a schema");
            return;
        }
        for (const auto& [keyword, value] : schema.items())
            if (!bounds(made, keyword, value) && !structure(made, keyword, value, file, place) &&
                !onlyForReaders(keyword))
                fail(file + place, "keyword " + keyword, "a keyword that is understood");
    }

    static bool onlyForReaders(const std::string& keyword)
    {
        constexpr std::array<std::string_view, 8> known{"$schema", "$id",         "$comment", "title",
                                                        "default", "definitions", "examples", "format"};
        return std::find(known.begin(), known.end(), keyword) != known.end();
    }

    static bool bounds(SchemaNode& made, const std::string& keyword, const Json& value)
    {
        const std::map<std::string_view, std::optional<double> SchemaNode::*> numbers{
            {"minimum", &SchemaNode::minimum},
            {"maximum", &SchemaNode::maximum},
            {"exclusiveMinimum", &SchemaNode::above},
            {"exclusiveMaximum", &SchemaNode::below},
            {"multipleOf", &SchemaNode::multipleOf}};
        const std::map<std::string_view, std::optional<std::size_t> SchemaNode::*> counts{
            {"minLength", &SchemaNode::leastLength},      {"maxLength", &SchemaNode::mostLength},
            {"minItems", &SchemaNode::leastItems},        {"maxItems", &SchemaNode::mostItems},
            {"minProperties", &SchemaNode::leastMembers}, {"maxProperties", &SchemaNode::mostMembers}};
        if (const auto number = numbers.find(keyword); number != numbers.end())
            made.*number->second = value.get<double>();
        else if (const auto count = counts.find(keyword); count != counts.end())
            made.*count->second = value.get<std::size_t>();
        else if (keyword == "description")
            made.description = value.get<std::string>();
        else if (keyword == "uniqueItems")
            made.uniqueItems = value.get<bool>();
        else if (keyword == "const")
            made.allowed = {value};
        else if (keyword == "enum")
            made.allowed = value.get<std::vector<Json>>();
        else if (keyword == "required")
            made.required = value.get<std::vector<std::string>>();
        else
            return keywordOfType(made, keyword, value);
        return true;
    }

    static bool keywordOfType(SchemaNode& made, const std::string& keyword, const Json& value)
    {
        if (keyword == "type") {
            for (const Json& name : value.is_array() ? value : Json::array({value}))
                made.types |= typeOf(name);
            return made.types != 0;
        }
        if (keyword == "pattern") {
            made.patternText = value.get<std::string>();
            made.pattern.emplace(made.patternText, std::regex::ECMAScript | std::regex::optimize);
            return true;
        }
        return false;
    }

    bool structure(SchemaNode& made, const std::string& keyword, const Json& value, const std::string& file,
                   const std::string& place)
    {
        const std::string inside = place + "/" + keyword;
        const std::map<std::string_view, const SchemaNode * SchemaNode::*> parts{
            {"additionalProperties", &SchemaNode::otherMembers},
            {"propertyNames", &SchemaNode::memberNames},
            {"if", &SchemaNode::condition},
            {"then", &SchemaNode::then},
            {"else", &SchemaNode::otherwise},
            {"not", &SchemaNode::refused}};
        const std::map<std::string_view, std::vector<const SchemaNode*> SchemaNode::*> lists{
            {"allOf", &SchemaNode::allOf}, {"anyOf", &SchemaNode::anyOf}, {"oneOf", &SchemaNode::oneOf}};
        if (const auto found = parts.find(keyword); found != parts.end()) {
            made.*found->second = part(value, file, inside);
        } else if (const auto list = lists.find(keyword); list != lists.end()) {
            for (const Json& entry : value)
                (made.*list->second).push_back(part(entry, file, inside));
        } else if (keyword == "items" && !value.is_array()) {
            made.items = part(value, file, inside);
        } else if (keyword == "properties") {
            for (const auto& [name, schema] : value.items())
                made.members.emplace_back(name, part(schema, file, inside + "/" + name));
        } else if (keyword == "$ref") {
            made.reference = follow(value.get<std::string>(), file);
        } else {
            return false;
        }
        return true;
    }

    Schema schema_;
    std::map<std::string, Json> files_;
    std::map<std::pair<std::string, std::string>, SchemaNode*> compiled_;
    std::vector<Error> errors_;
};

const Result<Schema>& Schema::embedded(std::string_view file)
{
    static std::mutex oneAtATime;
    static std::map<std::string, Result<Schema>, std::less<>> compiled; // places in it stay where they are
    const std::lock_guard<std::mutex> lock(oneAtATime);
    auto known = compiled.find(file);
    if (known == compiled.end())
        known = compiled.emplace(file, SchemaCompiler().compile(std::string(file))).first;
    return known->second;
}

} // namespace lapwright::documents
