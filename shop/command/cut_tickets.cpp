#include "cut_tickets.h"

#include "acts/checked_plan.h"
#include "acts/cut_words.h"
#include "acts/words.h"
#include "command.h"
#include "drawing/cut_map.h"
#include "drawing/svg.h"
#include "print/cut_ticket.h"
#include "print/piece_labels.h"
#include "print/served_orders.h"
#include "storage/shop_state.h"

#include <string>

namespace lapwright::command {

namespace {

print::ServedOrders servedBy(const storage::Database& database, const documents::CutProblem& problem)
{
    print::ServedOrders orders(problem.blanks);
    for (const storage::OrderSummary& order : storage::unfinishedOrders(database))
        orders.add(order.id, {{}, order.jobName, order.revision, order.wantedBy, 0});
    return orders;
}

std::string inWords(const print::ServedOrders& orders)
{
    std::string words;
    for (const print::ServedOrder& order : orders.all())
        words += order.letter + "  " + order.job +
                 (order.wantedBy.empty() ? "" : ", wanted by " + order.wantedBy) + "\n";
    return words;
}

void drawPatterns(const cutting::Problem& problem, const documents::CutPlan& plan, int number,
                  const drawing::CutMapPicture& picture, TicketFolder& folder)
{
    for (std::size_t pattern = 0; pattern < plan.plan.patterns.size(); ++pattern)
        folder.write("cut", number, "svg",
                     drawing::toSvg(drawing::cutMap(problem, plan.plan, pattern, picture)),
                     "map-" + std::to_string(pattern + 1));
}

void print(const storage::Database& database, const storage::StoredPlan& stored, int number,
           const Paperwork& work, TicketFolder& folder)
{
    const Style style = print::fine(work.style);
    const auto checked = acts::readChecked(stored);
    if (!checked.ok())
        throw storage::StorageFailure(checked.errors().front().sentence());
    if (!checked->problem)
        throw storage::StorageFailure("cut plan " + stored.id + " does not pass its check");
    const documents::CutPlan& cut = checked->cut;
    const print::ServedOrders orders = servedBy(database, cut.problem);
    const std::string summary = acts::summaryInWords(cut, style);
    drawing::CutMapPicture picture;
    picture.style = style;
    picture.material = acts::describe(stored.material);
    picture.names = orders.names(cut.problem.blanks);
    std::string text =
        "CUT TICKET  " + acts::describe(stored.material) + "\n" + summary + "\n\n" + inWords(orders) + "\n";
    for (const std::string& line : acts::patternsInWords(cut, picture.names, style))
        text += line + "\n";
    folder.write("cut", number, "txt", text + "\n" + cautionsAtTheMachine());
    drawPatterns(*checked->problem, cut, number, picture, folder);
    writePdf(folder, work, "cut", number,
             print::cutTicket(*checked->problem, cut.plan,
                              {number, stored.material, picture.names, orders.all(), summary, style},
                              work.printing));
    writePdf(folder, work, "remnants", number, "Remnant labels",
             print::labelPages(
                 print::remnantLabels(print::keptRemnants(cut.plan, stored.material), work.printing, style),
                 *work.labels));
}

} // namespace

void printCutTickets(const storage::Database& database, const Paperwork& work, TicketFolder& folder)
{
    int number = 0;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database))
        print(database, stored, ++number, work, folder);
}

} // namespace lapwright::command
