#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "rules/rule_set.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using RulesDocument = Document<rules::RuleSet>;

/// A rule set (lapwright/rules). A condition's value is written as its fact has it: a text, true or false, a
/// whole number, millimetres, degrees, {"rise", "run"}. Errors: those of openDocument; a fact that facts.h
/// does not list; a value of another type than its fact; texts or yes-or-no compared by size.
[[nodiscard]] Result<RulesDocument> readRules(std::string_view text);
[[nodiscard]] std::string writeRules(const RulesDocument& rules, Layout layout = Layout::Readable);

} // namespace lapwright::documents
