#include "schedule/timing.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

/// What a broken order of two tasks counts as, so that any search mends it before anything else.
constexpr std::int64_t brokenOrder = 86'400;

Moment atWall(std::int64_t seconds)
{
    return Moment::sinceEpoch(Duration::seconds(seconds));
}

} // namespace

Timing::Timing(const Problem& problem) : problem_(problem), readiness_{{"", 0}}
{
    const std::size_t tasks = problem.tasks().size();
    ways_.resize(tasks);
    links_.resize(tasks);
    feeds_.resize(tasks);
    after_.resize(tasks);
    touched_.assign(tasks, 0);
    latest_.assign(problem.deliveries().size(), 0);
    for (std::size_t task = 0; task < tasks; ++task)
        numberTask(task);
    for (const Supply& supply : problem.supplies()) {
        Link link{static_cast<std::uint32_t>(supply.cut), {}};
        for (const Way& way : problem.tasks()[supply.cut].ways)
            link.transfers.push_back(transfersOf(problem, supply, way));
        links_[supply.lot].push_back(std::move(link));
        feeds_[supply.cut].push_back(static_cast<std::uint32_t>(supply.lot));
    }
    for (const Machine& machine : problem.machines())
        standing_.push_back({number(machine.standing.fitting), number(machine.standing.setting)});
}

std::uint32_t Timing::number(const std::string& readiness)
{
    return readiness_.try_emplace(readiness, static_cast<std::uint32_t>(readiness_.size())).first->second;
}

void Timing::numberTask(std::size_t index)
{
    const Task& task = problem_.tasks()[index];
    const auto pinIndex = problem_.pinOf(index);
    const Pin* pin = pinIndex ? &problem_.pins()[*pinIndex] : nullptr;
    if (pin != nullptr)
        after_[index] = pin->after;
    for (const Way& way : task.ways) {
        const Calendar& calendar = problem_.calendar(way.machine);
        WayNumbers numbers;
        numbers.machine = static_cast<std::uint32_t>(way.machine);
        numbers.work = schedule::workOf(task, way).inSeconds();
        numbers.millisecondsEach = way.millisecondsEach;
        numbers.fitting = number(way.ready.fitting);
        numbers.setting = number(way.ready.setting);
        numbers.fit = way.fit.inSeconds();
        numbers.set = way.set.inSeconds();
        numbers.earliest = std::max(calendar.workedBy(task.release),
                                    calendar.workedBy(problem_.machines()[way.machine].freeFrom))
                               .inSeconds();
        if (pin != nullptr && pin->start) {
            numbers.pinned = calendar.workedBy(*pin->start).inSeconds();
            numbers.earliest = std::max(numbers.earliest, numbers.pinned);
        }
        ways_[index].push_back(numbers);
    }
}

std::size_t Timing::wayIndex(std::size_t task, std::size_t machine) const
{
    std::size_t index = 0;
    while (ways_[task][index].machine != machine)
        ++index;
    return index;
}

std::int64_t Timing::makeReady(Standing& standing, const WayNumbers& way)
{
    std::int64_t time = 0;
    if (way.fitting != 0 && way.fitting != standing.fitting) {
        time += way.fit;
        standing.fitting = way.fitting;
    }
    if (way.setting != 0 && way.setting != standing.setting) {
        time += way.set;
        standing.setting = way.setting;
    }
    return time;
}

Times Timing::time(const Sequences& sequences)
{
    Times times;
    const std::size_t tasks = problem_.tasks().size(), machines = problem_.machines().size();
    times.machine.assign(tasks, 0);
    times.begin.assign(tasks, -1);
    times.end.assign(tasks, -1);
    times.wallEnd.assign(tasks, 0);
    times.ready.assign(machines, 0);
    times.missed.assign(machines, 0);
    times.metal.resize(tasks);
    for (std::size_t task = 0; task < tasks; ++task)
        if (problem_.tasks()[task].stage == Stage::Fold)
            times.metal[task].assign(ways_[task].size(), 0);
    std::vector<std::size_t> all(machines);
    for (std::size_t machine = 0; machine < machines; ++machine)
        all[machine] = machine;
    retime(sequences, all, times);
    return times;
}

void Timing::retime(const Sequences& sequences, const std::vector<std::size_t>& changed, Times& times)
{
    std::vector<std::uint32_t> lots;
    bool cuttingChanged = false;
    for (const std::size_t machine : changed) {
        if (problem_.machines()[machine].stage != Stage::Cut)
            continue;
        cuttingChanged = true;
        timeMachine(machine, sequences[machine], times);
    }
    for (std::size_t task = 0; cuttingChanged && task < touched_.size(); ++task) {
        if (touched_[task] == 0)
            continue;
        touched_[task] = 0;
        for (const std::uint32_t lot : feeds_[task])
            lots.push_back(lot);
    }
    if (cuttingChanged) {
        std::sort(lots.begin(), lots.end());
        lots.erase(std::unique(lots.begin(), lots.end()), lots.end());
        timeLots(lots, times);
    }
    for (std::size_t machine = 0; machine < sequences.size(); ++machine)
        if (problem_.machines()[machine].stage == Stage::Fold &&
            (cuttingChanged || std::find(changed.begin(), changed.end(), machine) != changed.end()))
            timeMachine(machine, sequences[machine], times);
    std::fill(touched_.begin(), touched_.end(), std::uint8_t{0});
    scoreOf(times);
}

