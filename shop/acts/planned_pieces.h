#pragma once

#include "documents/cut.h"
#include "storage/shop_state.h"

#include <cstdint>
#include <vector>

namespace lapwright::acts {

/// So many of each blank of the problem, by its position; none of which there are none.
[[nodiscard]] std::vector<storage::PlannedPiece> plannedPieces(const documents::CutProblem& problem,
                                                               const std::vector<std::int64_t>& counts);
/// The pieces a plan cuts, what it has no stock for left out, in the order of its blanks.
[[nodiscard]] std::vector<storage::PlannedPiece> piecesCutBy(const documents::CutPlan& plan);

} // namespace lapwright::acts
