#pragma once

#include "measure/writing.h"
#include "pieces/order.h"
#include "print/paper.h"
#include "print/sheet.h"
#include "schedule/cost.h"

#include <optional>
#include <string>

namespace lapwright::print {

/// A cost, and what the shop says below it.
struct Offer {
    schedule::Cost cost;
    std::string note; ///< may be empty
};

/// What the shop has understood and will make, for the customer to confirm: where, when, every piece by
/// profile and run, what goes along, how stock lengths are cut on site, what was accepted with a reason, and,
/// where there is an offer, what it costs.
[[nodiscard]] Sheet confirmation(const pieces::Order& order, const std::optional<Offer>& offer,
                                 const Printing& printing, const Style& style);

} // namespace lapwright::print
