#pragma once

#include "measure/writing.h"
#include "schedule/load.h"

#include <string>
#include <vector>

namespace lapwright::acts {

/// A load as the crew lead ticks it off: each bundle with its mass, below it its pieces and where they go.
[[nodiscard]] std::vector<std::string> loadInWords(const schedule::Load& load, const Style& style);

} // namespace lapwright::acts
