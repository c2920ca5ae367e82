#include "documents/rules.h"

#include "documents/describe_told.h"
#include "rules/facts.h"

namespace lapwright::documents {

template <>
struct Words<rules::Condition::Comparison> {
    using K = rules::Condition::Comparison;
    static constexpr std::array<std::pair<K, std::string_view>, 7> all{{{K::Equal, "equal"},
                                                                        {K::NotEqual, "not_equal"},
                                                                        {K::Less, "less"},
                                                                        {K::AtMost, "at_most"},
                                                                        {K::Greater, "greater"},
                                                                        {K::AtLeast, "at_least"},
                                                                        {K::In, "in"}}};
};

template <>
struct Custom<rules::Fact> {
    static void put(const rules::Fact& fact, Writing& out)
    {
        std::visit([&out](const auto& value) { documents::put(value, out); }, fact);
    }
};

namespace {

using Comparison = rules::Condition::Comparison;

template <class T>
rules::Fact factAs(const Json& json, Reading& reading)
{
    T value{};
    get(json, value, reading);
    return value;
}

rules::Fact factOf(const Json& json, rules::FactType type, Reading& reading)
{
    switch (type) {
    case rules::FactType::Text:
        return factAs<std::string>(json, reading);
    case rules::FactType::YesNo:
        return factAs<bool>(json, reading);
    case rules::FactType::Count:
        return factAs<std::int64_t>(json, reading);
    case rules::FactType::Length:
        return factAs<Length>(json, reading);
    case rules::FactType::Angle:
        return factAs<Angle>(json, reading);
    case rules::FactType::Slope:
        return factAs<Slope>(json, reading);
    }
    return std::string();
}

/// Texts and yes-or-no have no order.
bool needsOrder(Comparison comparison)
{
    return comparison != Comparison::Equal && comparison != Comparison::NotEqual &&
           comparison != Comparison::In;
}

} // namespace

static void describe(ReadFields& fields, rules::Condition& condition)
{
    fields("fact", condition.fact);
    fields("is", condition.comparison);
    const auto type = rules::factType(condition.fact);
    if (!type) {
        fields.errors().push_back({"/fact", condition.fact, "the name of a fact"});
        return;
    }
    const bool ordered = *type != rules::FactType::Text && *type != rules::FactType::YesNo;
    if (needsOrder(condition.comparison) && !ordered)
        fields.errors().push_back({"/is", "a comparison by size", "equal, not_equal or in"});
    const bool list = condition.comparison == Comparison::In;
    const char* const member = list ? "values" : "value";
    const auto found = fields.object().find(member);
    if (found == fields.object().end()) {
        fields.errors().push_back({"", std::string("no member \"") + member + "\"", "one"});
        return;
    }
    const std::size_t before = fields.errors().size();
    for (const Json& value : list ? *found : Json::array({*found}))
        condition.values.push_back(factOf(value, *type, fields.reading()));
    liftErrors(fields.errors(), before, member);
}

static void describe(WriteFields& fields, const rules::Condition& condition)
{
    fields("fact", condition.fact);
    fields("is", condition.comparison);
    if (condition.comparison == Comparison::In)
        fields("values", condition.values);
    else if (!condition.values.empty())
        fields("value", condition.values.front());
}

template <class V, Like<rules::Clause> T>
void describe(V& fields, T& clause)
{
    fields("number", clause.number);
    fields("edition", clause.edition, std::string());
    fields("source", clause.source);
    fields("weight", clause.weight, rules::Weight::Warns);
    fields.orEmpty("applies", clause.applies);
    fields("demands", clause.demands);
    fields("statement", clause.statement);
    fields("remedy", clause.remedy, std::string());
}

template <class V, Like<rules::RuleSet> T>
void describe(V& fields, T& set)
{
    fields("id", set.id);
    fields("name", set.name);
    fields("edition", set.edition, std::string());
    fields("caution", set.caution);
    fields("clauses", set.clauses);
}

Result<RulesDocument> readRules(std::string_view text)
{
    return readDocument<rules::RuleSet>(text, kinds::rules, [](const rules::RuleSet&, Errors&) {});
}

std::string writeRules(const RulesDocument& rules, Layout layout)
{
    return writeDocument(kinds::rules, rules, layout);
}

} // namespace lapwright::documents
