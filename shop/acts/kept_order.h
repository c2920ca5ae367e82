#pragma once

#include "pieces/order.h"
#include "storage/database.h"

#include <string>

namespace lapwright::acts {

/// The order as the shop derived it, at the revision that counts. Throws storage::StorageFailure where there
/// is none or what is kept does not hold.
[[nodiscard]] pieces::Order keptOrder(const storage::Database& database, const std::string& id);

} // namespace lapwright::acts
