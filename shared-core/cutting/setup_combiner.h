#pragma once

#include "cutting/instance.h"

#include <functional>
#include <vector>

namespace lapwright::cutting {

/// A list of strip widths to slit a sheet to, and how many sheets are.
struct Setup {
    std::vector<int> strips; ///< how many of each width
    std::int64_t count = 0;
};

/// Fewer setups for as many sheets of one stock and the same strips, where it can find them: two into one,
/// two into one that is there already and another, three into two. `parts`: how many more strips of each
/// width parting could make for slots left over. `setups` by ascending count. `stop` is asked often with the
/// ticks of work since.
[[nodiscard]] std::vector<Setup> combineSetups(const Instance& instance, int stock, std::vector<Setup> setups,
                                               std::vector<std::int64_t> parts,
                                               const std::function<bool(std::int64_t ticks)>& stop);

} // namespace lapwright::cutting
