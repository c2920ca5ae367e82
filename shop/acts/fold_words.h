#pragma once

#include "drawing/profile_picture.h"
#include "fold/planner.h"
#include "measure/writing.h"

#include <string>
#include <vector>

namespace lapwright::acts {

/// The steps as a person at the folder follows them, one line each, and the cautions; or why it cannot be
/// folded and what would help.
[[nodiscard]] std::vector<std::string> inWords(const fold::Outcome& outcome, const Style& style,
                                               drawing::AngleShown angles = drawing::AngleShown::Fold);

/// The machines an outcome was asked of but the one shown: who else can make it, in what handling time, and
/// who cannot and why; one line each.
[[nodiscard]] std::vector<std::string> othersInWords(const std::vector<fold::MachineOutcome>& outcomes,
                                                     std::size_t shown,
                                                     const std::vector<fold::Machine>& machines,
                                                     const Style& style);

} // namespace lapwright::acts
