#include "schedule/johnson.h"

#include "schedule/mandatory.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace lapwright::schedule {

namespace {

/// The one machine that all tasks of the stage can only go to.
std::optional<std::size_t> onlyMachine(const Problem& problem, Stage stage)
{
    std::optional<std::size_t> only;
    for (const Task& task : problem.tasks())
        for (const Way& way : task.ways) {
            if (task.stage != stage)
                continue;
            if (only.value_or(way.machine) != way.machine)
                return std::nullopt;
            only = way.machine;
        }
    return only;
}

/// The least lag between a cut task and a lot that any schedule keeps: as if all pieces that come from
/// elsewhere were folded first.
std::int64_t lagOf(const Problem& problem, const Supply& supply)
{
    const Task& lot = problem.tasks()[supply.lot];
    const Way& fold = lot.ways.front();
    std::int64_t lag = 0, before = lot.units - supply.pieces, arrived = 0;
    bool first = true;
    for (const Transfer& transfer : transfersOf(problem, supply, problem.tasks()[supply.cut].ways.front())) {
        const std::int64_t wait =
            transfer.offset.inSeconds() - (before + arrived) * fold.millisecondsEach / 1'000;
        lag = first ? wait : std::max(lag, wait);
        first = false;
        arrived = transfer.arrived;
    }
    return lag;
}

struct Pair {
    std::optional<std::size_t> cut;
    std::optional<std::size_t> lot;
    TwoStageJob job;
};

std::int64_t onlyWork(const Problem& problem, std::size_t task)
{
    return workOf(problem.tasks()[task], problem.tasks()[task].ways.front()).inSeconds();
}

/// Cut tasks and lots in pairs, those that share most pieces first; what finds no partner stands alone.
std::vector<Pair> pairsOf(const Problem& problem)
{
    std::vector<std::size_t> links(problem.supplies().size());
    std::iota(links.begin(), links.end(), std::size_t{0});
    std::stable_sort(links.begin(), links.end(), [&](std::size_t left, std::size_t right) {
        return problem.supplies()[left].pieces > problem.supplies()[right].pieces;
    });
    std::vector<Pair> pairs;
    std::set<std::size_t> taken;
    for (const std::size_t link : links) {
        const Supply& supply = problem.supplies()[link];
        if (taken.count(supply.cut) != 0 || taken.count(supply.lot) != 0)
            continue;
        taken.insert({supply.cut, supply.lot});
        pairs.push_back(
            {supply.cut,
             supply.lot,
             {onlyWork(problem, supply.cut), onlyWork(problem, supply.lot), lagOf(problem, supply)}});
    }
    for (std::size_t task = 0; task < problem.tasks().size(); ++task) {
        if (taken.count(task) != 0)
            continue;
        const std::int64_t work = onlyWork(problem, task);
        if (problem.tasks()[task].stage == Stage::Cut)
            pairs.push_back({task, std::nullopt, {work, 0, work}});
        else
            pairs.push_back({std::nullopt, task, {0, work, 0}});
    }
    return pairs;
}

std::vector<TwoStageJob> jobsOf(const std::vector<Pair>& pairs)
{
    std::vector<TwoStageJob> jobs;
    for (const Pair& pair : pairs)
        jobs.push_back(pair.job);
    return jobs;
}

/// At most one fitting and one setting in the stage: the machine is made ready once, whatever the order.
bool oneReadiness(const Problem& problem, Stage stage)
{
    std::set<std::string> fittings, settings;
    for (const Task& task : problem.tasks()) {
        if (task.stage != stage)
            continue;
        const Way& way = task.ways.front();
        if (way.fit > Duration())
            fittings.insert(way.ready.fitting);
        if (way.set > Duration())
            settings.insert(way.ready.setting);
    }
    return fittings.size() <= 1 && settings.size() <= 1;
}

bool ruleHolds(const Problem& problem, std::size_t cutter, std::size_t folder)
{
    const auto free = [&](std::size_t machine) {
        return problem.machines()[machine].freeFrom <= problem.begin();
    };
    if (!(problem.machines()[cutter].hours == problem.machines()[folder].hours) || !free(cutter) ||
        !free(folder) || !problem.pins().empty() || !oneReadiness(problem, Stage::Cut) ||
        !oneReadiness(problem, Stage::Fold))
        return false;
    for (std::size_t task = 0; task < problem.tasks().size(); ++task)
        if (problem.suppliesOf(task).size() > 1 || problem.tasks()[task].release > problem.begin())
            return false;
    return true;
}

} // namespace

std::vector<std::size_t> johnsonOrder(const std::vector<TwoStageJob>& jobs)
{
    std::vector<std::size_t> early, late;
    for (std::size_t job = 0; job < jobs.size(); ++job)
        (jobs[job].first < jobs[job].second ? early : late).push_back(job);
    std::stable_sort(early.begin(), early.end(),
                     [&](std::size_t left, std::size_t right) { return jobs[left].lag < jobs[right].lag; });
    const auto tail = [&](std::size_t job) { return jobs[job].second + jobs[job].lag - jobs[job].first; };
    std::stable_sort(late.begin(), late.end(),
                     [&](std::size_t left, std::size_t right) { return tail(left) > tail(right); });
    early.insert(early.end(), late.begin(), late.end());
    return early;
}

std::int64_t makespanOf(const std::vector<TwoStageJob>& jobs, const std::vector<std::size_t>& order)
{
    std::int64_t first = 0, second = 0;
    for (const std::size_t job : order) {
        second = std::max(second, first + jobs[job].lag) + jobs[job].second;
        first += jobs[job].first;
    }
    return std::max(first, second);
}

std::optional<Sequences> johnsonSchedule(const Problem& problem)
{
    const auto cutter = onlyMachine(problem, Stage::Cut), folder = onlyMachine(problem, Stage::Fold);
    if (!cutter || !folder || !ruleHolds(problem, *cutter, *folder))
        return std::nullopt;
    const std::vector<Pair> pairs = pairsOf(problem);
    Sequences sequences(problem.machines().size());
    for (const std::size_t index : johnsonOrder(jobsOf(pairs))) {
        if (pairs[index].cut)
            sequences[*cutter].push_back(static_cast<std::uint32_t>(*pairs[index].cut));
        if (pairs[index].lot)
            sequences[*folder].push_back(static_cast<std::uint32_t>(*pairs[index].lot));
    }
    return sequences;
}

std::optional<Duration> johnsonBound(const Problem& problem)
{
    const auto cutter = onlyMachine(problem, Stage::Cut), folder = onlyMachine(problem, Stage::Fold);
    if (!cutter || !folder)
        return std::nullopt;
    std::vector<TwoStageJob> jobs = jobsOf(pairsOf(problem));
    for (const Duration setup : mandatorySetups(problem, Stage::Cut))
        jobs.push_back({setup.inSeconds(), 0, setup.inSeconds()});
    for (const Duration setup : mandatorySetups(problem, Stage::Fold))
        jobs.push_back({0, setup.inSeconds(), 0});
    const Duration least = Duration::seconds(makespanOf(jobs, johnsonOrder(jobs)));
    const Calendar open = unionOf({&problem.calendar(*cutter), &problem.calendar(*folder)});
    return open.endsAt(std::min(least, open.total())) - problem.begin();
}

} // namespace lapwright::schedule
