#pragma once

#include "cutting/problem.h"
#include "documents/cut.h"
#include "measure/result.h"
#include "storage/shop_state.h"

#include <optional>

namespace lapwright::acts {

/// A kept cut plan as it is read back: what is stored is not trusted before the checker has seen it.
struct CheckedPlan {
    documents::CutPlan cut;
    std::optional<cutting::Problem> problem; ///< missing: the plan does not pass its check
};

/// Errors: a document that does not hold.
[[nodiscard]] Result<CheckedPlan> readChecked(const storage::StoredPlan& stored);

} // namespace lapwright::acts
