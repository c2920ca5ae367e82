#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <string>
#include <vector>

/// The append-only log of what happened to pieces, and the counts derived from it.
namespace lapwright::storage {

struct LoggedEvent {
    std::string id; ///< UUID: the same event twice is one event
    std::string order;
    std::string mark;
    schedule::PieceEvent event;
    std::string note;
};

/// Appends `event` and updates the counts. False if an event of this id is already there: nothing changes.
/// Error if there is no such piece or the pieces are not in the state the event takes them from. Call inside
/// Database::write().
[[nodiscard]] Result<bool> logEvent(const Database& database, const LoggedEvent& event, const Stamp& stamp);

[[nodiscard]] schedule::PieceCounts pieceCounts(const Database& database, const std::string& order,
                                                const std::string& mark);

/// How many pieces of the order stand in each state, all its marks together.
[[nodiscard]] schedule::PieceCounts orderCounts(const Database& database, const std::string& order);

/// One mark with how many of its pieces stand in a state.
struct PieceInState {
    std::string order;
    OrderedPiece piece;
    std::int64_t count = 0;
};

/// All pieces in `state`, by order and in the order of their marks' arrival.
[[nodiscard]] std::vector<PieceInState> piecesIn(const Database& database, schedule::PieceState state);

/// Pieces found short, damaged or wrong and not yet ordered again.
[[nodiscard]] std::vector<PieceInState> piecesAwaitingRemake(const Database& database);

} // namespace lapwright::storage
