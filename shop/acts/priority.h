#pragma once

#include "schedule/civil.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <optional>
#include <string>

namespace lapwright::acts {

/// The day the order is wanted, if it names one.
[[nodiscard]] std::optional<schedule::Date> dateOf(const storage::OrderSummary& order);

/// 1 for an order of which pieces are made again, because a crew waits for them; otherwise 0.
[[nodiscard]] int priorityOf(const storage::Database& database, const std::string& order);

} // namespace lapwright::acts
