#pragma once

#include "pieces/movement.h"
#include "pieces/takeoff.h"
#include "rules/rule_set.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// The rule sets that a job is checked against.
class RuleBook {
public:
    /// An id the catalogue does not have is a finding that blocks, "pieces.rules.unknown".
    RuleBook(const Catalogue& catalogue, const std::vector<std::string>& ids, rules::Findings& findings);

    /// The least interval between movement joints that a clause for these facts demands ("joint_interval at
    /// most …"); nothing if none does.
    [[nodiscard]] std::optional<JointInterval> jointInterval(const rules::Facts& facts);

    /// Adds what the rules find about `facts` at `place`.
    void check(const rules::Facts& facts, const std::string& place, rules::Findings& findings);

    /// Whether any clause asks or tells about this fact; others need not be given.
    [[nodiscard]] bool mentions(const std::string& fact) const { return mentioned_.count(fact) > 0; }

private:
    void note(const rules::Clause& clause);
    [[nodiscard]] std::optional<JointInterval> findJointInterval(rules::Facts facts) const;

    std::vector<const rules::RuleSet*> sets_;
    /// Each clause about movement joints as a set of its own, reduced to that demand.
    std::vector<rules::RuleSet> jointClauses_;
    std::set<std::string> mentioned_;
    /// What was found for the same facts before: the runs of a job repeat themselves.
    std::map<std::string, rules::Findings> found_;
    std::map<std::string, std::optional<JointInterval>> intervals_;
};

} // namespace lapwright::pieces
