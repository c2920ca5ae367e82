#include "schedule/floor.h"

#include <algorithm>
#include <set>

namespace lapwright::schedule {

namespace {

constexpr Duration longestTime = Duration::days(1);

class FloorChecks {
public:
    void times(const std::string& place, const std::vector<std::optional<Duration>>& values)
    {
        for (const auto& value : values)
            if (value && (*value < Duration() || *value > longestTime))
                errors.push_back(
                    {place, std::to_string(value->inSeconds()) + " seconds", "0 to 86400 seconds"});
    }

    void rates(const std::string& place, const Rates& rates)
    {
        times(place, {rates.sheet, rates.slit, rates.crosscut, rates.piece});
        if (rates.foldPercent && (*rates.foldPercent < 1 || *rates.foldPercent > 10'000))
            errors.push_back({place + "/fold_percent", std::to_string(*rates.foldPercent), "1 to 10000"});
    }

    void hours(const std::string& place, const Hours& hours)
    {
        for (const Error& error : schedule::faultsOf(hours))
            errors.push_back(
                {place + (error.place.empty() ? "" : "/" + error.place), error.found, error.expected});
    }

    void machine(const std::string& place, const FloorMachine& machine)
    {
        if (!ids.insert(machine.id).second)
            errors.push_back({place + "/id", machine.id + " again", "each only once"});
        if ((machine.stage == Stage::Fold) == machine.model.empty())
            errors.push_back({place + "/model", machine.model.empty() ? "none" : machine.model,
                              "a folding machine's id in the machine library, and none for cutting"});
        if (machine.hours)
            hours(place + "/hours", *machine.hours);
        rates(place + "/measured", machine.measured);
    }

    std::vector<Error> errors;
    std::set<std::string> ids;
};

} // namespace

Rates usualRates()
{
    return {Duration::seconds(60), Duration::seconds(15), Duration::seconds(12), 100, Duration::seconds(15)};
}

std::vector<Error> faultsOf(const Floor& floor)
{
    FloorChecks checks;
    checks.hours("/hours", floor.hours);
    const SetupTimes& setups = floor.setups;
    checks.times("/setups", {setups.coilChange, setups.rackChange, setups.slitterSetup, setups.programChange,
                             setups.beamFaceChange});
    checks.rates("/rates", floor.rates);
    for (std::size_t index = 0; index < floor.machines.size(); ++index)
        checks.machine("/machines/" + std::to_string(index), floor.machines[index]);
    if (floor.latenessWeights.empty() ||
        std::any_of(floor.latenessWeights.begin(), floor.latenessWeights.end(),
                    [](std::int64_t weight) { return weight < 0 || weight > ProblemBuilder::highestWeight; }))
        checks.errors.push_back({"/lateness_weights", "weights out of range",
                                 "at least one, each 0 to " + std::to_string(ProblemBuilder::highestWeight)});
    if (floor.truckLeaves < Duration() || floor.truckLeaves > Duration::days(1))
        checks.errors.push_back({"/truck_leaves", writeTimeOfDay(floor.truckLeaves), "a time of day"});
    if (floor.transferPieces && *floor.transferPieces < 1)
        checks.errors.push_back({"/transfer_pieces", std::to_string(*floor.transferPieces), "one or more"});
    return std::move(checks.errors);
}

Floor usualFloor(const std::vector<std::pair<std::string, std::string>>& folders)
{
    Floor floor;
    floor.name = "usual floor";
    for (std::size_t day = 0; day < 5; ++day)
        floor.hours.week[day] = {{Duration::hours(7), Duration::hours(12)},
                                 {Duration::minutes(750), Duration::minutes(930)}};
    FloorMachine cutter;
    cutter.id = "cutting-line";
    cutter.name = "Cutting line";
    floor.machines.push_back(std::move(cutter));
    for (const auto& [id, name] : folders) {
        FloorMachine folder;
        folder.id = id;
        folder.name = name;
        folder.stage = Stage::Fold;
        folder.model = id;
        floor.machines.push_back(std::move(folder));
    }
    return floor;
}

Rates ratesOf(const Floor& floor, const FloorMachine& machine)
{
    const Rates usual = usualRates();
    const auto pick = [&](auto member) {
        for (const Rates* rates : {&machine.measured, &floor.rates})
            if (rates->*member)
                return rates->*member;
        return usual.*member;
    };
    return {pick(&Rates::sheet), pick(&Rates::slit), pick(&Rates::crosscut), pick(&Rates::foldPercent),
            pick(&Rates::piece)};
}

std::int64_t latenessWeight(const Floor& floor, int priority)
{
    const auto last = static_cast<int>(floor.latenessWeights.size()) - 1;
    return floor.latenessWeights[static_cast<std::size_t>(std::clamp(priority, 0, last))];
}

} // namespace lapwright::schedule
