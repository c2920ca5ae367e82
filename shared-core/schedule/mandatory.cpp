#include "schedule/mandatory.h"

#include <algorithm>
#include <map>
#include <string>

namespace lapwright::schedule {

namespace {

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

} // namespace

std::vector<Duration> mandatorySetups(const Problem& problem, Stage stage)
{
    std::vector<Duration> setups;
    collect(
        problem, stage, [](const Readiness& ready) -> const std::string& { return ready.fitting; },
        [](const Way& way) { return way.fit; }, setups);
    collect(
        problem, stage, [](const Readiness& ready) -> const std::string& { return ready.setting; },
        [](const Way& way) { return way.set; }, setups);
    return setups;
}

} // namespace lapwright::schedule
