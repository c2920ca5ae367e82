#pragma once

#include "drawing/display_list.h"
#include "pieces/order.h"
#include "print/paper.h"
#include "print/sheet.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::print {

/// What stands in place of a fold ticket where no machine of the shop can fold the profile: the reason and
/// what would help, line by line, the pieces that wait for it, and the section. Precondition: `profile` <
/// order.profiles.size().
[[nodiscard]] Sheet refusedFold(const pieces::Order& order, std::size_t profile,
                                const std::vector<std::string>& reasons, const drawing::DisplayList& section,
                                const Printing& printing);

} // namespace lapwright::print
