#pragma once

#include "pieces/order.h"

#include <string>
#include <vector>

namespace lapwright::documents {

/// For each piece of the order a digest of all that makes the folded piece what it is: profile, length, end
/// cuts, hand; not its mark, run, count or where its numbers come from. Pieces with the same digest are the
/// same to fold. 16 hexadecimal digits.
[[nodiscard]] std::vector<std::string> makeDigests(const pieces::Order& order);

} // namespace lapwright::documents
