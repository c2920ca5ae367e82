#include "acts/making.h"
#include "acts/words.h"
#include "command.h"
#include "results.h"

namespace lapwright::command {

namespace {

Exit cutPlans(const storage::Database& database, const storage::Stamp& stamp, Results& results)
{
    const auto batches = acts::cutWaitingPlans(database, stamp);
    if (!batches.ok()) {
        tell(batches.errors());
        return Exit::CouldNot;
    }
    if (batches->empty())
        results.nothing("no plan waits to be cut; `lapwright plan` makes one");
    bool all = true;
    for (const acts::CutBatch& batch : *batches) {
        if (batch.errors.empty()) {
            results.add("cut: " + acts::describe(batch.material), {{"plan", batch.plan},
                                                                   {"metal", batch.material.metal},
                                                                   {"gauge", batch.material.gauge},
                                                                   {"colour", batch.material.colour}});
            continue;
        }
        all = false;
        tell(batch.errors);
        tell("not marked as cut: " + acts::describe(batch.material) + "; plan again");
    }
    return all ? Exit::Done : Exit::Blocked;
}

Exit foldPieces(const storage::Database& database, const acts::Which& which, const storage::Stamp& stamp,
                Results& results)
{
    const acts::Moved moved = acts::fold(database, which, stamp);
    results.add(counted(moved.count, "piece") + " folded", {{"state", "folded"}, {"count", moved.count}});
    tell(moved.errors);
    if (moved.count == 0 && !which.mark.empty())
        tell("no piece " + which.mark + " is cut");
    return moved.errors.empty() ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const std::string what = argument(options);
    if (what != "cut" && what != "folded") {
        tell("lapwright: made " + what + ", expected cut or folded");
        return Exit::BadInput;
    }
    if (what == "cut" && (options.isSet("mark") || options.isSet("order"))) {
        tell("lapwright: made cut with --mark or --order, expected neither: whole plans are cut");
        return Exit::BadInput;
    }
    return inShop(options, [&](const storage::Database& database) {
        Results results(options);
        const Exit exit = what == "cut"
                              ? cutPlans(database, stampOf(options), results)
                              : foldPieces(database, {text(options, "order"), text(options, "mark")},
                                           stampOf(options), results);
        results.finish();
        return exit;
    });
}

} // namespace

Subcommand madeCommand()
{
    return {
        "made",
        "cut|folded",
        "say that the planned cuts are made, or that cut pieces are folded",
        "`made cut` marks every waiting plan as cut, takes its metal out of the stock and puts the new remnants on the "
        "shelf. `made folded` marks cut pieces as folded, all of them, those of one order, or one mark.",
        {databaseOption(),
         {"order", "Only pieces of the order of this identity (`lapwright status` lists them).", "UUID"},
         {"mark", "Only this mark.", "MARK"},
         stationOption(),
         personOption()},
        1,
        1,
        run};
}

} // namespace lapwright::command