void Timing::timeMachine(std::size_t machine, const std::vector<std::uint32_t>& sequence, Times& times)
{
    const Calendar& calendar = problem_.calendar(machine);
    Standing standing = standing_[machine];
    std::int64_t at = calendar.workedBy(problem_.machines()[machine].freeFrom).inSeconds();
    std::int64_t ready = 0, missed = 0;
    for (std::size_t place = 0; place < sequence.size(); ++place) {
        const std::uint32_t task = sequence[place];
        const std::size_t index = wayIndex(task, machine);
        const WayNumbers& numbers = ways_[task][index];
        const std::int64_t setup = makeReady(standing, numbers);
        std::int64_t begin = std::max(at + setup, numbers.earliest);
        if (!times.metal[task].empty())
            begin = std::max(begin, times.metal[task][index]);
        if (numbers.pinned >= 0)
            missed += begin - numbers.pinned;
        if (after_[task] && std::find(sequence.begin(), sequence.begin() + static_cast<std::ptrdiff_t>(place),
                                      *after_[task]) == sequence.begin() + static_cast<std::ptrdiff_t>(place))
            missed += brokenOrder;
        ready += setup;
        at = begin + numbers.work;
        if (times.begin[task] != begin || times.machine[task] != machine) {
            times.begin[task] = begin;
            times.end[task] = at;
            times.machine[task] = static_cast<std::uint32_t>(machine);
            times.wallEnd[task] = calendar.endsAt(Duration::seconds(at)).sinceEpoch().inSeconds();
            touched_[task] = 1;
        }
    }
    times.ready[machine] = ready;
    times.missed[machine] = missed;
    placed_ += static_cast<std::int64_t>(sequence.size());
}

void Timing::timeLots(const std::vector<std::uint32_t>& lots, Times& times)
{
    for (const std::uint32_t lot : lots) {
        arrivalsAt(lot, times);
        for (std::size_t index = 0; index < ways_[lot].size(); ++index)
            times.metal[lot][index] = metalFor(lot, ways_[lot][index]);
    }
    placed_ += static_cast<std::int64_t>(lots.size());
}

void Timing::arrivalsAt(std::size_t lot, const Times& times)
{
    arrivals_.clear();
    for (const Link& link : links_[lot]) {
        if (times.begin[link.cut] < 0)
            continue; // A part of a schedule is timed: this is not placed yet.
        const std::size_t machine = times.machine[link.cut];
        const Calendar& calendar = problem_.calendar(machine);
        std::int64_t before = 0;
        for (const Transfer& transfer : link.transfers[wayIndex(link.cut, machine)]) {
            const Moment wall = calendar.endsAt(Duration::seconds(times.begin[link.cut]) + transfer.offset);
            arrivals_.push_back({wall.sinceEpoch().inSeconds(), transfer.arrived - before});
            before = transfer.arrived;
        }
    }
    if (links_[lot].size() > 1)
        std::sort(arrivals_.begin(), arrivals_.end(),
                  [](const Arrival& left, const Arrival& right) { return left.wall < right.wall; });
}

std::int64_t Timing::metalFor(std::size_t lot, const WayNumbers& way) const
{
    const Calendar& calendar = problem_.calendar(way.machine);
    std::int64_t folded = problem_.tasks()[lot].units;
    for (const Arrival& arrival : arrivals_)
        folded -= arrival.pieces;
    std::int64_t begin = 0;
    for (const Arrival& arrival : arrivals_) {
        // The piece that needs this arrival begins when those before it are folded, without waiting between.
        const std::int64_t offset = folded * way.millisecondsEach / 1'000;
        begin = std::max(begin, calendar.workedBy(atWall(arrival.wall)).inSeconds() - offset);
        folded += arrival.pieces;
    }
    return begin;
}

void Timing::scoreOf(Times& times)
{
    const std::int64_t begin = problem_.begin().sinceEpoch().inSeconds();
    std::int64_t last = begin, ready = 0, missed = 0, late = 0;
    std::fill(latest_.begin(), latest_.end(), begin);
    for (std::size_t task = 0; task < times.wallEnd.size(); ++task) {
        last = std::max(last, times.wallEnd[task]);
        if (const auto delivery = problem_.tasks()[task].delivery)
            latest_[*delivery] = std::max(latest_[*delivery], times.wallEnd[task]);
    }
    for (std::size_t machine = 0; machine < times.ready.size(); ++machine) {
        ready += times.ready[machine];
        missed += times.missed[machine];
    }
    for (std::size_t delivery = 0; delivery < latest_.size(); ++delivery)
        if (const auto due = problem_.deliveries()[delivery].due)
            late += problem_.deliveries()[delivery].weight *
                    std::max<std::int64_t>(0, latest_[delivery] - due->sinceEpoch().inSeconds());
    times.score = {Duration::seconds(missed), late, Duration::seconds(last - begin),
                   Duration::seconds(ready)};
}

} // namespace lapwright::schedule
