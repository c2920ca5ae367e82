#include "pieces/rule_book.h"

#include "pieces/byte_key.h"

#include <type_traits>
#include <utility>

namespace lapwright::pieces {

namespace {

const char* const jointFact = "joint_interval";
/// Longer than any interval a clause would allow.
constexpr Length unlimited = Length::feet(1'000'000);

/// Bounds the memory of a job whose runs all differ.
template <class Table>
void forgetIfMany(Table& table)
{
    constexpr std::size_t most = 10'000;
    if (table.size() >= most)
        table.clear();
}

std::string keyOf(const rules::Facts& facts)
{
    ByteKey key;
    for (const auto& [name, fact] : facts) {
        key.add(name).add(static_cast<std::int64_t>(fact.index()));
        if (const auto* slope = std::get_if<Slope>(&fact))
            key.add(slope->riseMillionths()).add(slope->runMillionths());
        else if (const bool* yes = std::get_if<bool>(&fact))
            key.add(std::int64_t{*yes ? 1 : 0});
        else
            std::visit(
                [&key](const auto& value) {
                    using Value = std::decay_t<decltype(value)>;
                    if constexpr (!std::is_same_v<Value, bool> && !std::is_same_v<Value, Slope>)
                        key.add(value);
                },
                fact);
    }
    return key.bytes();
}

const Length* mostDemanded(const rules::Condition& demand)
{
    using Comparison = rules::Condition::Comparison;
    if (demand.fact != jointFact || demand.values.size() != 1 ||
        (demand.comparison != Comparison::AtMost && demand.comparison != Comparison::Less))
        return nullptr;
    return std::get_if<Length>(&demand.values.front());
}

} // namespace

RuleBook::RuleBook(const Catalogue& catalogue, const std::vector<std::string>& ids, rules::Findings& findings)
{
    for (const std::string& id : ids) {
        const auto found = catalogue.ruleSets.find(id);
        if (found == catalogue.ruleSets.end()) {
            findings.push_back(
                {rules::Weight::Blocks,
                 "pieces.rules.unknown",
                 {},
                 {"the job is to be checked against the rule set {id}, which is not here", {{"id", id}}},
                 {"add the rule set, or take it off the job", {}},
                 std::nullopt});
            continue;
        }
        sets_.push_back(&found->second);
        for (const rules::Clause& clause : found->second.clauses)
            note(clause);
    }
}

void RuleBook::note(const rules::Clause& clause)
{
    for (const auto* conditions : {&clause.applies, &clause.demands})
        for (const rules::Condition& condition : *conditions)
            mentioned_.insert(condition.fact);
    for (const std::string* text : {&clause.statement, &clause.remedy})
        for (std::size_t open = text->find('{'); open != std::string::npos; open = text->find('{', open + 1))
            if (const std::size_t close = text->find('}', open); close != std::string::npos)
                mentioned_.insert(text->substr(open + 1, close - open - 1));
    for (const rules::Condition& demand : clause.demands)
        if (const Length* most = mostDemanded(demand); most && *most > Length()) {
            rules::RuleSet alone;
            alone.clauses.push_back(clause);
            alone.clauses.back().demands = {demand};
            jointClauses_.push_back(std::move(alone));
        }
}

std::optional<JointInterval> RuleBook::jointInterval(const rules::Facts& facts)
{
    if (jointClauses_.empty())
        return std::nullopt;
    forgetIfMany(intervals_);
    const auto [entry, isNew] = intervals_.try_emplace(keyOf(facts));
    if (isNew)
        entry->second = findJointInterval(facts);
    return entry->second;
}

std::optional<JointInterval> RuleBook::findJointInterval(rules::Facts facts) const
{
    // A clause applies to an endless stretch exactly if it applies to the run.
    facts[jointFact] = unlimited;
    std::optional<JointInterval> least;
    for (const rules::RuleSet& alone : jointClauses_) {
        const rules::Clause& clause = alone.clauses.front();
        const Length most = *mostDemanded(clause.demands.front());
        if ((!least || most < least->length) && !rules::apply(alone, facts, {}).empty())
            least = JointInterval{most, clause.number + (clause.edition.empty() ? "" : " " + clause.edition)};
    }
    return least;
}

void RuleBook::check(const rules::Facts& facts, const std::string& place, rules::Findings& findings)
{
    forgetIfMany(found_);
    const auto [entry, isNew] = found_.try_emplace(keyOf(facts));
    if (isNew)
        for (const rules::RuleSet* set : sets_)
            for (rules::Finding& finding : rules::apply(*set, facts, {}))
                entry->second.push_back(std::move(finding));
    for (const rules::Finding& finding : entry->second) {
        findings.push_back(finding);
        findings.back().place = place;
    }
}

} // namespace lapwright::pieces
