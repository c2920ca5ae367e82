#include "catalogue.h"
#include "command.h"
#include "documents/profile.h"
#include "fold/planner.h"
#include "fold_words.h"
#include "input.h"
#include "measure/rounding.h"
#include "pieces/why.h"
#include "trim/girth.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>

/// `girth` and `fold`: one computation on one profile document.
namespace lapwright::command {

namespace {

/// A profile document with the metal it names and its flat.
struct Unfolded {
    documents::FreeProfile profile;
    Stuff stuff;
    trim::FlatPattern flat;
};

Result<Unfolded> unfold(const std::string& path, const pieces::Catalogue& catalogue)
{
    const auto profile = readFrom(path, documents::readProfile);
    if (!profile.ok())
        return profile.errors();
    const auto stuff = stuffOf(profile->value.material, catalogue);
    if (!stuff.ok())
        return stuff.errorsWithin(nameOf(path));
    auto flat = trim::flatPattern(profile->value.profile, stuff->metal, stuff->sheet);
    if (!flat.ok())
        return flat.errorsWithin(nameOf(path));
    return Unfolded{profile->value, *stuff, *std::move(flat)};
}

Exit girth(const QCommandLineParser& options)
{
    const auto catalogue = loadCatalogue(libraryFolders(options));
    const auto unfolded =
        catalogue.ok() ? unfold(argument(options), *catalogue) : Result<Unfolded>(catalogue.errors());
    if (!unfolded.ok()) {
        tell(unfolded.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    const trim::FlatPattern& flat = unfolded->flat;
    if (options.isSet("json")) {
        nlohmann::json lines = nlohmann::json::array();
        for (const trim::BendLine& line : flat.lines)
            lines.push_back({{"position_mm", inMillimetres(line.position)},
                             {"turn_degrees", line.turn.inDegrees()},
                             {"deduction_mm", inMillimetres(line.deduction)}});
        print(nlohmann::json{{"girth_mm", inMillimetres(flat.girth)}, {"lines", lines}}.dump(2));
        return Exit::Done;
    }
    std::fputs(pieces::writeDerivation(flat.derivation, style).c_str(), stdout);
    print("girth " + write(flat.girth, style));
    for (const trim::BendLine& line : flat.lines)
        print("  bend line at " + write(line.position, style) + ", " + write(magnitude(line.turn)));
    return Exit::Done;
}

nlohmann::json asJson(const fold::Outcome& outcome, const Style& style)
{
    nlohmann::json json = {{"text", inWords(outcome, style)}};
    if (const auto* plan = std::get_if<fold::FoldPlan>(&outcome)) {
        json["machine"] = plan->machine;
        json["milliseconds"] = plan->milliseconds;
        for (const fold::FoldStep& step : plan->steps)
            json["steps"].push_back({{"line", step.line},
                                     {"gauge_mm", inMillimetres(step.gaugeSetting)},
                                     {"fold_degrees", step.foldAngle.inDegrees()},
                                     {"set_degrees", step.angleToSet.inDegrees()},
                                     {"colour_up", step.colourUp}});
    }
    return json;
}

Result<fold::Machine> machineOf(const QCommandLineParser& options)
{
    const std::string wanted = text(options, "machine");
    const auto machines = loadMachines(libraryFolders(options));
    if (!machines.ok())
        return machines.errors();
    std::string known;
    for (const fold::Machine& machine : *machines) {
        if (machine->id == wanted)
            return machine;
        known += (known.empty() ? "" : ", ") + machine->id;
    }
    return Error{"--machine", wanted.empty() ? "nothing" : wanted, "one of " + known};
}

Exit foldProfile(const QCommandLineParser& options)
{
    const auto catalogue = loadCatalogue(libraryFolders(options));
    const auto unfolded =
        catalogue.ok() ? unfold(argument(options), *catalogue) : Result<Unfolded>(catalogue.errors());
    const auto machine = machineOf(options);
    if (!unfolded.ok() || !machine.ok()) {
        tell(unfolded.ok() ? machine.errors() : unfolded.errors());
        return Exit::BadInput;
    }
    const Length length =
        unfolded->profile.length.value_or(std::min((*machine)->bendingLength, Length::feet(10)));
    const auto outcome = fold::planFold(unfolded->profile.profile, unfolded->flat, unfolded->stuff.metal,
                                        unfolded->stuff.sheet, *machine, length, {});
    if (!outcome.ok()) {
        tell(outcome.errorsWithin(nameOf(argument(options))));
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    if (options.isSet("json"))
        print(asJson(*outcome, style).dump(2));
    else
        for (const std::string& line : inWords(*outcome, style))
            print(line);
    return std::holds_alternative<fold::FoldPlan>(*outcome) ? Exit::Done : Exit::Blocked;
}

} // namespace

Subcommand girthCommand()
{
    return {
        "girth",
        "PROFILE",
        "unfold one profile: girth, bend lines, and how they come about",
        "PROFILE is a profile document (lapwright/profile) that names its metal and gauge, or - for standard input.",
        {},
        1,
        1,
        girth};
}

Subcommand foldCommand()
{
    return {
        "fold",
        "PROFILE",
        "plan the fold steps of one profile on one machine",
        "PROFILE is a profile document (lapwright/profile). Prints the steps of least handling that the machine can "
        "make, or why there are none (exit status 1).",
        {{"machine", "Id of the folding machine.", "MACHINE"}},
        1,
        1,
        foldProfile};
}

} // namespace lapwright::command
