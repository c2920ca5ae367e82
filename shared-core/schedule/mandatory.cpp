#include "schedule/mandatory.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace lapwright::schedule {

namespace {

const std::string& fittingOf(const Readiness& ready)
{
    return ready.fitting;
}

const std::string& settingOf(const Readiness& ready)
{
    return ready.setting;
}

/// The readiness that all ways of the task share, if they do.
template <class Part>
std::string sharedBy(const Task& task, Part part)
{
    const std::string& first = part(task.ways.front().ready);
    const bool same = std::all_of(task.ways.begin(), task.ways.end(),
                                  [&](const Way& way) { return part(way.ready) == first; });
    return same ? first : std::string();
}

template <class Part, class Time>
void collect(const Problem& problem, Stage stage, Part part, Time time, std::vector<Duration>& setups)
{
    std::map<std::string, std::optional<Duration>> needed;
    for (const Task& task : problem.tasks())
        if (task.stage == stage)
            needed.try_emplace(sharedBy(task, part));
    needed.erase("");
    for (const Machine& machine : problem.machines())
        needed.erase(part(machine.standing));
    // Any task that may go with it may be the one that makes the machine ready.
    for (const Task& task : problem.tasks())
        for (const Way& way : task.ways)
            if (const auto at = needed.find(part(way.ready)); task.stage == stage && at != needed.end())
                at->second = std::min(at->second.value_or(time(way)), time(way));
    for (const auto& [readiness, least] : needed)
        setups.push_back(*least);
}

/// Different pairs of fitting and setting that tasks need on whatever machine they go to. A machine comes to
/// stand with a pair only by a change of one or the other.
std::size_t pairsNeeded(const Problem& problem, Stage stage)
{
    std::set<std::pair<std::string, std::string>> pairs;
    for (const Task& task : problem.tasks()) {
        if (task.stage != stage)
            continue;
        const std::string fitting = sharedBy(task, fittingOf), setting = sharedBy(task, settingOf);
        if (!fitting.empty() && !setting.empty())
            pairs.insert({fitting, setting});
    }
    for (const Machine& machine : problem.machines())
        pairs.erase({machine.standing.fitting, machine.standing.setting});
    return pairs.size();
}

Duration leastChange(const Problem& problem, Stage stage)
{
    std::optional<Duration> least;
    for (const Task& task : problem.tasks())
        for (const Way& way : task.ways)
            if (task.stage == stage)
                least = std::min({least.value_or(way.fit), way.fit, way.set});
    return least.value_or(Duration());
}

} // namespace

std::vector<Duration> mandatorySetups(const Problem& problem, Stage stage)
{
    std::vector<Duration> setups;
    collect(
        problem, stage, fittingOf, [](const Way& way) { return way.fit; }, setups);
    collect(
        problem, stage, settingOf, [](const Way& way) { return way.set; }, setups);
    const std::size_t pairs = pairsNeeded(problem, stage);
    if (pairs > setups.size())
        setups.resize(pairs, leastChange(problem, stage));
    return setups;
}

} // namespace lapwright::schedule
