#pragma once

#include "measure/phrase.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::rules {

/// What a finding asks of the person: it is only good to know; it may be acknowledged with a reason; nothing
/// may be sent before it is resolved.
enum class Weight { Informs, Warns, Blocks };

/// The clause of a code or manual that a finding rests on.
struct ClauseReference {
    std::string number;  ///< "IRC R905.2.8.5"
    std::string edition; ///< "2018"
    std::string source;  ///< where the text was read

    friend bool operator==(const ClauseReference&, const ClauseReference&) = default;
};

/// Something the program tells a person about their data.
struct Finding {
    Weight weight = Weight::Informs;
    /// Stable name of the kind of finding, "site.closure.length": help texts and tests go by it.
    std::string code;
    /// Where it stands, as the person names it: "chain House eave, run E3".
    std::string place;
    Phrase statement;
    /// What would help; empty text if there is nothing to do.
    Phrase remedy;
    std::optional<ClauseReference> clause;

    friend bool operator==(const Finding&, const Finding&) = default;
};

using Findings = std::vector<Finding>;

[[nodiscard]] inline bool anyBlocks(const Findings& findings)
{
    for (const Finding& finding : findings)
        if (finding.weight == Weight::Blocks)
            return true;
    return false;
}

} // namespace lapwright::rules
