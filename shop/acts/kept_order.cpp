#include "acts/kept_order.h"

#include "documents/order.h"
#include "documents/profile_names.h"
#include "storage/shop_state.h"

#include <set>
#include <utility>

namespace lapwright::acts {

namespace {

std::string textOf(const storage::Database& database, const std::string& id)
{
    auto text = storage::derivedOrder(database, id);
    if (!text)
        throw storage::StorageFailure("order " + id + " is not there");
    return *std::move(text);
}

} // namespace

pieces::Order keptOrder(const storage::Database& database, const std::string& id)
{
    auto order = documents::readOrder(textOf(database, id));
    if (!order.ok())
        throw storage::StorageFailure(order.errors().front().sentence());
    return std::move(order->value);
}

std::vector<std::pair<std::string, std::string>> keptProfileNames(const storage::Database& database,
                                                                  const std::string& id)
{
    auto names = documents::profileNames(textOf(database, id));
    if (!names.ok())
        throw storage::StorageFailure(names.errors().front().sentence());
    return *std::move(names);
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
