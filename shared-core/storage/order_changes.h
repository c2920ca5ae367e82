#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/mark_change.h"
#include "storage/orders.h"
#include "storage/piece_totals.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// What a revision or a person does to the pieces of one order; for the files of this folder only.
namespace lapwright::storage {

/// The pieces the order asks for as it stands, by mark.
[[nodiscard]] std::map<std::string, OrderedPiece> standingPieces(const Database& database,
                                                                 const std::string& order);

/// Why this revision cannot be taken without a person; the flag says that not even a person's word helps.
struct Obstacles {
    std::vector<std::string> reasons;
    bool final = false;
};

[[nodiscard]] Obstacles obstacles(const std::vector<MarkChange>& list);

/// Logs what is done to the pieces of one order, and sums it up once at the end.
class OrderLog {
public:
    OrderLog(const Database& database, std::string order, Stamp stamp, std::string note);

    /// `counts` are those of the mark, and go on to what they are after. Throws StorageFailure where the
    /// event does not follow from them: what the log is told here follows from what was just read.
    void log(const std::string& mark, schedule::PieceCounts& counts, const schedule::PieceEvent& event);
    /// Scraps up to `count` of what is begun and not yet on a truck, what is least far first; it is ordered
    /// again by that.
    void scrapBegun(const std::string& mark, schedule::PieceCounts& counts, std::int64_t count);
    /// Call once, after the last event.
    void save() const { totals_.save(database_); }

private:
    const Database& database_;
    std::string order_;
    Stamp stamp_;
    std::string note_;
    PieceTotals totals_;
};

/// Scraps what is begun and more than is wanted, and brings the count of Ordered to what is wanted.
/// `number` is the mark's place in its order.
void applyChange(const Database& database, const IncomingOrder& order, MarkChange change, std::int64_t number,
                 OrderLog& log);

} // namespace lapwright::storage
