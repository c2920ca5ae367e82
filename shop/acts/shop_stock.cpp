#include "acts/shop_stock.h"

#include "documents/shop.h"
#include "storage/shop_state.h"

namespace lapwright::acts {

Result<std::optional<documents::Document<schedule::ShopStock>>>
standingStock(const storage::Database& database)
{
    const auto text = storage::stockDocument(database);
    if (!text)
        return std::optional<documents::Document<schedule::ShopStock>>();
    auto stock = documents::readStock(*text);
    if (!stock.ok())
        return stock.errorsWithin("stock in the database");
    return std::optional(*std::move(stock));
}

} // namespace lapwright::acts
