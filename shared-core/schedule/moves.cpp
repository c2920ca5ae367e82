#include "schedule/moves.h"

#include <algorithm>
#include <map>

namespace lapwright::schedule {

namespace {

auto iteratorAt(std::vector<std::uint32_t>& line, std::size_t at)
{
    return line.begin() + static_cast<std::ptrdiff_t>(at);
}

void moveWithin(std::vector<std::uint32_t>& line, std::size_t from, std::size_t to)
{
    if (from < to)
        std::rotate(iteratorAt(line, from), iteratorAt(line, from + 1), iteratorAt(line, to + 1));
    else
        std::rotate(iteratorAt(line, to), iteratorAt(line, from), iteratorAt(line, from + 1));
}

} // namespace

Moves::Moves(const Timing& timing, std::uint64_t seed) : timing_(timing), random_(seed)
{
    const auto& tasks = timing.problem().tasks();
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::size_t> known;
    for (std::size_t task = 0; task < tasks.size(); ++task) {
        all_.push_back(task);
        if (tasks[task].stage == Stage::Fold)
            lots_.push_back(task);
        const Timing::WayNumbers& way = timing.ways(task).front();
        const std::size_t group = known.try_emplace({way.fitting, way.setting}, known.size()).first->second;
        groups_.resize(known.size());
        groups_[group].push_back(task);
        groupOf_.push_back(group);
    }
}

Moves::Place Moves::placeOf(const Sequences& sequences, std::size_t task, const Times& times) const
{
    const std::size_t machine = times.machine[task];
    const auto& line = sequences[machine];
    return {machine, static_cast<std::size_t>(std::find(line.begin(), line.end(), task) - line.begin())};
}

/// Any task; half the time one whose delivery is late, if a few tries find one.
std::size_t Moves::anyTask(const Times& times)
{
    const Problem& problem = timing_.problem();
    if (times.score.weightedLateness > 0 && !lots_.empty() && below(2) == 0)
        for (int attempt = 0; attempt < 8; ++attempt) {
            const std::size_t lot = lots_[below(lots_.size())];
            const auto delivery = problem.tasks()[lot].delivery;
            if (delivery && problem.deliveries()[*delivery].due &&
                times.wallEnd[lot] > problem.deliveries()[*delivery].due->sinceEpoch().inSeconds())
                return lot;
        }
    return all_[below(all_.size())];
}

std::vector<std::size_t> Moves::change(Sequences& sequences, const Times& times)
{
    const std::size_t task = anyTask(times);
    switch (below(8)) {
    case 0:
    case 1:
    case 2:
        return relocate(sequences, times, task);
    case 3:
        return exchange(sequences, times, task);
    case 4:
        return moveRun(sequences, times, task);
    case 5:
        return joinAlike(sequences, times, task);
    default:
        return pullForward(sequences, times, task);
    }
}

std::vector<std::size_t> Moves::relocate(Sequences& sequences, const Times& times, std::size_t task)
{
    const Place from = placeOf(sequences, task, times);
    const auto& ways = timing_.ways(task);
    const std::size_t machine = ways[below(ways.size())].machine;
    auto& line = sequences[machine];
    if (machine != from.machine) {
        sequences[from.machine].erase(iteratorAt(sequences[from.machine], from.at));
        line.insert(iteratorAt(line, below(line.size() + 1)), static_cast<std::uint32_t>(task));
        return {from.machine, machine};
    }
    // Mostly near by: far moves are seldom taken.
    const std::size_t reach = below(3) == 0 ? line.size() : std::min<std::size_t>(line.size(), 12);
    const std::size_t low = from.at > reach ? from.at - reach : 0;
    const std::size_t high = std::min(line.size() - 1, from.at + reach);
    const std::size_t to = low + below(high - low + 1);
    if (to == from.at)
        return {};
    moveWithin(line, from.at, to);
    return {machine};
}

std::vector<std::size_t> Moves::exchange(Sequences& sequences, const Times& times, std::size_t task)
{
    const Place from = placeOf(sequences, task, times);
    const auto& ways = timing_.ways(task);
    const std::size_t machine = ways[below(ways.size())].machine;
    auto& line = sequences[machine];
    if (line.empty())
        return {};
    const std::size_t to = below(line.size());
    const std::size_t other = line[to];
    if (other == task || wayOn(timing_.problem().tasks()[other], from.machine) == nullptr)
        return {};
    std::swap(sequences[from.machine][from.at], line[to]);
    if (machine == from.machine)
        return {machine};
    return {from.machine, machine};
}

/// The neighbours that share the task's setting move together.
std::vector<std::size_t> Moves::moveRun(Sequences& sequences, const Times& times, std::size_t task)
{
    const Place place = placeOf(sequences, task, times);
    auto& line = sequences[place.machine];
    const auto alike = [&](std::size_t at) {
        const auto& one = timing_.way(line[at], place.machine);
        const auto& other = timing_.way(task, place.machine);
        return one.setting == other.setting && one.fitting == other.fitting;
    };
    std::size_t first = place.at, last = place.at + 1;
    while (first > 0 && alike(first - 1))
        --first;
    while (last < line.size() && alike(last))
        ++last;
    const std::size_t length = last - first;
    if (length == line.size())
        return {};
    std::size_t to = below(line.size() - length + 1);
    if (to == first)
        return {};
    if (to < first)
        std::rotate(iteratorAt(line, to), iteratorAt(line, first), iteratorAt(line, last));
    else
        std::rotate(iteratorAt(line, first), iteratorAt(line, last), iteratorAt(line, to + length));
    return {place.machine};
}

/// A lot and what it is cut from go before another lot and what that is cut from.
std::vector<std::size_t> Moves::pullForward(Sequences& sequences, const Times& times, std::size_t task)
{
    const Problem& problem = timing_.problem();
    if (problem.tasks()[task].stage == Stage::Cut) {
        if (problem.suppliesOf(task).empty())
            return {};
        task = problem.supplies()[problem.suppliesOf(task)[below(problem.suppliesOf(task).size())]].lot;
    }
    const Place from = placeOf(sequences, task, times);
    auto& line = sequences[from.machine];
    if (from.at == 0)
        return {};
    const std::size_t to = below(from.at);
    const std::size_t other = line[to];
    moveWithin(line, from.at, to);
    std::vector<std::size_t> changed{from.machine};
    for (const std::size_t link : problem.suppliesOf(task)) {
        const Place cut = placeOf(sequences, problem.supplies()[link].cut, times);
        std::size_t target = cut.at;
        for (const std::size_t otherLink : problem.suppliesOf(other)) {
            const Place otherCut = placeOf(sequences, problem.supplies()[otherLink].cut, times);
            if (otherCut.machine == cut.machine)
                target = std::min(target, otherCut.at);
        }
        if (target == cut.at)
            continue;
        moveWithin(sequences[cut.machine], cut.at, target);
        if (std::find(changed.begin(), changed.end(), cut.machine) == changed.end())
            changed.push_back(cut.machine);
    }
    return changed;
}

/// The task goes right behind another of the same fitting and setting.
std::vector<std::size_t> Moves::joinAlike(Sequences& sequences, const Times& times, std::size_t task)
{
    const auto& group = groups_[groupOf_[task]];
    const std::size_t other = group[below(group.size())];
    const std::size_t machine = times.machine[other];
    if (other == task || wayOn(timing_.problem().tasks()[task], machine) == nullptr)
        return {};
    const Place from = placeOf(sequences, task, times);
    sequences[from.machine].erase(iteratorAt(sequences[from.machine], from.at));
    auto& line = sequences[machine];
    const auto behind = std::find(line.begin(), line.end(), other) + 1;
    line.insert(behind, static_cast<std::uint32_t>(task));
    if (machine == from.machine)
        return {machine};
    return {from.machine, machine};
}

} // namespace lapwright::schedule
