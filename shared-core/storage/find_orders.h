#pragma once

#include "storage/lists.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::storage {

/// Orders, received ones too, in which each word is part of the name of the house or the customer, in small
/// letters or capitals, or is a mark of the order as it is written; of a mark as the field app makes them the
/// letters may be small or capitals. At most `most`, wanted last first. No word: none.
[[nodiscard]] std::vector<OrderRow> findOrders(const Database& database,
                                               const std::vector<std::string>& words, std::int64_t most);

} // namespace lapwright::storage
