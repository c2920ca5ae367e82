#pragma once

#include "measure/result.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <map>
#include <string>

namespace lapwright::acts {

/// How many pieces of each mark.
using MarkCounts = std::map<std::string, std::int64_t>;

/// Says that every cut piece of one profile of an order is folded: all of them or none, in one transaction.
/// Those that were said to be. Error: none is cut and waiting.
[[nodiscard]] Result<MarkCounts> foldLot(const storage::Database& database, const std::string& order,
                                         const std::string& profile, const storage::Stamp& stamp);

/// Says that so many folded pieces of an order, by mark, are to be folded again: all of them or none, in one
/// transaction. Error: so many are not folded and waiting.
[[nodiscard]] Result<bool> foldAgain(const storage::Database& database, const std::string& order,
                                     const MarkCounts& marks, const storage::Stamp& stamp);

} // namespace lapwright::acts
