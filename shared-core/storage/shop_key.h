#pragma once

#include "documents/signature.h"
#include "storage/database.h"

#include <optional>

/// The shop's own key. It signs load lists, so that a tablet knows that they come from its shop and that
/// nobody changed them; every station of the shop signs with the same.
namespace lapwright::storage {

/// Made when it is first asked for. Call inside Database::write().
[[nodiscard]] documents::SigningKey shopKey(const Database& database);

/// What others know it by; nothing where the shop has none yet.
[[nodiscard]] std::optional<documents::PublicKey> shopPublicKey(const Database& database);

/// A new one in its place, because the old one may be known to others; tablets have to be told its code. Call
/// inside Database::write().
void renewShopKey(const Database& database);

} // namespace lapwright::storage
