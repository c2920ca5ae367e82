#include "acts/kept_order.h"
#include "acts/load_words.h"
#include "acts/open_pieces.h"
#include "acts/scheduling.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "command.h"
#include "cut_tickets.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "drawing/gantt.h"
#include "drawing/svg.h"
#include "fold_tickets.h"
#include "labels.h"
#include "paperwork.h"
#include "pictures.h"
#include "print/confirmation.h"
#include "print/load_papers.h"
#include "print/piece_labels.h"
#include "print/quality_sheet.h"
#include "results.h"
#include "schedule/cost.h"
#include "storage/shop_state.h"

#include <QDir>

namespace lapwright::command {

namespace {

/// An order's confirmation, and quality sheet and labels of what is still to be made. False if it should have
/// a cost and the rates do not give one.
bool printPapers(const pieces::Order& order, const pieces::Order& toMake, int number,
                 const Pictures& pictures, const Paperwork& work, TicketFolder& folder)
{
    std::optional<schedule::Cost> cost;
    bool priced = true;
    if (work.rates) {
        auto asked = schedule::costOf(order, *work.rates);
        priced = asked.ok();
        if (priced)
            cost = *std::move(asked);
        else
            tell(asked.errorsWithin(order.job.name));
    }
    writePdf(folder, work, "order", number, print::confirmation(order, cost, work.printing, work.style));
    if (toMake.pieces.empty())
        return priced;
    writePdf(
        folder, work, "quality", number,
        print::qualitySheet(toMake, {}, pictures.colours(), work.printing, work.style, pictures.angles()));
    writePdf(folder, work, "labels", number, "Piece labels, " + order.job.name,
             print::labelPages(print::pieceLabels(toMake, work.printing, work.style), *work.labels));
    return priced;
}

/// Fold tickets and labels of what is not folded yet, and the papers of every order. True if all of it can be
/// folded, and has a cost where one was asked for.
bool printOrders(const storage::Database& database, const acts::FoldPrograms& programs,
                 const Pictures& pictures, const Paperwork& work, TicketFolder& folder)
{
    FoldTickets folds(programs, pictures, work, folder);
    const acts::OpenPieces open(database, {schedule::PieceState::Ordered, schedule::PieceState::Cut});
    std::string labels = labelHeader();
    bool allPriced = true;
    int number = 0;
    for (const storage::OrderSummary& summary : storage::currentOrders(database)) {
        const pieces::Order order = acts::keptOrder(database, summary.id);
        const pieces::Order toMake = open.of(order);
        folds.print(toMake);
        folder.write("plan", ++number, "svg", pictures.plan(order));
        allPriced = printPapers(order, toMake, number, pictures, work, folder) && allPriced;
        labels += labelLines(toMake, pictures.style());
    }
    folder.write("labels", "csv", labels);
    return folds.allFold() && allPriced;
}

void printLoads(const storage::Database& database, const Paperwork& work, TicketFolder& folder)
{
    int number = 0;
    for (const std::string& document : storage::loadDocuments(database)) {
        auto load = documents::readLoad(document);
        if (!load.ok())
            throw storage::StorageFailure(load.errors().front().sentence());
        std::string text = "LOAD  " + load->value.truck + " " + load->value.madeAt + "\n\n";
        for (const std::string& line : acts::loadInWords(load->value, work.style))
            text += line + "\n";
        folder.write("load", ++number, "txt", text);
        folder.write("load", number, "json", document);
        const print::LoadedOrders orders = print::loadedOrders(acts::keptOrdersOn(database, load->value));
        load->value.madeAt = acts::onTheWall(load->value.madeAt);
        writePdf(folder, work, "load", number,
                 print::loadList(load->value, orders, work.printing, work.style));
        writePdf(folder, work, "check", number,
                 print::checkSheet(load->value, orders, work.printing, work.style));
        writePdf(folder, work, "bundles", number, "Bundle labels",
                 print::labelPages(print::bundleLabels(load->value, orders, work.printing, work.style),
                                   *work.labels));
    }
}

/// A picture of each day of the schedule last made, and the schedule itself.
void printSchedule(const schedule::ScheduleRecord& schedule, const Style& style, TicketFolder& folder)
{
    int number = 0;
    for (const schedule::Date& day : drawing::daysOf(schedule)) {
        drawing::GanttPicture picture;
        picture.day = day;
        picture.style = style;
        folder.write("schedule", ++number, "svg", drawing::toSvg(drawing::gantt(schedule, picture)));
    }
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
    const auto work = paperworkOf(options, stock);
    if (!work.ok()) {
        tell(work.errors());
        return Exit::BadInput;
    }
    if (!QDir().mkpath(QString::fromStdString(path))) {
        tell(path + ": found a place that cannot be written, expected a folder");
        return Exit::CouldNot;
    }
    TicketFolder folder(path);
    printCutTickets(database, *work, folder);
    const bool complete =
        printOrders(database, *programs, Pictures(stock, work->style, anglesOf(options)), *work, folder);
    printLoads(database, *work, folder);
    if (schedule->has_value())
        printSchedule(**schedule, work->style, folder);
    folder.removeStale();
    Results results(options);
    results.add(std::to_string(folder.count()) + " tickets, drawings and lists in " + path,
                {{"folder", path}, {"files", folder.count()}});
    results.finish();
    return complete ? Exit::Done : Exit::Blocked;
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
    QList<QCommandLineOption> options = {
        databaseOption(), libraryOption(),
        outputOption("The folder to write to; made if it is not there.", "DIR")};
    options += paperOptions();
    return {
        "print",
        "",
        "write tickets, labels, load lists and confirmations as PDF, drawings and the schedule into a folder",
        "For every waiting cut plan a cut ticket with a map of each sheet (cut-NN.pdf) and labels for its remnants; for "
        "every profile of which pieces are still to be folded a fold ticket on the machine of least handling with a "
        "picture of each step (fold-NN.pdf); for every order a confirmation (order-NN.pdf, with the cost where --rates "
        "is given), and for what is still to be folded a quality sheet and labels (quality-NN.pdf, labels-NN.pdf); for "
        "every load its list, a check sheet for the delivery and the labels of its bundles (load-NN.pdf, check-NN.pdf, "
        "bundles-NN.pdf). Beside them the same as text, drawings as SVG, labels.csv with a line for each piece, a "
        "picture of each day of the schedule last made, and the schedule itself, in which a person may set pins. "
        "Papers of an earlier print that stand in the folder and do not hold any more are removed.",
        options,
        0,
        0,
        run};
}

} // namespace lapwright::command
