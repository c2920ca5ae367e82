#pragma once

#include "measure/result.h"
#include "pieces/takeoff.h"
#include "rules/finding.h"
#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Orders on their way into the shop.
namespace lapwright::acts {

/// What a later revision does to the one that counted until it came.
struct RevisionNews {
    std::int64_t from = 1;
    schedule::PieceCounts made; ///< of the revision that counted, all its marks together
    rules::Findings changes;
};

/// What came of one order document.
struct Arrived {
    std::string order; ///< UUID
    std::string job;   ///< its name
    std::int64_t revision = 1;
    /// Where what the order claims differs from what this shop derives from its runs.
    rules::Findings differences;
    /// Of the job itself, as this shop sees it.
    rules::Findings findings;
    /// Missing: not taken in, because a finding blocks.
    std::optional<storage::Arrival> arrival;
    std::optional<RevisionNews> news;
};

/// Takes in the order document `text`, in one transaction. The shop derives every number again from the runs.
/// `accept` is a person's word to take a revision that waits. Errors: those of documents::readOrder.
[[nodiscard]] Result<Arrived> receiveOrder(const storage::Database& database,
                                           const pieces::Catalogue& catalogue, const std::string& text,
                                           const storage::Stamp& stamp, bool accept);

/// "taken in", "already here", "kept; a later revision counts", "waits for a person".
[[nodiscard]] std::string_view inWords(storage::Arrival::Outcome outcome);

} // namespace lapwright::acts
