#include "acts/fold_lot.h"

#include "acts/identity.h"
#include "storage/piece_events.h"

namespace lapwright::acts {

using schedule::PieceEvent;
using schedule::PieceState;

Result<MarkCounts> foldLot(const storage::Database& database, const std::string& order,
                           const std::string& profile, const storage::Stamp& stamp)
{
    return database.write([&]() -> Result<MarkCounts> {
        MarkCounts marks;
        for (const storage::PieceInState& piece : storage::piecesIn(database, PieceState::Cut)) {
            if (piece.order != order || piece.piece.profile != profile)
                continue;
            const PieceEvent folded{PieceEvent::Kind::Advance, PieceState::Folded, piece.count};
            const auto logged =
                storage::logEvent(database, {newUuid(), order, piece.piece.mark, folded, ""}, stamp);
            // The pieces were read in this transaction: they are there.
            if (!logged.ok())
                throw storage::StorageFailure(logged.errors().front().sentence());
            marks[piece.piece.mark] += piece.count;
        }
        if (marks.empty())
            return Error{"profile " + profile, "no piece of it that is cut", "cut pieces that wait"};
        return marks;
    });
}

Result<bool> foldAgain(const storage::Database& database, const std::string& order, const MarkCounts& marks,
                       const storage::Stamp& stamp)
{
    return database.write([&]() -> Result<bool> {
        for (const auto& [mark, count] : marks)
            if (storage::pieceCounts(database, order, mark).of(PieceState::Folded) < count)
                return Error{"mark " + mark, "it is loaded, or another station took it back",
                             std::to_string(count) + " folded and waiting for a truck"};
        for (const auto& [mark, count] : marks) {
            const PieceEvent again{PieceEvent::Kind::Again, PieceState::Folded, count};
            const auto logged = storage::logEvent(database, {newUuid(), order, mark, again, ""}, stamp);
            // They were counted in this transaction: they are there.
            if (!logged.ok())
                throw storage::StorageFailure(logged.errors().front().sentence());
        }
        return true;
    });
}

} // namespace lapwright::acts
