#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "schedule/stock.h"
#include "schedule/stock_book.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::acts {

/// The stock as it stands in the shop's database; nothing before the first stock document was given. Error: a
/// document there that does not hold.
[[nodiscard]] Result<std::optional<documents::Document<schedule::ShopStock>>>
standingStock(const storage::Database& database);

/// One item of stock as lists show it.
struct StockRow {
    schedule::StockItem item;
    schedule::Reserved reserved; ///< by plans that wait to be cut
};

/// The whole stock. Errors: a stock or plan in the database that does not hold.
[[nodiscard]] Result<std::vector<StockRow>> listStock(const storage::Database& database);

/// What a person counted of one item, kept and logged in one transaction. Errors: no stock, and those of
/// schedule::correct().
struct Count {
    std::string key;
    std::optional<std::int64_t> count;
    std::optional<Length> length; ///< left on a coil
    std::string note;
};
[[nodiscard]] Result<schedule::StockChange> correctStock(const storage::Database& database,
                                                         const Count& counted, const storage::Stamp& stamp);

/// Call inside Database::write().
void logStockChange(const storage::Database& database, const schedule::StockChange& change,
                    const std::string& plan, const storage::Stamp& stamp);

} // namespace lapwright::acts
