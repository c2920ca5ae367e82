#include "acts/last_done.h"

#include "acts/words.h"
#include "storage/lists.h"

namespace lapwright::acts {

namespace {

using schedule::PieceEvent;

/// Empty for what is no work, which storage::lastWork() leaves out.
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

Done doneBy(const storage::EventRow& row)
{
    return {workOf(row.event.event), onTheWall(row.stamp.at), row.stamp.person, row.stamp.station};
}

} // namespace

std::map<std::string, Done> lastDone(const storage::Database& database, const std::string& order)
{
    std::map<std::string, Done> done;
    for (const storage::EventRow& row : storage::lastWork(database, order))
        done.emplace(row.event.mark, doneBy(row));
    return done;
}

std::map<std::pair<std::string, std::string>, Done> lastDone(const storage::Database& database,
                                                             schedule::PieceState state)
{
    std::map<std::pair<std::string, std::string>, Done> done;
    for (const storage::EventRow& row : storage::lastWork(database, state))
        done.emplace(std::pair(row.event.order, row.event.mark), doneBy(row));
    return done;
}

} // namespace lapwright::acts
