#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/slope.h"
#include "rules/finding.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lapwright::rules {

/// What is known about the thing a clause may apply to (a run, a profile on a run, a piece, a joint): facts
/// by name. Names are listed in facts.h with what each means.
using Fact = std::variant<std::string, bool, std::int64_t, Length, Angle, Slope>;
using Facts = std::map<std::string, Fact>;

/// One comparison of a fact with a value of the same type. `In`: the fact is one of `values`.
struct Condition {
    enum class Comparison {
        Equal,
        NotEqual,
        Less,
        AtMost,
        Greater,
        AtLeast,
        In
    } comparison = Comparison::Equal;
    std::string fact;
    std::vector<Fact> values; ///< one, or for In any number
};

/// One clause: where all of `applies` hold, all of `demands` must hold. Where a fact that `applies` names is
/// not there, the clause does not apply.
struct Clause {
    std::string number;
    std::string edition;
    std::string source;
    Weight weight = Weight::Warns; ///< of the finding when a demand is not met
    std::vector<Condition> applies;
    std::vector<Condition> demands;
    /// What the person is told; may name any fact in {braces}, and {demanded} for the value of the demand not
    /// met.
    std::string statement;
    std::string remedy;
};

/// Clauses that belong together (rule-sets/*.json).
struct RuleSet {
    std::string id;
    std::string name;
    std::string edition;
    /// Said with every finding of the set: that the local code and a licensed professional decide.
    std::string caution;
    std::vector<Clause> clauses;
};

/// What ends Finding::code where a clause applies and the fact it asks about is not there.
inline constexpr const char* uncheckedSuffix = ".unchecked";

/// The findings of every clause that applies to `facts` and is not met, in the order of the set; one that
/// informs for every demand that could not be checked because its fact is not there.
[[nodiscard]] Findings apply(const RuleSet& rules, const Facts& facts, const std::string& place);

} // namespace lapwright::rules
