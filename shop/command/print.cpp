#include "acts/kept_order.h"
#include "acts/load_words.h"
#include "acts/open_pieces.h"
#include "acts/scheduling.h"
#include "acts/shop_stock.h"
#include "command.h"
#include "cut_tickets.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "drawing/gantt.h"
#include "drawing/svg.h"
#include "fold_tickets.h"
#include "labels.h"
#include "pictures.h"
#include "results.h"
#include "storage/shop_state.h"

#include <QDir>

namespace lapwright::command {

namespace {

/// Fold tickets and label data of what is not folded yet, and the plan of every order. True if all of it can
/// be folded.
bool printOrders(const storage::Database& database, const acts::FoldPrograms& programs,
                 const Pictures& pictures, TicketFolder& folder)
{
    FoldTickets folds(programs, pictures, folder);
    const acts::OpenPieces open(database, {schedule::PieceState::Ordered, schedule::PieceState::Cut});
    std::string labels = labelHeader();
    int number = 0;
    for (const storage::OrderSummary& summary : storage::currentOrders(database)) {
        const pieces::Order order = acts::keptOrder(database, summary.id);
        const pieces::Order toMake = open.of(order);
        folds.print(toMake);
        folder.write("plan", ++number, "svg", pictures.plan(order));
        labels += labelLines(toMake, pictures.style());
    }
    folder.write("labels", "csv", labels);
    return folds.allFold();
}

void printLoads(const storage::Database& database, const Style& style, TicketFolder& folder)
{
    int number = 0;
    for (const std::string& document : storage::loadDocuments(database)) {
        const auto load = documents::readLoad(document);
        if (!load.ok())
            throw storage::StorageFailure(load.errors().front().sentence());
        std::string text = "LOAD  " + load->value.truck + " " + load->value.madeAt + "\n\n";
        for (const std::string& line : acts::loadInWords(load->value, style))
            text += line + "\n";
        folder.write("load", ++number, "txt", text);
        folder.write("load", number, "json", document);
    }
}

/// A picture of each day of the schedule last made, and the schedule itself.
void printSchedule(const schedule::ScheduleRecord& schedule, TicketFolder& folder)
{
    int number = 0;
    for (const schedule::Date& day : drawing::daysOf(schedule))
        folder.write("schedule", ++number, "svg", drawing::toSvg(drawing::gantt(schedule, {day})));
    folder.write("schedule", "json", documents::writeSchedule({schedule, {}}));
}

Exit printAll(const QCommandLineParser& options, const std::string& path, const storage::Database& database)
{
    const auto standing = acts::standingStock(database);
    if (!standing.ok()) {
        tell(standing.errors());
        return Exit::BadInput;
    }
    const auto schedule = acts::standingSchedule(database);
    if (!schedule.ok()) {
        tell(schedule.errors());
        return Exit::BadInput;
    }
    const schedule::ShopStock stock = standing->has_value() ? (*standing)->value : schedule::ShopStock();
    const auto programs = acts::FoldPrograms::forShop(stock.machines, libraryFolders(options));
    if (!programs.ok()) {
        tell(programs.errors());
        return Exit::BadInput;
    }
    if (!QDir().mkpath(QString::fromStdString(path))) {
        tell(path + ": found a place that cannot be written, expected a folder");
        return Exit::CouldNot;
    }
    const Style style = styleOf(options);
    TicketFolder folder(path);
    printCutTickets(database, style, folder);
    const bool allFold = printOrders(database, *programs, Pictures(stock, style, anglesOf(options)), folder);
    printLoads(database, style, folder);
    if (schedule->has_value())
        printSchedule(**schedule, folder);
    folder.removeStale();
    Results results(options);
    results.add(std::to_string(folder.count()) + " tickets, drawings and lists in " + path,
                {{"folder", path}, {"files", folder.count()}});
    results.finish();
    return allFold ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const std::string folder = text(options, "output");
    if (folder.empty()) {
        tell("lapwright: found no -o, expected -o with a folder for the tickets");
        return Exit::BadInput;
    }
    return inShop(options,
                  [&](const storage::Database& database) { return printAll(options, folder, database); });
}

} // namespace

Subcommand printCommand()
{
    return {
        "print",
        "",
        "write cut tickets, fold tickets, drawings, label data, load lists and the schedule into a folder",
        "For every waiting cut plan a cut ticket and a map of each sheet; for every profile of which pieces are still "
        "to be folded a fold ticket on the machine of least handling, with a picture of each step; for every such "
        "piece a line of label data (labels.csv); for every order the plan of its chains; every load list; a picture of each day "
        "of the schedule last made, and the schedule itself, in which a person may set pins. Tickets of an earlier print that stand in the folder and do not hold any more are removed.",
        {databaseOption(), outputOption("The folder to write to; made if it is not there.", "DIR")},
        0,
        0,
        run};
}

} // namespace lapwright::command
