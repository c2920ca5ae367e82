#pragma once

#include "storage/database.h"

#include <map>
#include <string>

/// Who did what last.
namespace lapwright::acts {

/// What was done last to each mark of an order, with when, by whom and where: "folded 2026-11-26 10:32 by
/// Ann, folder". Marks that nothing was done to yet are left out. Of an order with more than some thousand
/// events the latest count.
[[nodiscard]] std::map<std::string, std::string> lastDone(const storage::Database& database,
                                                          const std::string& order);

} // namespace lapwright::acts
