#include "acts/catalogue.h"
#include "acts/fold_programs.h"
#include "acts/fold_words.h"
#include "command.h"
#include "documents/machine.h"
#include "drawing/fold_ticket.h"
#include "drawing/svg.h"
#include "fold/planner.h"
#include "input.h"
#include "measure/rounding.h"
#include "pictures.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"
#include "unfold.h"

#include <QDir>
#include <QFileInfo>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>

/// `fold`: the fold steps of one profile document, on one machine or the best of all.
namespace lapwright::command {

namespace {

const char* actionName(fold::Action action)
{
    switch (action) {
    case fold::Action::Fold:
        return "fold";
    case fold::Action::FoldPartly:
        return "fold-partly";
    case fold::Action::FinishFold:
        return "finish-fold";
    case fold::Action::PreBend:
        return "pre-bend";
    case fold::Action::Flatten:
        return "flatten";
    }
    return "";
}

const char* wayOutName(fold::WayOut way)
{
    switch (way) {
    case fold::WayOut::Straight:
        return "straight";
    case fold::WayOut::LittleOpen:
        return "clamp-little-open";
    case fold::WayOut::DrawnFirst:
        return "drawn-first";
    case fold::WayOut::AsClampOpens:
        return "as-clamp-opens";
    case fold::WayOut::Endways:
        return "endways";
    }
    return "";
}

nlohmann::json asJson(const fold::Outcome& outcome, const std::vector<std::string>& text)
{
    nlohmann::json json = {{"text", text}};
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
                 {"gauge_touches", fold::nameOf(step.touching)},
                 {"fold_degrees", step.foldAngle.inDegrees()},
                 {"set_degrees", step.angleToSet.inDegrees()},
                 {"gap_mm", inMillimetres(step.openGap)},
                 {"lift_mm", inMillimetres(step.handling.lift)},
                 {"way_in", step.handling.in == fold::WayIn::Endways ? "endways" : "front"},
                 {"way_out", wayOutName(step.handling.out)},
                 {"drawn_mm", inMillimetres(step.handling.drawn)},
                 {"clamp_open_mm", inMillimetres(step.handling.open)},
                 {"colour_up", step.colourUp}});
    }
    return json;
}

/// What to show: the outcome on one machine, and those on the others where they were asked.
struct Answer {
    std::size_t machine = 0;
    fold::Outcome outcome;
    std::vector<std::string> others;
};

/// Without a machine named, the one that makes it with the least handling. A refusal is held against the
/// other machines, and says which one can.
Result<Answer> planOn(const Unfolded& piece, const std::vector<fold::Machine>& machines,
                      const std::optional<std::size_t>& named, Length length, const Style& style)
{
    if (named) {
        auto outcome = fold::planFold(piece.profile.profile, piece.flat, piece.stuff.metal, piece.stuff.sheet,
                                      machines[*named], length, {});
        if (!outcome.ok())
            return outcome.errors();
        if (std::holds_alternative<fold::FoldPlan>(*outcome))
            return Answer{*named, *std::move(outcome), {}};
    }
    const auto all = fold::chooseMachine(piece.profile.profile, piece.flat, piece.stuff.metal,
                                         piece.stuff.sheet, machines, length, {});
    if (!all.ok())
        return all.errors();
    const auto its = std::find_if(all->begin(), all->end(), [&named](const fold::MachineOutcome& each) {
        return !named || each.machine == *named;
    });
    Answer answer{its->machine, its->outcome, {}};
    if (!named)
        answer.others = acts::othersInWords(*all, its->machine, machines, style);
    return answer;
}

