#include "acts/cut_words.h"
#include "acts/fold_words.h"
#include "acts/planning.h"
#include "acts/words.h"
#include "command.h"
#include "documents/shop.h"
#include "input.h"
#include "results.h"
#include "search_options.h"

namespace lapwright::command {

namespace {

void tellBlocked(const acts::PlannedBatch& batch, const Style& style)
{
    const std::string name = "BLOCKS  " + acts::describe(batch.material) + ": ";
    for (const cutting::Refusal& refusal : batch.refusals)
        tell(name + say(refusal.reason, style));
    if (!batch.plan)
        return;
    for (const cutting::Shortfall& missing : batch.plan->plan.notCut)
        tell(name + "stock does not suffice for " + std::to_string(missing.count) + " of " +
             batch.plan->problem.blanks[missing.blank].key);
}

void report(const acts::PlannedBatch& batch, const Style& style, Results& results)
{
    tellBlocked(batch, style);
    if (!batch.plan)
        return;
    const cutting::Plan& plan = batch.plan->plan;
    results.add(acts::describe(batch.material) + ": " + acts::counted(batch.pieces, "piece") + " from " +
                    acts::summaryInWords(*batch.plan, style),
                {{"metal", batch.material.metal},
                 {"gauge", batch.material.gauge},
                 {"colour", batch.material.colour},
                 {"pieces", batch.pieces},
                 {"value", plan.value},
                 {"bound", plan.bound},
                 {"proven_least", plan.proof == cutting::Proof::ProvenLeast},
                 {"setups", plan.setups}});
}

Exit planAll(const QCommandLineParser& options, const acts::PlanRequest& request,
             const storage::Database& database)
{
    const auto planned = acts::planAll(database, request, stampOf(options));
    if (!planned.ok()) {
        tell(planned.errors());
        return Exit::BadInput;
    }
    if (planned->stockReplaced)
        tell("the stock in the database is replaced by " + text(options, "stock") +
             "; leave --stock out to go on with what is left on the racks");
    const Style style = styleOf(options);
    for (const acts::Unfoldable& one : planned->unfoldable) {
        tell("BLOCKS  " + one.name + ": no machine of the shop can fold it");
        for (const std::string& line : acts::inWords(one.outcome, style))
            tell("        " + line);
    }
    Results results(options);
    for (const acts::PlannedBatch& batch : planned->batches)
        report(batch, style, results);
    if (planned->batches.empty())
        results.nothing("nothing to cut");
    results.finish();
    return planned->complete() ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const auto settings = searchSettings(options);
    if (!settings.ok()) {
        tell(settings.errors());
        return Exit::BadInput;
    }
    acts::PlanRequest request{std::nullopt, *settings, libraryFolders(options)};
    if (options.isSet("stock")) {
        auto stock = readFrom(text(options, "stock"), documents::readStock);
        if (!stock.ok()) {
            tell(stock.errors());
            return Exit::BadInput;
        }
        request.stock = *std::move(stock);
    }
    return inShop(options,
                  [&](const storage::Database& database) { return planAll(options, request, database); });
}

} // namespace

Subcommand planCommand()
{
    return {
        "plan",
        "",
        "batch all pieces still to be cut by metal, gauge and colour, and plan the cuts",
        "Pieces of all orders that are not yet cut are batched by metal, gauge and colour and planned from the "
        "stock, remnants first where that is worth it. Each plan says how far it can be from the least. Planning "
        "again replaces every plan that is not cut. Profiles that no machine of the shop can fold are told first.",
        {databaseOption(),
         {"stock", "The stock document (lapwright/stock); kept in the database, needed the first time.",
          "STOCK"},
         timeOption(),
         stationOption(),
         personOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
