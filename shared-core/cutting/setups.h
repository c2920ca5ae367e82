#pragma once

#include "cutting/instance.h"

#include <functional>

namespace lapwright::cutting {

/// The same sheets with fewer different lists of strip widths, where it can find them: patterns of sheets of
/// one stock are combined two into one, two into one that is there already and another, and three into two,
/// as long as their strips still find slots. Slots left over are filled by parting a strip in two. `stop` is
/// asked often with the ticks of work since.
[[nodiscard]] RawPlan withFewerSetups(const Instance& instance, const RawPlan& plan,
                                      const std::function<bool(std::int64_t ticks)>& stop);

} // namespace lapwright::cutting
