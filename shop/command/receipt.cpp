#include "acts/words.h"
#include "command.h"
#include "documents/shop.h"
#include "input.h"
#include "measure/rounding.h"
#include "results.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <set>
#include <utility>

namespace lapwright::command {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;

struct Taken {
    std::int64_t received = 0;
    std::int64_t missing = 0;
    std::vector<Error> errors;
};

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

Taken takeIn(const storage::Database& database, const schedule::Receipt& receipt, const OnLoad& onLoad,
             const storage::Stamp& stamp)
{
    Taken taken;
    for (const schedule::ReceiptEvent& event : receipt.events) {
        if (!onLoad.contains({event.order, event.mark})) {
            taken.errors.push_back({"mark " + event.mark, "a piece that is not on the load",
                                    "a mark of one of the load's bundles"});
            continue;
        }
        const storage::Stamp found{event.at, stamp.station, event.person};
        const auto logged = storage::logEvent(database,
                                              {event.id,
                                               event.order,
                                               event.mark,
                                               {PieceEvent::Kind::Advance, event.found, event.count},
                                               event.note},
                                              found);
        if (!logged.ok())
            for (const Error& error : logged.errors())
                taken.errors.push_back(error);
        else if (*logged)
            (event.found == PieceState::Received ? taken.received : taken.missing) += event.count;
    }
    return taken;
}

Exit receive(const QCommandLineParser& options, const storage::Database& database)
{
    const std::string path = argument(options);
    const auto received = receiveFrom(path, documents::readReceipt);
    if (!received.ok()) {
        tell(received.errors());
        return Exit::BadInput;
    }
    const schedule::Receipt& receipt = received->document.value;
    const auto document = storage::loadDocument(database, receipt.load);
    if (!document) {
        tell(nameOf(path) + "/load: found " + receipt.load + ", expected a load of this shop");
        return Exit::BadInput;
    }
    const auto load = documents::readLoad(*document);
    if (!load.ok())
        throw storage::StorageFailure(load.errors().front().sentence());
    const storage::Stamp stamp = stampOf(options);
    const Taken taken = database.write([&] {
        if (!storage::saveReceipt(database, receipt.id, receipt.load, received->text, stamp))
            tell("this receipt was here before; only events that are new count");
        return takeIn(database, receipt, piecesOn(load->value), stamp);
    });
    Results results(options);
    results.add(acts::counted(taken.received, "piece") + " received, " + std::to_string(taken.missing) +
                    " short, damaged or wrong",
                {{"received", taken.received}, {"missing", taken.missing}});
    results.finish();
    for (const Error& error : taken.errors)
        tell(error.within(nameOf(path)).sentence());
    return taken.errors.empty() ? Exit::Done : Exit::Blocked;
}

Exit remake(const QCommandLineParser& options, const storage::Database& database)
{
    const storage::Stamp stamp = stampOf(options);
    const auto waiting = storage::piecesAwaitingRemake(database);
    database.write([&] {
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
    });
    Results results(options);
    for (const storage::PieceInState& piece : waiting)
        results.add("remake " + std::to_string(piece.count) + " of " + piece.piece.mark + ", " +
                        write(piece.piece.length, styleOf(options)),
                    {{"order", piece.order},
                     {"mark", piece.piece.mark},
                     {"count", piece.count},
                     {"length_mm", inMillimetres(piece.piece.length)}});
    if (waiting.empty())
        results.nothing("nothing is waiting for a remake");
    results.finish();
    return Exit::Done;
}

Exit status(const QCommandLineParser& options, const storage::Database& database)
{
    Results results(options);
    for (const storage::OrderSummary& order : storage::currentOrders(database))
        results.add(order.jobName + ", " + order.customer + ", revision " + std::to_string(order.revision) +
                        (order.wantedBy.empty() ? "" : ", wanted by " + order.wantedBy),
                    {{"order", order.id},
                     {"job", order.jobName},
                     {"customer", order.customer},
                     {"revision", order.revision},
                     {"wanted_by", order.wantedBy}});
    for (std::size_t state = 0; state < schedule::pieceStates; ++state) {
        std::int64_t count = 0;
        for (const storage::PieceInState& piece : storage::piecesIn(database, static_cast<PieceState>(state)))
            count += piece.count;
        const std::string name(schedule::name(static_cast<PieceState>(state)));
        if (count > 0)
            results.add(acts::counted(count, "piece") + " " + name, {{"state", name}, {"count", count}});
    }
    results.finish();
    return Exit::Done;
}

} // namespace

Subcommand receiptCommand()
{
    return {
        "receipt",
        "RECEIPT",
        "take in what the crew lead found on a load",
        "RECEIPT is a receipt document (lapwright/receipt). Its events count once however often and in whatever order "
        "receipts of one load come in.",
        {databaseOption(), stationOption(), personOption()},
        1,
        1,
        [](const QCommandLineParser& options) {
            return inShop(options,
                          [&](const storage::Database& database) { return receive(options, database); });
        }};
}

Subcommand remakeCommand()
{
    return {
        "remake",
        "",
        "order again what came short, damaged or wrong",
        "Pieces found short, damaged or wrong on site are ordered again under their own marks and go into the next "
        "plan.",
        {databaseOption(), stationOption(), personOption()},
        0,
        0,
        [](const QCommandLineParser& options) {
            return inShop(options,
                          [&](const storage::Database& database) { return remake(options, database); });
        }};
}

Subcommand statusCommand()
{
    return {"status",
            "",
            "list the orders and how many pieces stand where",
            "Orders by the date they are wanted, then the number of pieces in each state.",
            {databaseOption()},
            0,
            0,
            [](const QCommandLineParser& options) {
                return inShop(options,
                              [&](const storage::Database& database) { return status(options, database); });
            }};
}

} // namespace lapwright::command
