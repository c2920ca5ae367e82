#include "acts/holding.h"
#include "command.h"
#include "results.h"
#include "storage/orders.h"
#include "storage/shop_state.h"

/// `order`: what a person says of one order.
namespace lapwright::command {

namespace {

Exit noSuchOrder(const std::string& order)
{
    tell("lapwright: found no order " + order + "; `lapwright status` lists them");
    return Exit::BadInput;
}

Exit cancel(const QCommandLineParser& options, const storage::Database& database, const std::string& order,
            Results& results)
{
    if (!storage::currentRevision(database, order))
        return noSuchOrder(order);
    const auto cancelled = acts::cancelOrder(database, order, stampOf(options), options.isSet("accept"));
    if (!cancelled.ok()) {
        tell(cancelled.errors());
        return Exit::Blocked;
    }
    const bool waits = cancelled->outcome == storage::Arrival::Outcome::Waits;
    results.add(waits ? "not cancelled" : "cancelled",
                {{"order", order}, {"cancelled", !waits}, {"reasons", cancelled->reasons}});
    for (const std::string& reason : cancelled->reasons)
        tell("  " + reason);
    if (waits)
        tell("  `lapwright order cancel --accept` cancels it all the same");
    return waits ? Exit::Blocked : Exit::Done;
}

Exit act(const QCommandLineParser& options, const storage::Database& database, Results& results)
{
    const std::string what = argument(options);
    const std::string order = argument(options, 1);
    if (what == "cancel")
        return cancel(options, database, order, results);
    if (what == "hold" || what == "release") {
        const auto done = acts::holdOrder(database, order, what == "hold", stampOf(options));
        if (!done.ok()) {
            tell(done.errors());
            return Exit::Blocked;
        }
        if (!*done)
            return noSuchOrder(order);
        results.add(what == "hold" ? "held" : "released", {{"order", order}, {"held", what == "hold"}});
        return Exit::Done;
    }
    bool isNumber = false;
    const int priority = QString::fromStdString(argument(options, 2)).toInt(&isNumber);
    if (!isNumber || priority < -999 || priority > 999) {
        tell("lapwright: order priority " + argument(options, 2) + ", expected a number from -999 to 999");
        return Exit::BadInput;
    }
    if (!storage::setPriority(database, order, priority))
        return noSuchOrder(order);
    results.add("priority " + std::to_string(priority), {{"order", order}, {"priority", priority}});
    return Exit::Done;
}

Exit run(const QCommandLineParser& options)
{
    const std::string what = argument(options);
    const auto given = options.positionalArguments().size();
    const bool simple = what == "hold" || what == "release" || what == "cancel";
    if (!(simple && given == 2) && !(what == "priority" && given == 3)) {
        tell(
            "lapwright: order takes hold, release or cancel with an order, or priority with an order and a number");
        return Exit::BadInput;
    }
    return inShop(options, [&](const storage::Database& database) {
        Results results(options);
        const Exit exit = act(options, database, results);
        results.finish();
        return exit;
    });
}

} // namespace

Subcommand orderCommand()
{
    return {
        "order",
        "hold|release|cancel|priority UUID [NUMBER]",
        "hold an order back, let it go, cancel it, or say how urgent it is",
        "A held order is in no batch until it is released. Among orders due together, the higher priority is "
        "planned first. Cancelling withdraws what is not begun; what is cut or folded is named, and becomes scrap "
        "only with --accept; what left on a truck stays. Waiting plans that held its pieces are taken back.",
        {databaseOption(),
         {"accept", "Cancel although pieces already begun become scrap."},
         stationOption(),
         personOption()},
        2,
        3,
        run};
}

} // namespace lapwright::command
