#pragma once

#include "storage/database.h"

#include <cstdint>

namespace lapwright::storage {

/// A number that is another one than before when any connection, of this program or another, this one too,
/// has committed something since. Cheap: it reads one row.
[[nodiscard]] std::int64_t changesByOthers(const Database& database);

} // namespace lapwright::storage
