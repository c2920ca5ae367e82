#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
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
/// Error if there is no such piece, or the pieces are not in the state the event takes them from: then it
/// says what was done last, where and by whom. Call inside Database::write().
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

/// All pieces in `state`, by the date their order is wanted, in the order of their marks' arrival.
[[nodiscard]] std::vector<PieceInState> piecesIn(const Database& database, schedule::PieceState state);

/// One mark still to be cut, with what its order says of it.
struct PieceToCut {
    PieceInState piece;
    std::string jobName;
    std::string wantedBy;
    std::int64_t priority = 0;
    bool orderHeld = false; ///< the whole order waits for a person
    bool pieceHeld = false; ///< a person keeps this mark out of every batch
    bool remade = false;    ///< some of it was delivered short, damaged or wrong
};

/// All pieces still to be cut, those that are held too; in the order of piecesIn().
[[nodiscard]] std::vector<PieceToCut> piecesToCut(const Database& database);

/// A person keeps one mark out of every batch, or lets it in again. Waiting cut plans that cut it are taken
/// back. False if there is no such mark.
[[nodiscard]] bool holdPiece(const Database& database, const std::string& order, const std::string& mark,
                             bool held);

/// Pieces found short, damaged or wrong and not yet ordered again.
[[nodiscard]] std::vector<PieceInState> piecesAwaitingRemake(const Database& database);
/// How many marks those are of.
[[nodiscard]] std::int64_t countAwaitingRemake(const Database& database);

/// The counts of every mark as the log tells them, replayed from its beginning up to and with the event
/// numbered `last`, or all of it. Error if the log tells what cannot be: it never should.
[[nodiscard]] Result<std::map<std::pair<std::string, std::string>, schedule::PieceCounts>>
replay(const Database& database, std::optional<std::int64_t> last = std::nullopt);

/// Builds every count kept beside the log anew from it, in one transaction. Error as replay().
[[nodiscard]] Result<bool> rebuildCounts(const Database& database);

} // namespace lapwright::storage
