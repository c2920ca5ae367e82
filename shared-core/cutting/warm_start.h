#pragma once

#include "cutting/instance.h"

#include <vector>

namespace lapwright::cutting {

/// Where the simplex may start: columns that are basic, kinds whose demand is slack, and widths of strips of
/// one stock whose slots are.
struct WarmStart {
    int stock = 0;
    std::vector<RawStrip> strips;
    std::vector<std::vector<std::pair<int, int>>> sheets; ///< width, how many
    std::vector<int> slackKinds, slackWidths;
};

} // namespace lapwright::cutting
