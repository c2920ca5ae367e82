#include "acts/receipts.h"

#include "acts/identity.h"
#include "acts/trust.h"
#include "documents/shop.h"
#include "storage/shop_state.h"

#include <set>
#include <utility>

namespace lapwright::acts {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;

/// Order and mark of every piece on the load.
using OnLoad = std::set<std::pair<std::string, std::string>>;

OnLoad piecesOn(const schedule::Load& load)
{
    OnLoad pieces;
    for (const schedule::Bundle& bundle : load.bundles)
        for (const schedule::LoadedPiece& piece : bundle.pieces)
            pieces.insert({bundle.order, piece.mark});
    return pieces;
}

void takeEvents(const storage::Database& database, const schedule::Receipt& receipt, const OnLoad& onLoad,
                const storage::Stamp& stamp, ReceiptTaken& taken)
{
    for (const schedule::ReceiptEvent& event : receipt.events) {
        if (onLoad.find({event.order, event.mark}) == onLoad.end()) {
            taken.errors.push_back({"mark " + event.mark, "a piece that is not on the load",
                                    "a mark of one of the load's bundles"});
            continue;
        }
        const auto logged = storage::logEvent(database,
                                              {event.id,
                                               event.order,
                                               event.mark,
                                               {PieceEvent::Kind::Advance, event.found, event.count},
                                               event.note},
                                              {event.at, stamp.station, event.person});
        if (!logged.ok())
            taken.errors.insert(taken.errors.end(), logged.errors().begin(), logged.errors().end());
        else if (*logged)
            (event.found == PieceState::Received ? taken.received : taken.missing) += event.count;
    }
}

} // namespace

Result<ReceiptTaken> takeReceipt(const storage::Database& database, const std::string& text,
                                 const storage::Stamp& stamp, bool accept)
{
    const auto document = documents::readReceipt(text);
    if (!document.ok())
        return document.errors();
    auto doubt = distrust(database, text);
    if (!doubt.ok())
        return doubt.errors();
    if (*doubt && !accept) {
        ReceiptTaken nothing;
        nothing.doubt = *std::move(*doubt);
        return nothing;
    }
    const schedule::Receipt& receipt = document->value;
    const auto kept = storage::loadDocument(database, receipt.load);
    if (!kept)
        return Error{"/load", receipt.load, "a load of this shop"};
    const auto load = documents::readLoad(*kept);
    if (!load.ok())
        throw storage::StorageFailure(load.errors().front().sentence());
    return database.write([&]() -> Result<ReceiptTaken> {
        ReceiptTaken taken;
        taken.hereBefore = !storage::saveReceipt(database, receipt.id, receipt.load, text, stamp);
        takeEvents(database, receipt, piecesOn(load->value), stamp, taken);
        return taken;
    });
}

std::vector<storage::PieceInState> remakeAll(const storage::Database& database, const storage::Stamp& stamp)
{
    return database.write([&] {
        std::vector<storage::PieceInState> waiting = storage::piecesAwaitingRemake(database);
        for (const storage::PieceInState& piece : waiting) {
            const auto logged =
                storage::logEvent(database,
                                  {newUuid(),
                                   piece.order,
                                   piece.piece.mark,
                                   {PieceEvent::Kind::Remake, PieceState::Ordered, piece.count},
                                   ""},
                                  stamp);
            if (!logged.ok())
                throw storage::StorageFailure(logged.errors().front().sentence());
        }
        return waiting;
    });
}

} // namespace lapwright::acts
