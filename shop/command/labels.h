#pragma once

#include "measure/writing.h"
#include "pieces/order.h"

#include <string>

namespace lapwright::command {

/// The first line of a table of label data: names of the columns, as comma-separated values (RFC 4180).
[[nodiscard]] std::string labelHeader();

/// One line for each piece of the order with what its label says: job, mark, which of how many, trim, run and
/// chain it goes to, material, length, girth, mass in kilograms.
[[nodiscard]] std::string labelLines(const pieces::Order& order, const Style& style);

} // namespace lapwright::command
