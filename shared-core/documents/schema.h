#pragma once

#include "documents/json_text.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <regex>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// JSON Schema, draft 7, as far as the schemas of this project use it. A schema is compiled once; checking a
/// document is then linear in its size, which a general validator is not (tests hold it against one).
namespace lapwright::documents {

/// One compiled schema or part of a schema.
struct SchemaNode {
    enum Type : unsigned {
        Null = 1,
        Boolean = 2,
        Integer = 4,
        Number = 8,
        Text = 16,
        List = 32,
        Object = 64
    };

    bool never = false;        ///< the schema `false`
    unsigned types = 0;        ///< allowed types; 0 for any
    std::string description;   ///< told as what was expected
    std::vector<Json> allowed; ///< const or enum; empty for any
    std::optional<double> minimum, maximum, above, below, multipleOf;
    std::optional<std::size_t> leastLength, mostLength; ///< of a text, in characters
    std::optional<std::regex> pattern;
    std::string patternText;
    std::optional<std::size_t> leastItems, mostItems, leastMembers, mostMembers;
    bool uniqueItems = false;
    std::vector<std::string> required;
    std::vector<std::pair<std::string, const SchemaNode*>> members; ///< sorted by name
    const SchemaNode* otherMembers = nullptr;
    const SchemaNode* memberNames = nullptr;
    const SchemaNode* items = nullptr;
    const SchemaNode* reference = nullptr;
    const SchemaNode* condition = nullptr;
    const SchemaNode* then = nullptr;
    const SchemaNode* otherwise = nullptr;
    const SchemaNode* refused = nullptr; ///< not
    std::vector<const SchemaNode*> allOf, anyOf, oneOf;
};

/// A schema file with those it refers to.
class Schema {
public:
    /// The embedded schema of this file name ("job.schema.json"), compiled when it is first asked for and
    /// kept: a library is read by one schema forty times, a job at each act. Error: no such schema, a
    /// reference that leads nowhere, or a keyword outside the part of draft 7 that is understood.
    [[nodiscard]] static const Result<Schema>& embedded(std::string_view file);

    /// Everything about `value` that the schema does not allow, at most `most` errors; place is a JSON
    /// pointer.
    [[nodiscard]] std::vector<Error> check(const Json& value, std::size_t most = 20) const;

    /// The whole of it, to be walked through.
    [[nodiscard]] const SchemaNode& root() const { return *root_; }

private:
    friend class SchemaCompiler;
    std::vector<std::unique_ptr<SchemaNode>> nodes_;
    const SchemaNode* root_ = nullptr;
};

} // namespace lapwright::documents
