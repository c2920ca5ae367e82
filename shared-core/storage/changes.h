#pragma once

#include "storage/database.h"

#include <cstdint>

namespace lapwright::storage {

/// A number that is another one than before when another connection, of this program or another, has
/// committed something since. Cheap: it reads no table.
[[nodiscard]] std::int64_t changesByOthers(const Database& database);

} // namespace lapwright::storage
