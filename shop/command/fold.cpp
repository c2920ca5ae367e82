#include "acts/catalogue.h"
#include "acts/fold_programs.h"
#include "acts/fold_words.h"
#include "command.h"
#include "drawing/fold_ticket.h"
#include "drawing/svg.h"
#include "fold/planner.h"
#include "input.h"
#include "measure/rounding.h"
#include "pictures.h"
#include "storage/document_file.h"
#include "unfold.h"

#include <QDir>

#include <nlohmann/json.hpp>

#include <algorithm>

/// `fold`: the fold steps of one profile document on one machine.
namespace lapwright::command {

namespace {

const char* actionName(fold::Action action)
{
    switch (action) {
    case fold::Action::Fold:
        return "fold";
    case fold::Action::PreBend:
        return "pre-bend";
    case fold::Action::Flatten:
        return "flatten";
    }
    return "";
}

nlohmann::json asJson(const fold::Outcome& outcome, const Style& style)
{
    nlohmann::json json = {{"text", acts::inWords(outcome, style)}};
    if (const auto* plan = std::get_if<fold::FoldPlan>(&outcome)) {
        json["machine"] = plan->machine;
        json["beam_face"] = plan->beamFace;
        json["milliseconds"] = plan->milliseconds;
        json["kilograms"] = plan->kilograms;
        json["two_people"] = plan->twoPeople;
        for (const fold::FoldStep& step : plan->steps)
            json["steps"].push_back(
                {{"line", step.line},
                 {"action", actionName(step.action)},
                 {"direction", step.direction == fold::Direction::Up ? "up" : "down"},
                 {"edge_to_gauge", step.endToGauge == fold::End::Start ? "first" : "last"},
                 {"gauge_mm", inMillimetres(step.gaugeSetting)},
                 {"fold_degrees", step.foldAngle.inDegrees()},
                 {"set_degrees", step.angleToSet.inDegrees()},
                 {"gap_mm", inMillimetres(step.openGap)},
                 {"lift_mm", inMillimetres(step.lift)},
                 {"colour_up", step.colourUp}});
    }
    return json;
}

/// The outcome on the machine; a refusal is held against the shop's other machines, and says which one can.
Result<fold::Outcome> planOn(const Unfolded& piece, const std::vector<fold::Machine>& machines,
                             std::size_t machine, Length length)
{
    auto outcome = fold::planFold(piece.profile.profile, piece.flat, piece.stuff.metal, piece.stuff.sheet,
                                  machines[machine], length, {});
    if (!outcome.ok() || std::holds_alternative<fold::FoldPlan>(*outcome))
        return outcome;
    auto all = fold::chooseMachine(piece.profile.profile, piece.flat, piece.stuff.metal, piece.stuff.sheet,
                                   machines, length, {});
    if (!all.ok())
        return all.errors();
    const auto its = std::find_if(all->begin(), all->end(), [machine](const fold::MachineOutcome& each) {
        return each.machine == machine;
    });
    return its->outcome;
}

/// The ticket as SVG pages, "fold-01.svg" and on, in the folder named with --svg. Errors: what stands in the
/// way of writing it.
std::vector<Error> writeTicket(const std::string& folder, const Unfolded& piece, const fold::Machine& machine,
                               const fold::FoldPlan& plan, Length length, const Style& style)
{
    const auto pictures = fold::FoldPictures::make(piece.profile.profile, piece.flat, piece.stuff.metal,
                                                   piece.stuff.sheet, machine, plan, {});
    if (!pictures.ok())
        return pictures.errors();
    if (!QDir().mkpath(QString::fromStdString(folder)))
        return {{"--svg", folder, "a folder that can be made"}};
    drawing::FoldTicket ticket = foldTicketOf(piece.stuff, piece.profile.material, machine, plan, style);
    ticket.pieces = {{"Piece", 1, length}};
    const auto pages = drawing::foldTicket(piece.profile.profile, piece.flat, plan, *pictures, ticket);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const QString name = QString("/fold-%1.svg").arg(i + 1, 2, 10, QChar('0'));
        const auto written = storage::writeDocument(folder + name.toStdString(), drawing::toSvg(pages[i]));
        if (!written.ok())
            return written.errors();
    }
    return {};
}

/// Says what the plan's check finds wrong with it. True if it holds.
bool holds(const Unfolded& piece, const fold::Machine& machine, const fold::FoldPlan& plan, Length length)
{
    const auto faults = acts::faultsOf(piece.profile.profile, piece.flat, piece.stuff, machine, plan, length);
    if (!faults.ok()) {
        tell(faults.errors());
        return false;
    }
    for (const std::string& fault : *faults)
        tell("the plan does not hold: " + fault);
    return faults->empty();
}

Exit show(const QCommandLineParser& options, const Unfolded& piece, const fold::Machine& machine,
          const fold::Outcome& outcome, Length length)
{
    const Style style = styleOf(options);
    const auto* plan = std::get_if<fold::FoldPlan>(&outcome);
    if (plan != nullptr && !plan->steps.empty()) {
        if (!holds(piece, machine, *plan, length))
            return Exit::CouldNot;
        if (const std::string folder = text(options, "svg"); !folder.empty())
            if (const auto errors = writeTicket(folder, piece, machine, *plan, length, style);
                !errors.empty()) {
                tell(errors);
                return Exit::CouldNot;
            }
    }
    if (options.isSet("json"))
        print(asJson(outcome, style).dump(2));
    else
        for (const std::string& line : acts::inWords(outcome, style))
            print(line);
    return plan != nullptr ? Exit::Done : Exit::Blocked;
}

Exit foldProfile(const QCommandLineParser& options)
{
    const auto catalogue = acts::loadCatalogue(libraryFolders(options));
    const auto machines = acts::loadMachines(libraryFolders(options));
    if (!catalogue.ok() || !machines.ok()) {
        tell(catalogue.ok() ? machines.errors() : catalogue.errors());
        return Exit::BadInput;
    }
    const auto unfolded = unfold(argument(options), *catalogue);
    const auto machine = acts::machineNamed(*machines, text(options, "machine"), "--machine");
    if (!unfolded.ok() || !machine.ok()) {
        tell(unfolded.ok() ? machine.errors() : unfolded.errors());
        return Exit::BadInput;
    }
    const fold::Machine& folder = (*machines)[*machine];
    const Length length =
        unfolded->profile.length.value_or(std::min(folder->bendingLength, Length::feet(10)));
    const auto outcome = planOn(*unfolded, *machines, *machine, length);
    if (!outcome.ok()) {
        tell(outcome.errorsWithin(nameOf(argument(options))));
        return Exit::BadInput;
    }
    return show(options, *unfolded, folder, *outcome, length);
}

} // namespace

Subcommand foldCommand()
{
    return {
        "fold",
        "PROFILE",
        "plan the fold steps of one profile on one machine",
        "PROFILE is a profile document (lapwright/profile). Prints the steps of least handling that the machine can "
        "make, or why there are none and what would help (exit status 1).",
        {{"machine", "Id of the folding machine.", "MACHINE"},
         {"svg",
          "Also write the fold ticket into this folder, a page a file; the folder is made if it is not there.",
          "DIR"}},
        1,
        1,
        foldProfile};
}

} // namespace lapwright::command