/// The ticket as SVG pages, "fold-01.svg" and on, in the folder named with --svg. Errors: what stands in the
/// way of writing it.
std::vector<Error> writeTicket(const std::string& folder, const Unfolded& piece, const fold::Machine& machine,
                               const fold::FoldPlan& plan, Length length, const Style& style,
                               drawing::AngleShown angles)
{
    const auto pictures = fold::FoldPictures::make(piece.profile.profile, piece.flat, piece.stuff.metal,
                                                   piece.stuff.sheet, machine, plan, {});
    if (!pictures.ok())
        return pictures.errors();
    if (!QDir().mkpath(QString::fromStdString(folder)))
        return {{"--svg", folder, "a folder that can be made"}};
    drawing::FoldTicket ticket =
        foldTicketOf(piece.stuff, piece.profile.material, machine, plan, style, angles);
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
          const Answer& answer, Length length)
{
    const Style style = styleOf(options);
    const drawing::AngleShown angles = anglesOf(options);
    const auto* plan = std::get_if<fold::FoldPlan>(&answer.outcome);
    if (plan != nullptr && !plan->steps.empty()) {
        if (!holds(piece, machine, *plan, length))
            return Exit::CouldNot;
        if (const std::string folder = text(options, "svg"); !folder.empty())
            if (const auto errors = writeTicket(folder, piece, machine, *plan, length, style, angles);
                !errors.empty()) {
                tell(errors);
                return Exit::CouldNot;
            }
    }
    std::vector<std::string> lines = acts::inWords(answer.outcome, style, angles);
    lines.insert(lines.end(), answer.others.begin(), answer.others.end());
    if (options.isSet("json"))
        printDocument(asJson(answer.outcome, lines).dump(2));
    else
        for (const std::string& line : lines)
            print(line);
    return plan != nullptr ? Exit::Done : Exit::Blocked;
}

/// The piece's length; without one a usual length, as far as there is a machine that folds it.
Length lengthOf(const Unfolded& piece, const std::vector<fold::Machine>& machines,
                const std::optional<std::size_t>& named)
{
    Length most;
    for (std::size_t i = 0; i < machines.size(); ++i)
        if (!named || i == *named)
            most = std::max(most, machines[i]->bendingLength);
    return piece.profile.length.value_or(std::min(most, Length::feet(10)));
}

/// The machine that --machine means: one of the library by its id, or one in a document of its own, which
/// joins them, in the place of one with its id.
Result<std::size_t> machineMeant(const std::string& meant, std::vector<fold::Machine>& machines)
{
    if (!QFileInfo(QString::fromStdString(meant)).isFile())
        return acts::machineNamed(machines, meant, "--machine");
    const auto description = readFrom(meant, documents::readMachine);
    if (!description.ok())
        return description.errors();
    auto machine = fold::Machine::make(description->value);
    if (!machine.ok())
        return machine.errorsWithin(nameOf(meant));
    const auto same = std::find_if(machines.begin(), machines.end(), [&machine](const fold::Machine& known) {
        return known->id == (*machine)->id;
    });
    const auto place = same - machines.begin();
    if (same == machines.end())
        machines.push_back(*std::move(machine));
    else
        *same = *std::move(machine);
    return static_cast<std::size_t>(place);
}

Exit foldProfile(const QCommandLineParser& options)
{
    const auto catalogue = storage::loadCatalogue(libraryFolders(options));
    auto machines = acts::loadMachines(libraryFolders(options));
    if (!catalogue.ok() || !machines.ok()) {
        tell(catalogue.ok() ? machines.errors() : catalogue.errors());
        return Exit::BadInput;
    }
    const auto unfolded = unfold(argument(options), *catalogue);
    std::optional<std::size_t> named;
    if (options.isSet("machine")) {
        const auto machine = machineMeant(text(options, "machine"), *machines);
        if (!machine.ok()) {
            tell(machine.errors());
            return Exit::BadInput;
        }
        named = *machine;
    }
    if (!unfolded.ok()) {
        tell(unfolded.errors());
        return Exit::BadInput;
    }
    const Length length = lengthOf(*unfolded, *machines, named);
    const auto answer = planOn(*unfolded, *machines, named, length, styleOf(options));
    if (!answer.ok()) {
        tell(answer.errorsWithin(nameOf(argument(options))));
        return Exit::BadInput;
    }
    return show(options, *unfolded, (*machines)[answer->machine], *answer, length);
}

} // namespace

Subcommand foldCommand()
{
    return {
        "fold",
        "PROFILE",
        "plan the fold steps of one profile",
        "PROFILE is a profile document (lapwright/profile). Prints the steps of least handling that the machine can "
        "make, or why there are none and what would help (exit status 1). Without --machine every machine is asked: "
        "the steps are those of the one with the least handling, and the others are named with theirs or their reason.",
        {libraryOption(),
         {"machine", "The folding machine: its id in the library, or the file of a machine document.",
          "MACHINE"},
         {"svg",
          "Also write the fold ticket into this folder, a page a file; the folder is made if it is not there.",
          "DIR"}},
        1,
        1,
        foldProfile};
}

} // namespace lapwright::command
