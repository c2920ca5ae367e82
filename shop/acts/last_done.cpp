#include "acts/last_done.h"

#include "acts/words.h"
#include "storage/lists.h"

namespace lapwright::acts {

namespace {

using schedule::PieceEvent;

/// Enough for every event of a large house.
constexpr std::int64_t mostEvents = 5'000;

/// Empty for what is no work: that the piece is wanted, or not any more.
std::string workOf(const PieceEvent& event)
{
    switch (event.kind) {
    case PieceEvent::Kind::Advance:
        return std::string(schedule::name(event.state));
    case PieceEvent::Kind::Scrap:
        return "spoilt";
    case PieceEvent::Kind::Remake:
        return "ordered again";
    case PieceEvent::Kind::Again:
        return "taken back to be folded again";
    case PieceEvent::Kind::Order:
    case PieceEvent::Kind::Withdraw:
        break;
    }
    return {};
}

} // namespace

std::map<std::string, Done> lastDone(const storage::Database& database, const std::string& order)
{
    std::map<std::string, Done> done;
    for (const storage::EventRow& row : storage::listEvents(database, order, {}, {{}, mostEvents}).rows)
        if (const std::string work = workOf(row.event.event); !work.empty())
            // The latest comes first.
            done.try_emplace(row.event.mark,
                             Done{work, onTheWall(row.stamp.at), row.stamp.person, row.stamp.station});
    return done;
}

} // namespace lapwright::acts
