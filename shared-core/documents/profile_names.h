#pragma once

#include "measure/result.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lapwright::documents {

/// Id and name of each profile of an order (lapwright/order), in its sequence: for lists over many orders,
/// which have no time to read each of them whole. What else the text says is not looked at. Errors: a text
/// that is no JSON as far as it is read.
[[nodiscard]] Result<std::vector<std::pair<std::string, std::string>>> profileNames(std::string_view order);

} // namespace lapwright::documents
