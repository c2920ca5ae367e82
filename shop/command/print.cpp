#include "catalogue.h"
#include "command.h"
#include "cut_words.h"
#include "documents/order.h"
#include "documents/shop.h"
#include "fold/planner.h"
#include "fold_words.h"
#include "pictures.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"
#include "trim/girth.h"

#include <QDir>

#include <algorithm>

namespace lapwright::command {

namespace {

constexpr const char* cautions =
    "Sheet edges cut: wear gloves. Keep hands clear when a clamp or hem closes: stop with the clamp just open, look,\n"
    "then close. The machine's own manual and guards rule; Lapwright does not control a machine.\n"
    "Long or heavy bundles: two people.\n";

/// Writes tickets into one folder under names of its own: "cut-01.txt", never a name from a document.
class Tickets {
public:
    explicit Tickets(std::string folder) : folder_(std::move(folder)) {}

    void write(const std::string& kind, int number, const std::string& ending, const std::string& text)
    {
        const QString name = QString("%1-%2.%3")
                                 .arg(QString::fromStdString(kind))
                                 .arg(number, 2, 10, QChar('0'))
                                 .arg(QString::fromStdString(ending));
        const auto written = storage::writeDocument(folder_ + "/" + name.toStdString(), text);
        if (!written.ok())
            throw storage::StorageFailure(written.errors().front().sentence());
        ++count_;
    }
    [[nodiscard]] int count() const { return count_; }

private:
    std::string folder_;
    int count_ = 0;
};

std::string joined(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines)
        text += line + "\n";
    return text;
}

void printCuts(const storage::Database& database, Tickets& tickets, const Style& style)
{
    int number = 0;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        const auto plan = documents::readCutPlan(stored.document);
        if (!plan.ok())
            throw storage::StorageFailure(plan.errors().front().sentence());
        const std::string title = "CUT TICKET  " + stored.material.gauge + " " + stored.material.metal +
                                  ", " + stored.material.colour;
        tickets.write("cut", ++number, "txt",
                      title + "\n" + summaryInWords(plan->value, style) + "\n\n" +
                          joined(patternsInWords(plan->value, style)) + "\n" + cautions);
    }
}

/// The marks of an order that are folded from one profile, with their counts.
std::string marksOf(const pieces::Order& order, std::size_t profile)
{
    std::string marks;
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile)
            marks += (marks.empty() ? "" : ", ") + piece.mark +
                     (piece.count > 1 ? " x" + std::to_string(piece.count) : "");
    return marks;
}

Length longestOf(const pieces::Order& order, std::size_t profile)
{
    Length longest = Length::inches(1);
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile)
            longest = std::max(longest, piece.blankLength);
    return longest;
}

class FoldTickets {
public:
    FoldTickets(const pieces::Catalogue& catalogue, const std::vector<fold::Machine>& machines,
                const Style& style, Tickets& tickets)
        : catalogue_(catalogue), machines_(machines), style_(style), tickets_(tickets)
    {
    }

    void print(const pieces::Order& order)
    {
        for (std::size_t profile = 0; profile < order.profiles.size(); ++profile)
            print(order, profile);
    }
    [[nodiscard]] bool allFold() const { return allFold_; }

private:
    void print(const pieces::Order& order, std::size_t index)
    {
        const pieces::OrderedProfile& profile = order.profiles[index];
        const auto stuff = stuffOf(profile.material, catalogue_);
        if (!stuff.ok())
            throw storage::StorageFailure(stuff.errors().front().sentence());
        const auto flat = trim::flatPattern(profile.profile, stuff->metal, stuff->sheet);
        if (!flat.ok())
            throw storage::StorageFailure(flat.errors().front().sentence());
        const auto outcomes = fold::chooseMachine(profile.profile, *flat, stuff->metal, stuff->sheet,
                                                  machines_, longestOf(order, index), {});
        if (!outcomes.ok())
            throw storage::StorageFailure(outcomes.errors().front().sentence());
        std::string text = "FOLD TICKET  " + order.job.name + ", " + profile.id + " " + profile.profile.name +
                           "\n" + profile.material.gauge + " " + profile.material.metal + ", " +
                           profile.material.colour + ", girth " + lapwright::write(profile.girth, style_) +
                           "\nmarks: " + marksOf(order, index) + "\n\n";
        const fold::Outcome& best = outcomes->front().outcome;
        text += joined(inWords(best, style_));
        if (!std::holds_alternative<fold::FoldPlan>(best)) {
            allFold_ = false;
            tell("BLOCKS  " + order.job.name + ", " + profile.id + " " + profile.profile.name +
                 ": no machine of the shop can fold it");
        }
        tickets_.write("fold", ++number_, "txt", text + "\n" + cautions);
        tickets_.write("profile", number_, "svg", profileSvg(profile, stuff->metal, style_));
    }

    const pieces::Catalogue& catalogue_;
    const std::vector<fold::Machine>& machines_;
    const Style& style_;
    Tickets& tickets_;
    int number_ = 0;
    bool allFold_ = true;
};

Exit printAll(const QCommandLineParser& options, const std::string& folder, const storage::Database& database)
{
    if (!QDir().mkpath(QString::fromStdString(folder))) {
        tell(folder + ": found a place that cannot be written, expected a folder");
        return Exit::CouldNot;
    }
    const auto catalogue = loadCatalogue(libraryFolders(options));
    const auto machines = loadMachines(libraryFolders(options));
    if (!catalogue.ok() || !machines.ok()) {
        tell(catalogue.ok() ? machines.errors() : catalogue.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    Tickets tickets(folder);
    printCuts(database, tickets, style);
    FoldTickets folds(*catalogue, *machines, style, tickets);
    int plans = 0;
    for (const storage::OrderSummary& summary : storage::currentOrders(database)) {
        const auto order = documents::readOrder(summary.derived);
        if (!order.ok())
            throw storage::StorageFailure(order.errors().front().sentence());
        folds.print(order->value);
        tickets.write("plan", ++plans, "svg", planSvg(order->value, style));
    }
    int loads = 0;
    for (const std::string& load : storage::loadDocuments(database))
        tickets.write("load", ++loads, "json", load);
    print(std::to_string(tickets.count()) + " tickets and drawings in " + folder);
    return folds.allFold() ? Exit::Done : Exit::Blocked;
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
        "write cut tickets, fold tickets, drawings and load lists into a folder",
        "For every waiting cut plan a cut ticket; for every profile of every order a fold ticket with the steps on the "
        "machine of least handling, and its section as a drawing; for every order the plan of its chains; every load.",
        {databaseOption(), outputOption("The folder to write to; made if it is not there.", "DIR")},
        0,
        0,
        run};
}

} // namespace lapwright::command
