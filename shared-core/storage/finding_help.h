#pragma once

#include <optional>
#include <string>

namespace lapwright::storage {

/// What a person is told who asks about a finding, in English.
struct FindingHelp {
    std::string reason; ///< why it matters
    std::string remedy; ///< what to do
};

/// The help for a kind of finding (rules::Finding::code), from shared-core/help/findings.json. A clause of a
/// rule set has the help for what it demands ("rules.lap"), a fact nobody wrote about that of any clause.
/// Missing: a code that no finding of ours has.
[[nodiscard]] std::optional<FindingHelp> helpFor(const std::string& code);

} // namespace lapwright::storage
