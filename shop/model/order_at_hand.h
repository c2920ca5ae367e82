#pragma once

#include "acts/incoming.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace lapwright::model {

class Shop;

/// The order that a desk shows. A large one takes long to read, so it is read again only where it became
/// another one.
class OrderAtHand {
public:
    explicit OrderAtHand(const Shop& shop) : shop_(shop) {}

    /// The order as the shop keeps it, without differences. Throws as acts::keptOrder().
    [[nodiscard]] std::shared_ptr<const acts::Derived> kept(const std::string& order);
    /// The order that waits under this hash, derived from its runs; nullptr where none does or what is kept
    /// of it does not hold. Throws storage::StorageFailure.
    [[nodiscard]] std::shared_ptr<const acts::Derived> waiting(const std::string& hash);

private:
    /// The one at hand if it is that of `identity`, else what `read` gives.
    std::shared_ptr<const acts::Derived> readOnce(const std::string& identity,
                                                  const std::function<std::optional<acts::Derived>()>& read);

    const Shop& shop_;
    std::string identity_; ///< what tells it from every other; empty: none is at hand
    std::shared_ptr<const acts::Derived> order_;
};

} // namespace lapwright::model
