#include "rules/rule_set.h"

#include "measure/writing.h"
#include "rules/facts.h"

#include <algorithm>

namespace lapwright::rules {
namespace {

bool isLess(const Fact& left, const Fact& right)
{
    return left < right;
}

/// Precondition: the fact and the condition's values are of one type.
bool holds(const Condition& condition, const Fact& fact)
{
    using Comparison = Condition::Comparison;
    const auto equalsFact = [&fact](const Fact& value) { return value == fact; };
    if (condition.comparison == Comparison::In)
        return std::any_of(condition.values.begin(), condition.values.end(), equalsFact);
    const Fact& value = condition.values.front();
    switch (condition.comparison) {
    case Comparison::Equal:
        return fact == value;
    case Comparison::NotEqual:
        return !(fact == value);
    case Comparison::Less:
        return isLess(fact, value);
    case Comparison::AtMost:
        return !isLess(value, fact);
    case Comparison::Greater:
        return isLess(value, fact);
    case Comparison::AtLeast:
        return !isLess(fact, value);
    case Comparison::In:
        break;
    }
    return false;
}

/// The fact the condition is about; null if it was not given, or is of another type than the values.
const Fact* factOf(const Condition& condition, const Facts& facts)
{
    const auto found = facts.find(condition.fact);
    if (found == facts.end() || condition.values.empty())
        return nullptr;
    for (const Fact& value : condition.values)
        if (value.index() != found->second.index())
            return nullptr;
    return &found->second;
}

bool applies(const Clause& clause, const Facts& facts)
{
    return std::all_of(clause.applies.begin(), clause.applies.end(), [&facts](const Condition& condition) {
        const Fact* fact = factOf(condition, facts);
        return fact != nullptr && holds(condition, *fact);
    });
}

Phrase::Value told(const Fact& fact)
{
    if (const bool* yes = std::get_if<bool>(&fact))
        return std::string(*yes ? "yes" : "no");
    return std::visit(
        [](const auto& value) -> Phrase::Value {
            if constexpr (std::is_same_v<std::decay_t<decltype(value)>, bool>)
                return std::string();
            else
                return value;
        },
        fact);
}

/// A thickness in both units: the step lengths are shown in is far too coarse for it, whatever the reader
/// chose.
std::string toldThickness(Length thickness)
{
    Style metric;
    metric.unit = LengthUnit::Millimetres;
    return writeThickness(thickness, Style{}) + " (" + writeThickness(thickness, metric) + ")";
}

Phrase::Value told(const std::string& name, const Fact& fact)
{
    const Length* length = std::get_if<Length>(&fact);
    if (name == "thickness" && length != nullptr)
        return toldThickness(*length);
    return told(fact);
}

/// One value keeps its type, so that it is shown in the reader's units; several become a text.
Phrase::Value demanded(const Condition& demand)
{
    if (demand.values.size() == 1)
        return told(demand.fact, demand.values.front());
    std::string list;
    for (const Fact& value : demand.values)
        list +=
            (list.empty() ? "" : " or ") + say({"{value}", {{"value", told(demand.fact, value)}}}, Style{});
    return list;
}

Phrase phrase(const std::string& text, const Condition& demand, const Facts& facts)
{
    Phrase result{text, {}};
    const auto names = [&text](const std::string& name) {
        return text.find("{" + name + "}") != std::string::npos;
    };
    if (names("demanded"))
        result.values.emplace_back("demanded", demanded(demand));
    for (const auto& [name, fact] : facts)
        if (names(name))
            result.values.emplace_back(name, told(name, fact));
    return result;
}

std::string codeOf(const RuleSet& rules, const Clause& clause, const Condition& demand)
{
    std::string number = clause.number;
    std::replace(number.begin(), number.end(), ' ', '-');
    return "rules." + rules.id + "." + number + "." + demand.fact;
}

/// What to do, and who decides.
std::string withCaution(const std::string& remedy, const RuleSet& rules)
{
    return remedy + (remedy.empty() || rules.caution.empty() ? "" : " ") + rules.caution;
}

Finding unmet(const RuleSet& rules, const Clause& clause, const Condition& demand, const Facts& facts,
              const std::string& place)
{
    Finding finding;
    finding.weight = clause.weight;
    finding.code = codeOf(rules, clause, demand);
    finding.place = place;
    finding.statement = phrase(clause.statement, demand, facts);
    finding.remedy = phrase(withCaution(clause.remedy, rules), demand, facts);
    finding.clause = ClauseReference{clause.number, clause.edition, clause.source};
    return finding;
}

Finding unchecked(const RuleSet& rules, const Clause& clause, const Condition& demand,
                  const std::string& place)
{
    Finding finding;
    finding.weight = Weight::Informs;
    finding.code = codeOf(rules, clause, demand) + uncheckedSuffix;
    finding.place = place;
    finding.statement = {"not checked against this clause, for this is not known: {meaning}",
                         {{"meaning", std::string(meaningOf(demand.fact))}}};
    finding.remedy = {withCaution("Give it with the job, or check this by hand.", rules), {}};
    finding.clause = ClauseReference{clause.number, clause.edition, clause.source};
    return finding;
}

} // namespace

Findings apply(const RuleSet& rules, const Facts& facts, const std::string& place)
{
    Findings findings;
    for (const Clause& clause : rules.clauses) {
        if (!applies(clause, facts))
            continue;
        for (const Condition& demand : clause.demands) {
            const Fact* fact = factOf(demand, facts);
            if (fact == nullptr)
                findings.push_back(unchecked(rules, clause, demand, place));
            else if (!holds(demand, *fact))
                findings.push_back(unmet(rules, clause, demand, facts, place));
        }
    }
    return findings;
}

} // namespace lapwright::rules
