#pragma once

#include "measure/result.h"
#include "storage/database.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What the crew lead found on a load, and what is ordered again because of it.
namespace lapwright::acts {

struct ReceiptTaken {
    std::int64_t received = 0;
    std::int64_t missing = 0;              ///< short, damaged or wrong
    bool hereBefore = false;               ///< this receipt came before; only its new events count
    std::optional<std::string> doubt = {}; ///< why nothing of it was taken (trust.h)
    std::vector<Error> errors;             ///< events that do not fit: not on the load, more than was loaded
};

/// Takes in the receipt document `text`, in one transaction. Events count once however often and in whatever
/// order receipts of one load come in. `accept` is a person's word to take one that is not trusted. Errors:
/// those of documents::readReceipt and distrust(); a load that is not of this shop.
[[nodiscard]] Result<ReceiptTaken> takeReceipt(const storage::Database& database, const std::string& text,
                                               const storage::Stamp& stamp, bool accept);

/// Orders again, under its own mark, every piece found short, damaged or wrong; in one transaction. What was
/// ordered again.
[[nodiscard]] std::vector<storage::PieceInState> remakeAll(const storage::Database& database,
                                                           const storage::Stamp& stamp);

} // namespace lapwright::acts
