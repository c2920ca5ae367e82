#include "acts/kept_order.h"

#include "documents/order.h"
#include "storage/shop_state.h"

namespace lapwright::acts {

pieces::Order keptOrder(const storage::Database& database, const std::string& id)
{
    const auto text = storage::derivedOrder(database, id);
    if (!text)
        throw storage::StorageFailure("order " + id + " is not there");
    auto order = documents::readOrder(*text);
    if (!order.ok())
        throw storage::StorageFailure(order.errors().front().sentence());
    return std::move(order->value);
}

} // namespace lapwright::acts
