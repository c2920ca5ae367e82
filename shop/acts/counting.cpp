#include "acts/counting.h"

#include "acts/identity.h"
#include "storage/piece_events.h"

namespace lapwright::acts {

using schedule::PieceEvent;
using schedule::PieceState;

Result<bool> foldSome(const storage::Database& database, const Which& which, std::int64_t count,
                      const storage::Stamp& stamp)
{
    return database.write([&] {
        return storage::logEvent(
            database,
            {newUuid(), which.order, which.mark, {PieceEvent::Kind::Advance, PieceState::Folded, count}, ""},
            stamp);
    });
}

Result<bool> scrap(const storage::Database& database, const Which& which, PieceState state,
                   std::int64_t count, const std::string& reason, const storage::Stamp& stamp)
{
    if (state != PieceState::Cut && state != PieceState::Folded && state != PieceState::Bundled)
        return Error{"mark " + which.mark, "pieces that are " + std::string(schedule::name(state)),
                     "pieces that are cut, folded or bundled"};
    return database.write([&] {
        return storage::logEvent(
            database, {newUuid(), which.order, which.mark, {PieceEvent::Kind::Scrap, state, count}, reason},
            stamp);
    });
}

} // namespace lapwright::acts
