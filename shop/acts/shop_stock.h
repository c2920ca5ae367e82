#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "metal/metal.h"
#include "schedule/stock.h"
#include "schedule/stock_book.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <map>
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

/// One item as a person describes it, and what it was when that person began; nothing: it is new.
struct Described {
    std::optional<schedule::StockItem> before;
    documents::Document<schedule::StockItem> item;
};

/// The item of that key as it stands, with what else its document says; nothing if there is none. Error: a
/// stock that does not hold.
[[nodiscard]] Result<std::optional<documents::Document<schedule::StockItem>>>
stockItem(const storage::Database& database, const std::string& key);

/// Puts it on the racks or in place of what it was, kept and logged in one transaction; the first item begins
/// the stock. Errors: those of stuffOf() and schedule::put(); anything but another amount while a plan
/// waits that cuts from it.
[[nodiscard]] Result<std::vector<schedule::StockChange>>
putOnRacks(const storage::Database& database, const Described& described,
           const std::map<std::string, metal::Metal>& metals, const storage::Stamp& stamp);

/// Takes it off the racks, kept and logged in one transaction. Errors: no such item; a plan that waits and
/// cuts from it.
[[nodiscard]] Result<schedule::StockChange> takeOffRacks(const storage::Database& database,
                                                         const std::string& key, const storage::Stamp& stamp);

/// Call inside Database::write().
void logStockChange(const storage::Database& database, const schedule::StockChange& change,
                    const std::string& plan, const storage::Stamp& stamp);

} // namespace lapwright::acts
