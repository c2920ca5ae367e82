#include "acts/blank_words.h"
#include "acts/cut_words.h"
#include "acts/fold_words.h"
#include "acts/planning.h"
#include "acts/schedule_words.h"
#include "acts/scheduling.h"
#include "acts/words.h"
#include "command.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "input.h"
#include "results.h"
#include "search_options.h"

#include <QDateTime>

#include <set>

namespace lapwright::command {

namespace {

void tellBlocked(const acts::PlannedBatch& planned, const Style& style)
{
    const std::string name = "BLOCKS  " + acts::describe(planned.batch.material) + ": ";
    for (const cutting::Refusal& refusal : planned.refusals)
        tell(name + say(refusal.reason, style));
    if (!planned.plan)
        return;
    for (const cutting::Shortfall& missing : planned.plan->plan.notCut)
        tell(name + "stock does not suffice for " + std::to_string(missing.count) + " of " +
             acts::blankInWords(planned.batch, planned.plan->problem.blanks[missing.blank].key));
}

nlohmann::json ordersOf(const schedule::Batch& batch)
{
    nlohmann::json orders = nlohmann::json::array();
    for (const schedule::ServedOrder& order : batch.orders)
        orders.push_back({{"order", order.order}, {"job", order.job}, {"pieces", order.pieces}});
    return orders;
}

void report(const acts::PlannedBatch& planned, const Style& style, Results& results)
{
    tellBlocked(planned, style);
    if (!planned.plan)
        return;
    const cutting::Plan& plan = planned.plan->plan;
    results.add(acts::describe(planned.batch.material) + ": " + counted(planned.piecesCut(), "piece") +
                    " from " + acts::summaryInWords(*planned.plan, style),
                {{"metal", planned.batch.material.metal},
                 {"gauge", planned.batch.material.gauge},
                 {"colour", planned.batch.material.colour},
                 {"pieces", planned.piecesCut()},
                 {"value", plan.value},
                 {"bound", plan.bound},
                 {"proven_least", plan.proof == cutting::Proof::ProvenLeast},
                 {"setups", plan.setups},
                 {"orders", ordersOf(planned.batch)}});
}

nlohmann::json asJson(const schedule::RecordedScore& score)
{
    return {{"makespan_seconds", score.makespan.inSeconds()},
            {"weighted_lateness_seconds", score.weightedLateness},
            {"late_orders", score.lateDeliveries},
            {"setups", score.fittings + score.settings},
            {"making_ready_seconds", score.makingReady.inSeconds()}};
}

nlohmann::json asJson(const schedule::ScheduleRecord& record)
{
    nlohmann::json json = asJson(record.score);
    json["from"] = schedule::write(record.from);
    json["done"] = schedule::write(record.from + record.score.makespan);
    json["makespan_bound_seconds"] = record.makespanBound.inSeconds();
    json["weighted_lateness_bound_seconds"] = record.weightedLatenessBound;
    json["proven_best"] = record.provenBest;
    json["method"] = record.method;
    json["first_come"] = asJson(record.firstCome);
    json["shortest_first"] = asJson(record.shortest);
    json["late"] = nlohmann::json::array();
    for (const schedule::RecordedTask& task : record.tasks)
        if (!task.late.empty())
            json["late"].push_back(
                {{"task", task.key}, {"end", schedule::write(task.end)}, {"because", task.late}});
    return {{"schedule", std::move(json)}};
}

/// Tells what the schedule comes to, but not again of what `told` names that nothing can fold it. True if
/// nothing is left out of it.
bool report(const acts::Scheduled& scheduled, const std::set<std::string>& told,
            const QCommandLineParser& options, Results& results)
{
    if (scheduled.floorReplaced)
        tell("the floor in the database is replaced by " + text(options, "floor"));
    if (scheduled.usualFloor && scheduled.record)
        tell("no floor is known: scheduled on the usual one, a cutting line and the shop's folding machines, "
             "Monday to Friday 07:00-12:00 and 12:30-15:30, usual times; give --floor with yours");
    for (const rules::Finding& finding : scheduled.findings)
        if (finding.code != "schedule.no_folder" || !told.contains(finding.place))
            tell(acts::describe(finding, styleOf(options)));
    if (!scheduled.record)
        return !rules::anyBlocks(scheduled.findings);
    std::string lines;
    for (const std::string& line : acts::inWords(*scheduled.record))
        lines += (lines.empty() ? "schedule: " : "\nschedule: ") + line;
    results.add(lines, asJson(*scheduled.record));
    return !rules::anyBlocks(scheduled.findings);
}

/// What `plan` was asked for.
struct Wanted {
    acts::PlanRequest cuts;
    acts::ScheduleRequest schedule;
};

Exit planAll(const QCommandLineParser& options, const Wanted& wanted, const storage::Database& database)
{
    const auto floor = acts::standingFloor(database);
    if (!floor.ok()) {
        tell(floor.errors());
        return Exit::BadInput;
    }
    acts::PlanRequest cuts = wanted.cuts;
    if (const auto& known = wanted.schedule.floor ? wanted.schedule.floor : *floor)
        cuts.coilWidthsApart = known->value.coilWidthsApart;
    const auto planned = acts::planAll(database, cuts, stampOf(options));
    if (!planned.ok()) {
        tell(planned.errors());
        return Exit::BadInput;
    }
    if (planned->stockReplaced)
        tell("the stock in the database is replaced by " + text(options, "stock") +
             "; leave --stock out to go on with what is left on the racks");
    const Style style = styleOf(options);
    std::set<std::string> told;
    for (const acts::Unfoldable& one : planned->unfoldable) {
        told.insert(one.name);
        tell("BLOCKS  " + one.name + ": no machine of the shop can fold it");
        for (const std::string& line : acts::inWords(one.outcome, style))
            tell("        " + line);
    }
    Results results(options);
    for (const acts::PlannedBatch& batch : planned->batches)
        report(batch, style, results);
    if (planned->held > 0)
        tell(counted(planned->held, "piece") + " held; `lapwright order release` lets them go");
    if (planned->batches.empty())
        results.nothing("nothing to cut");
    const auto scheduled = acts::scheduleAll(database, wanted.schedule);
    if (!scheduled.ok()) {
        results.finish();
        tell(scheduled.errors());
        return Exit::BadInput;
    }
    const bool all = report(*scheduled, told, options, results);
    results.finish();
    return planned->complete() && all ? Exit::Done : Exit::Blocked;
}

/// The shop's wall clock, a full minute on; or what --from says.
Result<schedule::Moment> beginOf(const QCommandLineParser& options)
{
    if (!options.isSet("from")) {
        const QDateTime clock = QDateTime::currentDateTime();
        const auto now = schedule::readMoment(clock.toString("yyyy-MM-ddTHH:mm").toStdString());
        return *now + schedule::Duration::minutes(1);
    }
    const auto from = schedule::readMoment(text(options, "from"));
    if (!from.ok())
        return from.errorsWithin("--from");
    return *from;
}

/// Documents and options, or what is wrong with the first of them that cannot be used.
Result<Wanted> wantedOf(const QCommandLineParser& options)
{
    const auto settings = searchSettings(options);
    if (!settings.ok())
        return settings.errors();
    const auto from = beginOf(options);
    if (!from.ok())
        return from.errors();
    Wanted wanted{{std::nullopt, *settings, libraryFolders(options)}, {}};
    wanted.schedule.from = *from;
    wanted.schedule.libraryFolders = libraryFolders(options);
    wanted.schedule.timeLimit = settings->timeLimit;
    if (options.isSet("stock")) {
        auto stock = readFrom(text(options, "stock"), documents::readStock);
        if (!stock.ok())
            return stock.errors();
        wanted.cuts.stock = *std::move(stock);
    }
    if (options.isSet("floor")) {
        auto floor = readFrom(text(options, "floor"), documents::readFloor);
        if (!floor.ok())
            return floor.errors();
        wanted.schedule.floor = *std::move(floor);
    }
    if (options.isSet("pins")) {
        auto pins = readFrom(text(options, "pins"), documents::readSchedule);
        if (!pins.ok())
            return pins.errors();
        wanted.schedule.pins = std::move(pins->value.pins);
    }
    return wanted;
}

Exit run(const QCommandLineParser& options)
{
    const auto wanted = wantedOf(options);
    if (!wanted.ok()) {
        tell(wanted.errors());
        return Exit::BadInput;
    }
    return inShop(
        options, [&](const storage::Database& database) { return planAll(options, *wanted, database); },
        wanted->cuts.stock ? storage::WhenMissing::Make : storage::WhenMissing::Refuse);
}

} // namespace

Subcommand planCommand()
{
    return {
        "plan",
        "",
        "batch all pieces still to be cut by metal, gauge and colour, plan the cuts, and schedule cutting and folding",
        "Pieces of all orders that are not yet cut are batched by metal, gauge and colour and planned from the "
        "stock, remnants first where that is worth it. Each plan says how far it can be from the least. Planning "
        "again replaces every plan that is not cut. Profiles that no machine of the shop can fold are told first. Then "
        "all waiting cuts and all pieces not yet folded are scheduled on the floor's machines and hours: what is late "
        "least, then all done soonest, then the least making ready; with a bound below which no schedule can be, and "
        "what the order of arrival would have come to. Pins of the schedule before hold.",
        {databaseOption(),
         {"stock", "The stock document (lapwright/stock); kept in the database, needed the first time.",
          "STOCK"},
         {"floor", "The floor document (lapwright/floor): machines, hours, times; kept in the database.",
          "FLOOR"},
         {"from", "When the schedule begins, by the shop's clock, like 2026-12-01T07:00; otherwise now.",
          "TIME"},
         {"pins", "A schedule document (lapwright/schedule) whose pins hold in place of those before.",
          "SCHEDULE"},
         libraryOption(),
         timeOption(),
         stationOption(),
         personOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
