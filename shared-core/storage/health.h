#pragma once

#include "measure/result.h"
#include "storage/database.h"

#include <cstdint>
#include <vector>

/// Whether what a shop's database says holds together.
namespace lapwright::storage {

struct Health {
    std::int64_t orders = 0; ///< revisions
    std::int64_t events = 0;
    std::int64_t documents = 0; ///< read again: orders, plans, loads, receipts, stock
    /// The file, the log or a document is not what it was when it was written: nothing here mends that, and a
    /// backup is worth more than the next write.
    std::vector<Error> damage;
    /// Counts kept beside the log are not what the log tells; rebuildCounts() makes them anew.
    std::vector<Error> miscounts;

    [[nodiscard]] bool sound() const { return damage.empty() && miscounts.empty(); }
};

/// Reads everything again and changes nothing: the pages of the file (SQLite); the log from its beginning
/// against the counts of marks, orders and shop; that each mark has as many pieces as its order wants; every
/// document by its reader; each order's hash, and that a revision carries the hash of the one before it; what
/// waiting plans take against what is still to be cut. Stops at 100 of either kind.
[[nodiscard]] Health examine(const Database& database);

} // namespace lapwright::storage
