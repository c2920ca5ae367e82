#pragma once

#include "documents/codec.h"
#include "measure/phrase.h"
#include "rules/finding.h"

/// Members of what is told to people: phrases and findings.
namespace lapwright::documents {

template <>
struct Words<rules::Weight> {
    using K = rules::Weight;
    static constexpr std::array<std::pair<K, std::string_view>, 3> all{
        {{K::Informs, "informs"}, {K::Warns, "warns"}, {K::Blocks, "blocks"}}};
};

using NamedValue = std::pair<std::string, Phrase::Value>;

/// {"name": "measured", "mm": 3810}: the second member's name is the value's type.
void describe(ReadFields& fields, NamedValue& value);
void describe(WriteFields& fields, const NamedValue& value);

template <class V, Like<Phrase> T>
void describe(V& fields, T& phrase)
{
    fields("text", phrase.text);
    fields("values", phrase.values, {});
}

template <class V, Like<rules::ClauseReference> T>
void describe(V& fields, T& clause)
{
    fields("number", clause.number);
    fields("edition", clause.edition);
    fields("source", clause.source);
}

template <class V, Like<rules::Finding> T>
void describe(V& fields, T& finding)
{
    fields("weight", finding.weight);
    fields("code", finding.code);
    fields("place", finding.place);
    fields("statement", finding.statement);
    fields("remedy", finding.remedy, Phrase());
    fields("clause", finding.clause);
}

} // namespace lapwright::documents
