#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a later revision of an order does to its pieces, mark by mark.
namespace lapwright::storage {

struct MarkChange {
    std::string mark;
    std::optional<OrderedPiece> before; ///< nothing: the mark is new
    std::optional<OrderedPiece> now;    ///< nothing: it is no longer wanted
    schedule::PieceCounts counts;       ///< how many stand where, before the revision is taken

    /// Pieces past Ordered.
    [[nodiscard]] std::int64_t begun() const;
    /// Both revisions want it, made alike; how many may differ.
    [[nodiscard]] bool samePiece() const;
    /// Pieces begun that the revision does not want: all of them where the piece is made otherwise or no
    /// longer wanted, else those above the number wanted.
    [[nodiscard]] std::int64_t surplus() const;
    /// Those of the surplus that are still in the shop, to be scrapped. The rest left on a truck.
    [[nodiscard]] std::int64_t scrap() const;
};

/// What taking `order` changes: the marks no longer wanted by their names, then those new or changed as the
/// order tells them; a mark that stays as it is is left out. A cancelled order wants no mark.
[[nodiscard]] std::vector<MarkChange> markChanges(const Database& database, const IncomingOrder& order);

} // namespace lapwright::storage
