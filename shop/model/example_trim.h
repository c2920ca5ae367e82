#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "trim/template.h"

#include <optional>

namespace lapwright::model {

/// A trim as it comes out at 6 in 12 with square corners, measures without a usual value a quarter up their
/// range; nothing where it does not resolve there.
[[nodiscard]] std::optional<drawing::DisplayList> drawExample(const trim::Template& trim, const Style& style);

} // namespace lapwright::model
