#pragma once

#include "measure/writing.h"
#include "pieces/order.h"
#include "print/paper.h"
#include "print/sheet.h"
#include "schedule/cost.h"

#include <optional>
#include <string>

namespace lapwright::print {

/// What the shop has understood and will make, for the customer to confirm: where, when, every piece by
/// profile and run, what goes along, how stock lengths are cut on site, what was accepted with a reason, and,
/// where a cost is given, what it comes to.
[[nodiscard]] Sheet confirmation(const pieces::Order& order, const std::optional<schedule::Cost>& cost,
                                 const Printing& printing, const Style& style);

} // namespace lapwright::print
