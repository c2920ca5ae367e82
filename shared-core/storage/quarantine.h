#pragma once

#include "storage/database.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::storage {

/// A revision that waits for a person.
struct QuarantinedOrder {
    std::string hash; ///< of the document; names it here
    std::string order;
    std::int64_t revision = 1;
    std::vector<std::string> reasons;
    std::string receivedAt; ///< ISO 8601, UTC
    std::string document;   ///< as received, word for word
};

/// The revisions that wait, in the order they came.
[[nodiscard]] std::vector<QuarantinedOrder> quarantinedOrders(const Database& database);

} // namespace lapwright::storage
