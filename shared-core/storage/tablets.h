#pragma once

#include "storage/database.h"
#include "storage/orders.h"

#include <optional>
#include <string>
#include <vector>

/// The tablets whose signatures this shop goes by.
namespace lapwright::storage {

struct Tablet {
    std::string key; ///< public key, 64 hexadecimal digits in lower case
    std::string name;
    std::string pairedAt;  ///< ISO 8601, UTC
    std::string revokedAt; ///< empty while it is trusted
};

/// All that ever were paired, by name.
[[nodiscard]] std::vector<Tablet> tablets(const Database& database);
/// The one with this key, revoked or not.
[[nodiscard]] std::optional<Tablet> tabletOf(const Database& database, const std::string& key);

/// From now on what is signed with `key` is trusted. A key that was revoked is trusted again, under the new
/// name.
void pairTablet(const Database& database, const std::string& key, const std::string& name,
                const Stamp& stamp);
/// What this key signs is trusted no longer; what was taken stays. False if no tablet with it is trusted.
[[nodiscard]] bool revokeTablet(const Database& database, const std::string& key, const Stamp& stamp);

/// Every order document that waits for a person.
[[nodiscard]] std::vector<std::string> waitingDocuments(const Database& database);

} // namespace lapwright::storage
