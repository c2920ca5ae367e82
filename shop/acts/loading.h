#pragma once

#include "schedule/load.h"
#include "storage/database.h"
#include "storage/orders.h"
#include "storage/shop_state.h"

#include <optional>
#include <string>

/// From folded pieces to what goes on a truck.
namespace lapwright::acts {

/// Ties all folded pieces into bundles and makes one load of them, in one transaction. Its document is kept
/// with the shop's signature (storage/shop_key.h). Nothing if none is folded. Throws storage::StorageFailure
/// if the database would not.
[[nodiscard]] std::optional<schedule::Load> makeLoad(const storage::Database& database,
                                                     const std::string& truck, const storage::Stamp& stamp);

} // namespace lapwright::acts
