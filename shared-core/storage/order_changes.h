#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"
#include "storage/piece_totals.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// What a revision or a person does to the pieces of one order; for the files of this folder only.
namespace lapwright::storage {

/// What a revision does to one mark.
struct Change {
    std::string mark;
    std::optional<OrderedPiece> before;
    std::optional<OrderedPiece> now;
    schedule::PieceCounts counts;

    /// Pieces past Ordered that the new revision no longer wants as they are.
    [[nodiscard]] std::int64_t begun() const;
    [[nodiscard]] bool samePiece() const;
    /// Nothing that is begun is touched: the piece stays as it is and no fewer are wanted than are begun.
    [[nodiscard]] bool harmless() const;
};

/// The pieces the order asks for as it stands, by mark.
[[nodiscard]] std::map<std::string, OrderedPiece> standingPieces(const Database& database,
                                                                 const std::string& order);

/// What `order` changes; `known` is false for an order that never was here, so that nothing can be made of
/// it.
[[nodiscard]] std::vector<Change> changes(const Database& database, const IncomingOrder& order, bool known);

/// Why this revision cannot be taken without a person; the flag says that not even a person's word helps.
struct Obstacles {
    std::vector<std::string> reasons;
    bool final = false;
};

[[nodiscard]] Obstacles obstacles(const std::vector<Change>& list);

/// Logs what is done to the pieces of one order, and sums it up once at the end.
class OrderLog {
public:
    OrderLog(const Database& database, std::string order, Stamp stamp, std::string note);

    /// `counts` are those of the mark, and go on to what they are after. Throws StorageFailure where the
    /// event does not follow from them: what the log is told here follows from what was just read.
    void log(const std::string& mark, schedule::PieceCounts& counts, const schedule::PieceEvent& event);
    /// Scraps what is begun and not yet on a truck; it is ordered again by that.
    void scrapBegun(const std::string& mark, schedule::PieceCounts& counts);
    /// Call once, after the last event.
    void save() const { totals_.save(database_); }

private:
    const Database& database_;
    std::string order_;
    Stamp stamp_;
    std::string note_;
    PieceTotals totals_;
};

/// Scraps what is begun and no longer wanted as it is, and brings the count of Ordered to what is wanted.
/// `number` is the mark's place in its order.
void applyChange(const Database& database, const IncomingOrder& order, Change change, std::int64_t number,
                 OrderLog& log);

} // namespace lapwright::storage
