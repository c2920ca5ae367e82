#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "schedule/stock.h"
#include "storage/database.h"

#include <optional>

namespace lapwright::acts {

/// The stock as it stands in the shop's database; nothing before the first stock document was given. Error: a
/// document there that does not hold.
[[nodiscard]] Result<std::optional<documents::Document<schedule::ShopStock>>>
standingStock(const storage::Database& database);

} // namespace lapwright::acts
