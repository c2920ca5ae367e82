#pragma once

#include "fold/section.h"

#include <optional>
#include <utility>

namespace lapwright::fold {

/// Two flats of the finished section, counted from the start edge, that run through each other: whatever
/// stands between them is folded last, the fold ends in the sheet. None if no two do.
[[nodiscard]] std::optional<std::pair<std::size_t, std::size_t>> crossingFlats(const Blank& blank);

} // namespace lapwright::fold
