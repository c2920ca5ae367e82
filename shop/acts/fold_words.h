#pragma once

#include "fold/plan.h"
#include "measure/writing.h"

#include <string>
#include <vector>

namespace lapwright::acts {

/// The steps as a person at the folder follows them, one line each, and the cautions; or why it cannot be
/// folded and what would help.
[[nodiscard]] std::vector<std::string> inWords(const fold::Outcome& outcome, const Style& style);

} // namespace lapwright::acts
