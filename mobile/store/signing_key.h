#pragma once

#include "documents/signature.h"
#include "store/connection.h"

/// The secret this tablet signs with. It lies in the tablet's own database and nowhere else; a backup carries
/// it, so that a restored tablet is still the one the shop knows.
namespace lapwright::store {

/// The key, made from the system's randomness the first time it is asked for. Throws StoreFailure if the
/// database would not.
[[nodiscard]] documents::SigningKey signingKey(const Connection& connection);

} // namespace lapwright::store
