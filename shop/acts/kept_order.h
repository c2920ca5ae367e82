#pragma once

#include "pieces/order.h"
#include "schedule/load.h"
#include "storage/database.h"

#include <string>
#include <utility>
#include <vector>

namespace lapwright::acts {

/// The order as the shop derived it, at the revision that counts. Throws storage::StorageFailure where there
/// is none or what is kept does not hold.
[[nodiscard]] pieces::Order keptOrder(const storage::Database& database, const std::string& id);

/// Id and name of each profile of the order, in its sequence: as keptOrder() without reading all of it.
[[nodiscard]] std::vector<std::pair<std::string, std::string>>
keptProfileNames(const storage::Database& database, const std::string& id);

/// Of the orders whose pieces are on the load, those that are still here, each once. Throws as keptOrder().
[[nodiscard]] std::vector<pieces::Order> keptOrdersOn(const storage::Database& database,
                                                      const schedule::Load& load);

} // namespace lapwright::acts
