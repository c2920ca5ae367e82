#pragma once

#include "documents/cut.h"
#include "storage/shop_state.h"

#include <vector>

namespace lapwright::acts {

/// The pieces a plan cuts, what it has no stock for left out, in the order of its blanks.
[[nodiscard]] std::vector<storage::PlannedPiece> piecesCutBy(const documents::CutPlan& plan);

} // namespace lapwright::acts
