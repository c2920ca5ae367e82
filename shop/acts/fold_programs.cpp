#include "acts/fold_programs.h"

#include "acts/catalogue.h"
#include "fold/check.h"
#include "storage/catalogue.h"

#include <algorithm>

namespace lapwright::acts {

namespace {

Result<std::vector<fold::Machine>> chosen(const std::vector<fold::Machine>& machines,
                                          const std::vector<std::string>& ids)
{
    std::vector<fold::Machine> result;
    for (const std::string& id : ids) {
        const auto found = machineNamed(machines, id, "machines of the stock document");
        if (!found.ok())
            return found.errors();
        result.push_back(machines[*found]);
    }
    return result;
}

std::optional<Length> longestOf(const pieces::Order& order, std::size_t profile)
{
    std::optional<Length> longest;
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile)
            longest = std::max(longest.value_or(piece.blankLength), piece.blankLength);
    return longest;
}

} // namespace

Result<std::vector<std::string>> faultsOf(const trim::Profile& profile, const trim::FlatPattern& flat,
                                          const Stuff& stuff, const fold::Machine& machine,
                                          const fold::FoldPlan& plan, Length pieceLength)
{
    auto check = fold::checkPlan(profile, flat, stuff.metal, stuff.sheet, machine, plan, pieceLength, {});
    if (!check.ok())
        return check.errors();
    return std::move(check->problems);
}

Result<FoldPrograms> FoldPrograms::forShop(const std::vector<std::string>& machines,
                                           const std::vector<std::string>& libraryFolders)
{
    auto catalogue = storage::loadCatalogue(libraryFolders);
    if (!catalogue.ok())
        return catalogue.errors();
    auto known = loadMachines(libraryFolders);
    if (known.ok() && !machines.empty())
        known = chosen(*known, machines);
    if (!known.ok())
        return known.errors();
    return FoldPrograms(*std::move(catalogue), *std::move(known));
}

Result<std::vector<FoldProgram>> FoldPrograms::onAll(const pieces::Order& order, std::size_t profile) const
{
    const pieces::OrderedProfile& ordered = order.profiles[profile];
    const std::string place = nameOf(order, profile);
    const std::optional<Length> longest = longestOf(order, profile);
    if (!longest)
        return std::vector<FoldProgram>();
    const auto stuff = stuffOf(ordered.material, catalogue_.metals);
    if (!stuff.ok())
        return stuff.errorsWithin(place);
    const auto flat = trim::flatPattern(ordered.profile, stuff->metal, stuff->sheet);
    if (!flat.ok())
        return flat.errorsWithin(place);
    auto outcomes = fold::chooseMachine(ordered.profile, *flat, stuff->metal, stuff->sheet, machines_,
                                        *longest, fold::Settings{});
    if (!outcomes.ok())
        return outcomes.errorsWithin(place);
    std::vector<FoldProgram> programs;
    for (fold::MachineOutcome& outcome : *outcomes) {
        programs.push_back({*stuff, *flat, outcome.machine, *longest, std::move(outcome.outcome)});
        const fold::FoldPlan* plan = programs.back().plan();
        if (plan == nullptr)
            continue;
        const auto faults =
            faultsOf(ordered.profile, *flat, *stuff, machines_[outcome.machine], *plan, *longest);
        if (!faults.ok())
            return faults.errorsWithin(place);
        if (!faults->empty())
            return Error{place, "a fold plan that does not pass its check: " + faults->front(),
                         "a plan that does; this is a fault of the program"};
    }
    return programs;
}

Result<std::optional<FoldProgram>> FoldPrograms::of(const pieces::Order& order, std::size_t profile) const
{
    auto programs = onAll(order, profile);
    if (!programs.ok())
        return programs.errors();
    return programs->empty() ? std::optional<FoldProgram>() : std::optional(std::move(programs->front()));
}

Result<std::vector<FoldProgram>> FoldPrograms::every(const pieces::Order& order, std::size_t profile) const
{
    auto programs = onAll(order, profile);
    if (programs.ok())
        std::erase_if(*programs, [](const FoldProgram& program) { return program.plan() == nullptr; });
    return programs;
}

std::string nameOf(const pieces::Order& order, std::size_t profile)
{
    return order.job.name + ", " + order.profiles[profile].id + " " + order.profiles[profile].profile.name;
}

} // namespace lapwright::acts
