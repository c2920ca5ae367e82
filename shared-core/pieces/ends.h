#pragma once

#include "pieces/piece.h"
#include "rules/finding.h"
#include "site/run.h"
#include "trim/template.h"

#include <optional>
#include <vector>

namespace lapwright::pieces {

/// What happens at an end of a run, made into the end of its outermost piece.
struct RunEnd {
    PieceEnd end;
    /// The part of the allowance that counts along the measured line: all of it, but of a mitre only the
    /// clearance.
    Length alongLine;
    /// How a mitre's cut came about; empty otherwise.
    std::optional<Derivation> derivation;
    /// Empty places; "pieces.end.no_corner" (blocks), "pieces.end.no_measure" (warns).
    rules::Findings findings;
};

/// The end of a trim with `installation` where the run has `kind`. Free: square, as measured. Butt: stops
/// short by the clearance. Wrap tab, closed end, turn-up: longer by what the trim gives for it; a finding
/// where it gives nothing, except for a closed end, which is then an end cap. Mitre: each mould line
/// reaches as far beyond the measured end as `mitreReach` says (trim's end cut), less the clearance; a
/// finding if there is none.
[[nodiscard]] RunEnd endOf(site::EndKind kind, const trim::Installation& installation,
                           const std::optional<std::vector<Length>>& mitreReach);

} // namespace lapwright::pieces
