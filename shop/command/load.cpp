#include "acts/load_words.h"
#include "command.h"
#include "documents/order.h"
#include "documents/shop.h"
#include "measure/rounding.h"
#include "storage/document_file.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <map>

namespace lapwright::command {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;

std::vector<schedule::ReadyPiece> readyPieces(const storage::Database& database)
{
    std::map<std::string, std::string> names;
    for (const storage::OrderSummary& order : storage::currentOrders(database))
        names[order.id] = order.jobName;
    std::vector<schedule::ReadyPiece> ready;
    for (const storage::PieceInState& standing : storage::piecesIn(database, PieceState::Folded)) {
        const storage::OrderedPiece& piece = standing.piece;
        ready.push_back({standing.order,
                         names[standing.order],
                         {piece.metal, piece.gauge, piece.colour},
                         {piece.mark, standing.count, piece.run, piece.profile, piece.length},
                         static_cast<double>(piece.grams) / 1000.0});
    }
    return ready;
}

Exit makeLoad(const QCommandLineParser& options, const storage::Database& database)
{
    const storage::Stamp stamp = stampOf(options);
    const schedule::Load load{newUuid(), text(options, "truck"), stamp.at,
                              schedule::bundle(readyPieces(database), {})};
    if (load.bundles.empty()) {
        print("nothing is folded and waiting to be loaded");
        return Exit::Done;
    }
    const std::string document = documents::writeLoad({load, {}});
    const std::string path = text(options, "output");
    if (!path.empty()) {
        const auto written = storage::writeDocument(path, document);
        if (!written.ok()) {
            tell(written.errors());
            return Exit::CouldNot;
        }
    }
    database.write([&] {
        if (!storage::saveLoad(database, load.id, document, stamp))
            throw storage::StorageFailure("a new load has an identity that is taken");
        for (const schedule::Bundle& bundle : load.bundles)
            for (const schedule::LoadedPiece& piece : bundle.pieces)
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
    });
    if (options.isSet("json"))
        print(document);
    else
        for (const std::string& line : acts::loadInWords(load, styleOf(options)))
            print(line);
    return Exit::Done;
}

Exit run(const QCommandLineParser& options)
{
    return inShop(options, [&](const storage::Database& database) { return makeLoad(options, database); });
}

} // namespace

Subcommand loadCommand()
{
    return {
        "load",
        "",
        "tie what is folded into bundles and make the load list",
        "All folded pieces are bundled by order, metal and profile, no bundle too heavy, and go on one truck. The load "
        "document (lapwright/load) is what the crew lead checks the delivery against.",
        {databaseOption(),
         outputOption("Write the load document to this file.", "LOAD"),
         {"truck", "Name of the truck.", "NAME"},
         stationOption(),
         personOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
