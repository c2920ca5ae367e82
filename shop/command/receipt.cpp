#include "acts/receipts.h"
#include "acts/words.h"
#include "command.h"
#include "input.h"
#include "measure/rounding.h"
#include "results.h"
#include "storage/document_file.h"
#include "storage/lists.h"
#include "storage/piece_events.h"

namespace lapwright::command {

namespace {

using schedule::PieceState;

Exit receive(const QCommandLineParser& options, const storage::Database& database)
{
    const std::string path = argument(options);
    const auto document = storage::readDocument(path);
    if (!document.ok()) {
        tell(document.errors());
        return Exit::BadInput;
    }
    const auto taken = acts::takeReceipt(database, *document, stampOf(options), options.isSet("accept"));
    if (!taken.ok()) {
        tell(taken.errorsWithin(nameOf(path)));
        return Exit::BadInput;
    }
    if (taken->doubt) {
        tell(nameOf(path) + ": " + *taken->doubt + "; nothing of it is taken");
        tell("  `lapwright receipt --accept` takes it all the same");
        return Exit::Blocked;
    }
    if (taken->hereBefore)
        tell("this receipt was here before; only events that are new count");
    Results results(options);
    results.add(counted(taken->received, "piece") + " received, " + std::to_string(taken->missing) +
                    " short, damaged or wrong",
                {{"received", taken->received}, {"missing", taken->missing}});
    results.finish();
    for (const Error& error : taken->errors)
        tell(error.within(nameOf(path)).sentence());
    return taken->errors.empty() ? Exit::Done : Exit::Blocked;
}

Exit remake(const QCommandLineParser& options, const storage::Database& database)
{
    const auto remade = acts::remakeAll(database, stampOf(options));
    Results results(options);
    for (const storage::PieceInState& piece : remade)
        results.add("remake " + std::to_string(piece.count) + " of " + piece.piece.mark + ", " +
                        write(piece.piece.length, styleOf(options)),
                    {{"order", piece.order},
                     {"mark", piece.piece.mark},
                     {"count", piece.count},
                     {"length_mm", inMillimetres(piece.piece.length)}});
    if (remade.empty())
        results.nothing("nothing is waiting for a remake");
    results.finish();
    return Exit::Done;
}

Exit status(const QCommandLineParser& options, const storage::Database& database)
{
    Results results(options);
    for (const storage::OrderSummary& order : storage::currentOrders(database))
        results.add(order.jobName + ", " + order.customer + ", revision " + std::to_string(order.revision) +
                        (order.wantedBy.empty() ? "" : ", wanted by " + order.wantedBy) + ", order " +
                        order.id,
                    {{"order", order.id},
                     {"job", order.jobName},
                     {"customer", order.customer},
                     {"revision", order.revision},
                     {"wanted_by", order.wantedBy}});
    const schedule::PieceCounts counts = storage::shopCounts(database);
    for (std::size_t state = 0; state < schedule::pieceStates; ++state) {
        const std::int64_t count = counts.in[state];
        const std::string name(schedule::name(static_cast<PieceState>(state)));
        if (count > 0)
            results.add(counted(count, "piece") + " " + name, {{"state", name}, {"count", count}});
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
        "receipts of one load come in. Where tablets are paired (`lapwright tablet`), one of them must have signed it.",
        {databaseOption(),
         {"accept", "Take it although its signature is missing, unknown or does not hold."},
         stationOption(),
         personOption()},
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
    return {
        "status",
        "",
        "list the orders and how many pieces stand where",
        "Orders by the date they are wanted, each with the id that `lapwright order` asks for, then the number of pieces in each state.",
        {databaseOption()},
        0,
        0,
        [](const QCommandLineParser& options) {
            return inShop(options,
                          [&](const storage::Database& database) { return status(options, database); });
        }};
}

} // namespace lapwright::command
