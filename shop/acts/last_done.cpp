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

std::string inWords(const std::string& work, const storage::Stamp& stamp)
{
    return work + " " + onTheWall(stamp.at) + (stamp.person.empty() ? "" : " by " + stamp.person) +
           (stamp.station.empty() ? "" : ", " + stamp.station);
}

} // namespace

std::map<std::string, std::string> lastDone(const storage::Database& database, const std::string& order)
{
    std::map<std::string, std::string> done;
    for (const storage::EventRow& row : storage::listEvents(database, order, {}, {{}, mostEvents}).rows)
        if (const std::string work = workOf(row.event.event); !work.empty())
            done.emplace(row.event.mark, inWords(work, row.stamp)); // the latest comes first
    return done;
}

} // namespace lapwright::acts
