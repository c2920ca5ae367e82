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

Done doneBy(const std::string& work, const storage::Stamp& stamp)
{
    return {work, onTheWall(stamp.at), stamp.person, stamp.station};
}

} // namespace

std::map<std::string, Done> lastDone(const storage::Database& database, const std::string& order)
{
    std::map<std::string, Done> done;
    for (const storage::EventRow& row : storage::listEvents(database, order, {}, {{}, mostEvents}).rows)
        if (const std::string work = workOf(row.event.event); !work.empty())
            done.try_emplace(row.event.mark, doneBy(work, row.stamp)); // the latest comes first
    return done;
}

std::map<std::pair<std::string, std::string>, Done> lastDone(const storage::Database& database,
                                                             schedule::PieceState state)
{
    std::map<std::pair<std::string, std::string>, Done> done;
    for (const storage::EventRow& row : storage::lastWork(database, state))
        done.emplace(std::pair(row.event.order, row.event.mark), doneBy(workOf(row.event.event), row.stamp));
    return done;
}

} // namespace lapwright::acts
