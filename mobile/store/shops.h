#pragma once

#include "store/connection.h"

#include <string>
#include <vector>

/// The shops whose load lists this tablet takes without asking.
namespace lapwright::store {

struct KnownShop {
    std::string key;       ///< public key, 64 hexadecimal digits in lower case
    std::string refusedAt; ///< empty while it is trusted
};

/// All that ever were trusted, the longest known first.
[[nodiscard]] std::vector<KnownShop> knownShops(const Connection& connection);

/// From now on what is signed with `key` is trusted, also where it was refused before.
void trustShop(const Connection& connection, const std::string& key, const std::string& at);
/// What it signs is questioned from now on.
void refuseShop(const Connection& connection, const std::string& key, const std::string& at);

} // namespace lapwright::store
