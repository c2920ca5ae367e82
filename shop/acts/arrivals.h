#pragma once

#include "measure/result.h"
#include "pieces/takeoff.h"
#include "rules/finding.h"
#include "storage/database.h"
#include "storage/mark_change.h"
#include "storage/orders.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Orders on their way into the shop.
namespace lapwright::acts {

/// What a later revision does to the one that counted until it came.
struct RevisionNews {
    std::int64_t from = 1;
    std::vector<storage::MarkChange> marks; ///< each with how much of it is made and what becomes scrap
    rules::Findings changes;                ///< what was measured or wanted otherwise, and what follows
};

/// Another order of the same house, by its address: perhaps a second tablet measured it too.
struct SameHouse {
    storage::OrderSummary order;
    /// Runs of the order that came that are of the same kind and length as one of the other: "E3 as F1".
    /// Pieces of them may be ordered twice; a person decides.
    std::vector<std::string> runsAlike;
};

/// What came of one order document.
struct Arrived {
    std::string order; ///< UUID
    std::string job;   ///< its name
    std::int64_t revision = 1;
    /// Of this revision (documents::revisionHash).
    std::string hash;
    std::int64_t photos = 0; ///< that the order speaks of
    bool cancelled = false;  ///< by this revision
    /// Where what the order claims differs from what this shop derives from its runs.
    rules::Findings differences;
    /// Of the job itself, as this shop sees it, and a warning for each photo that did not come.
    rules::Findings findings;
    /// Missing: not taken in, because a finding blocks; none keeps an order from being cancelled.
    std::optional<storage::Arrival> arrival;
    std::optional<RevisionNews> news;
    std::vector<SameHouse> sameHouse;
};

/// Takes in an order as it came, a plain document or a ZIP of one with its photos (parcel/parcel.h), in one
/// transaction. The shop derives every number again from the runs, but of a revision that was taken in before
/// nothing.
/// `accept` is a person's word to take a revision that waits. Errors: those of parcel::unpack and
/// documents::readOrder.
[[nodiscard]] Result<Arrived> receiveOrder(const storage::Database& database,
                                           const pieces::Catalogue& catalogue, const std::string& came,
                                           const storage::Stamp& stamp, bool accept);

/// Whether this very order was taken in before, waits or was dismissed: a folder that is looked into anew
/// gives it again, and nobody sent it. False for what is no order.
[[nodiscard]] bool isKnown(const storage::Database& database, const std::string& came);

/// "E1.1 changes: 2 wanted before, 2 now; 1 cut, 1 folded; 2 become scrap".
[[nodiscard]] std::string inWords(const storage::MarkChange& change);

/// "taken in", "already here", "kept; a later revision counts", "waits for a person".
[[nodiscard]] std::string_view inWords(storage::Arrival::Outcome outcome);

} // namespace lapwright::acts
