#pragma once

#include "store/connection.h"

#include <cstdint>
#include <optional>
#include <string>

/// Orders that left the tablet, revision by revision.
namespace lapwright::store {

struct SentOrder {
    std::int64_t revision = 0;
    std::string hash;
    std::string sentAt;
    std::string document; ///< canonical text
};

/// The latest revision of a job's order that was sent; nothing if none was.
[[nodiscard]] std::optional<SentOrder> lastSent(const Connection& connection, const std::string& job);
/// Keeps what was written out and marks the job as sent, together. The same revision again must be the same
/// order; throws StoreFailure otherwise.
void keepSent(const Connection& connection, const std::string& job, const SentOrder& order);

} // namespace lapwright::store
