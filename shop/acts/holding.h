#pragma once

#include "measure/result.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <string>

/// What a person keeps out of the plans. Sheets that are ticked of a plan it takes back count as cut first.
namespace lapwright::acts {

/// False if there is no such order. Errors: ticked sheets that cannot count as cut.
[[nodiscard]] Result<bool> holdOrder(const storage::Database& database, const std::string& order, bool held,
                                     const storage::Stamp& stamp);
/// The same for one mark of an order.
[[nodiscard]] Result<bool> holdPiece(const storage::Database& database, const std::string& order,
                                     const std::string& mark, bool held, const storage::Stamp& stamp);
/// storage::cancelOrder(), with its errors and those above.
[[nodiscard]] Result<storage::Arrival> cancelOrder(const storage::Database& database,
                                                   const std::string& order, const storage::Stamp& stamp,
                                                   bool accept);

} // namespace lapwright::acts
