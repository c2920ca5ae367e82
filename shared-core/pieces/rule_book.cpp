#include "pieces/rule_book.h"

#include <utility>

namespace lapwright::pieces {

namespace {

const char* const jointFact = "joint_interval";
/// Longer than any interval a clause would allow.
constexpr Length unlimited = Length::feet(1'000'000);

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

std::optional<JointInterval> RuleBook::jointInterval(rules::Facts facts) const
{
    if (jointClauses_.empty())
        return std::nullopt;
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

void RuleBook::check(const rules::Facts& facts, const std::string& place, rules::Findings& findings) const
{
    for (const rules::RuleSet* set : sets_)
        for (rules::Finding& finding : rules::apply(*set, facts, place))
            findings.push_back(std::move(finding));
}

} // namespace lapwright::pieces
