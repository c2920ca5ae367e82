#include "acts/kept_order.h"

#include "documents/order.h"
#include "storage/shop_state.h"

#include <set>

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

std::vector<pieces::Order> keptOrdersOn(const storage::Database& database, const schedule::Load& load)
{
    std::set<std::string> seen;
    std::vector<pieces::Order> orders;
    for (const schedule::Bundle& bundle : load.bundles)
        if (seen.insert(bundle.order).second && storage::derivedOrder(database, bundle.order))
            orders.push_back(keptOrder(database, bundle.order));
    return orders;
}

} // namespace lapwright::acts
