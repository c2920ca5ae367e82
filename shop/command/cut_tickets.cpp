#include "cut_tickets.h"

#include "acts/cut_words.h"
#include "acts/words.h"
#include "command.h"
#include "cutting/checker.h"
#include "drawing/cut_map.h"
#include "drawing/svg.h"
#include "print/cut_ticket.h"
#include "print/piece_labels.h"
#include "schedule/batch.h"
#include "storage/shop_state.h"

#include <map>
#include <vector>

namespace lapwright::command {

namespace {

/// Each order that a plan serves under one letter, so that a mark on a sheet says which house it is for.
class ServedOrders {
public:
    ServedOrders(const storage::Database& database, const documents::CutProblem& problem)
    {
        std::map<std::string, std::int64_t> blanks;
        for (const cutting::Blank& blank : problem.blanks)
            blanks[schedule::orderOfBlank(blank.key)] += blank.count;
        for (const storage::OrderSummary& order : storage::unfinishedOrders(database))
            if (blanks.contains(order.id)) {
                place_[order.id] = orders_.size();
                orders_.push_back({letterOf(orders_.size()), order.jobName, order.revision, order.wantedBy,
                                   blanks[order.id]});
            }
    }

    /// "A E1.2"; only the mark where the plan serves one order.
    [[nodiscard]] std::string nameOf(const cutting::Blank& blank) const
    {
        const std::string mark = schedule::markOfBlank(blank.key);
        const auto place = place_.find(schedule::orderOfBlank(blank.key));
        return place == place_.end() || orders_.size() == 1 ? mark
                                                            : orders_[place->second].letter + " " + mark;
    }

    [[nodiscard]] const std::vector<print::ServedOrder>& all() const { return orders_; }

    [[nodiscard]] std::string inWords() const
    {
        std::string words;
        for (const print::ServedOrder& order : orders_)
            words += order.letter + "  " + order.job +
                     (order.wantedBy.empty() ? "" : ", wanted by " + order.wantedBy) + "\n";
        return words;
    }

private:
    /// A to Z, AA to ZZ…
    static std::string letterOf(std::size_t place)
    {
        std::string letters;
        for (std::size_t number = place + 1; number > 0; number = (number - 1) / 26)
            letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
        return letters;
    }

    std::map<std::string, std::size_t> place_;
    std::vector<print::ServedOrder> orders_;
};

/// Blanks are rounded up to the cut step, so what is set on the slitter is shown as finely.
Style fine(Style style)
{
    style.inchDenominator = 64;
    style.tenthsOfMillimetre = 1;
    return style;
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
    const Style style = fine(work.style);
    const auto plan = documents::readCutPlan(stored.document);
    if (!plan.ok())
        throw storage::StorageFailure(plan.errors().front().sentence());
    const cutting::Admission admission = documents::admit(plan->value.problem);
    if (!admission.problem || !cutting::check(*admission.problem, plan->value.plan).feasibility.cuttable())
        throw storage::StorageFailure("cut plan " + stored.id + " does not pass its check");
    const ServedOrders orders(database, plan->value.problem);
    drawing::CutMapPicture picture;
    picture.style = style;
    picture.material = acts::describe(stored.material);
    for (const cutting::Blank& blank : plan->value.problem.blanks)
        picture.names.push_back(orders.nameOf(blank));
    std::string text = "CUT TICKET  " + acts::describe(stored.material) + "\n" +
                       acts::summaryInWords(plan->value, style) + "\n\n" + orders.inWords() + "\n";
    for (const std::string& line : acts::patternsInWords(plan->value, picture.names, style))
        text += line + "\n";
    folder.write("cut", number, "txt", text + "\n" + cautionsAtTheMachine());
    drawPatterns(*admission.problem, plan->value, number, picture, folder);
    writePdf(folder, work, "cut", number,
             print::cutTicket(*admission.problem, plan->value.plan,
                              {number, stored.material, picture.names, orders.all(),
                               acts::summaryInWords(plan->value, style), style},
                              work.printing));
    writePdf(folder, work, "remnants", number, "Remnant labels",
             print::labelPages(print::remnantLabels(plan->value.plan, stored.material, work.printing, style),
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
