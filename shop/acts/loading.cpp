#include "acts/loading.h"

#include "acts/identity.h"
#include "acts/kept_order.h"
#include "documents/shop.h"
#include "documents/signature.h"
#include "storage/piece_events.h"
#include "storage/shop_key.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <map>

namespace lapwright::acts {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;

/// The chain each run of an order belongs to.
std::map<std::string, std::string> areasOf(const pieces::Order& order)
{
    std::map<std::string, std::string> areas;
    for (const site::Chain& chain : order.job.chains)
        for (const site::Run& run : chain.runs)
            areas[run.id] = chain.name;
    return areas;
}

std::vector<schedule::ReadyPiece> readyPieces(const storage::Database& database)
{
    std::map<std::string, pieces::Order> orders;
    std::map<std::string, std::map<std::string, std::string>> areas;
    std::vector<schedule::ReadyPiece> ready;
    for (const storage::PieceInState& standing : storage::piecesIn(database, PieceState::Folded)) {
        if (orders.find(standing.order) == orders.end()) {
            const auto kept = orders.emplace(standing.order, keptOrder(database, standing.order)).first;
            areas[standing.order] = areasOf(kept->second);
        }
        const storage::OrderedPiece& piece = standing.piece;
        ready.push_back({standing.order,
                         orders.at(standing.order).job.name,
                         {piece.metal, piece.gauge, piece.colour},
                         {piece.mark, standing.count, piece.run, piece.profile, piece.length},
                         static_cast<double>(piece.grams) / 1000.0,
                         areas.at(standing.order)[piece.run]});
    }
    return ready;
}

void advance(const storage::Database& database, const schedule::Bundle& bundle,
             const schedule::LoadedPiece& piece, const storage::Stamp& stamp)
{
    for (const PieceState state : {PieceState::Bundled, PieceState::Loaded}) {
        const auto logged = storage::logEvent(database,
                                              {newUuid(),
                                               bundle.order,
                                               piece.mark,
                                               {PieceEvent::Kind::Advance, state, piece.count},
                                               bundle.label},
                                              stamp);
        if (!logged.ok())
            throw storage::StorageFailure(logged.errors().front().sentence());
    }
}

} // namespace

std::optional<schedule::Load> makeLoad(const storage::Database& database, const std::string& truck,
                                       const storage::Stamp& stamp)
{
    return database.write([&]() -> std::optional<schedule::Load> {
        schedule::Load load{newUuid(), truck, stamp.at, schedule::bundle(readyPieces(database), {})};
        if (load.bundles.empty())
            return std::nullopt;
        const auto document =
            documents::signDocument(documents::writeLoad({load, {}}), storage::shopKey(database));
        if (!storage::saveLoad(database, load.id, document.value(), stamp,
                               {load.truck, schedule::totalsOf(load)}))
            throw storage::StorageFailure("a new load has an identity that is taken");
        for (const schedule::Bundle& bundle : load.bundles)
            for (const schedule::LoadedPiece& piece : bundle.pieces)
                advance(database, bundle, piece, stamp);
        return load;
    });
}

} // namespace lapwright::acts
