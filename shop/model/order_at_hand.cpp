#include "order_at_hand.h"

#include "acts/kept_order.h"
#include "documents/order.h"
#include "shop.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

#include <utility>

namespace lapwright::model {

std::shared_ptr<const acts::Derived> OrderAtHand::kept(const std::string& order)
{
    const auto identity = storage::derivedIdentity(shop_.database(), order);
    return readOnce("kept " + order + ' ' + identity.value_or(std::string()), [&] {
        return std::optional(acts::Derived{acts::keptOrder(shop_.database(), order), {}});
    });
}

std::shared_ptr<const acts::Derived> OrderAtHand::waiting(const std::string& hash)
{
    // What it is derived to depends on the library as well.
    return readOnce("waits " + hash + ' ' + std::to_string(shop_.libraryVersion()),
                    [&]() -> std::optional<acts::Derived> {
                        const auto read =
                            documents::readOrder(storage::waitingDocument(shop_.database(), hash));
                        if (!read.ok())
                            return std::nullopt;
                        return acts::deriveAgain(*read, shop_.catalogue());
                    });
}

std::shared_ptr<const acts::Derived>
OrderAtHand::readOnce(const std::string& identity, const std::function<std::optional<acts::Derived>()>& read)
{
    if (identity == identity_)
        return order_;
    identity_.clear();
    auto now = read();
    order_ = now ? std::make_shared<const acts::Derived>(*std::move(now)) : nullptr;
    if (order_)
        identity_ = identity;
    return order_;
}

} // namespace lapwright::model
