#include "schedule/capacity.h"

#include <algorithm>
#include <set>

namespace lapwright::schedule {

namespace {

/// Per lot the moments its pieces could be there, each supply on its fastest machine, and what is at hand.
struct Arrival {
    Moment at;
    std::int64_t pieces = 0;
};

std::vector<Arrival> arrivalsOf(const Problem& problem, std::size_t lot, const std::vector<Moment>& begins)
{
    std::vector<Arrival> arrivals;
    for (const std::size_t index : problem.suppliesOf(lot)) {
        const Supply& supply = problem.supplies()[index];
        const Task& cut = problem.tasks()[supply.cut];
        std::vector<Arrival> best;
        for (const Way& way : cut.ways) {
            const Calendar& calendar = problem.calendar(way.machine);
            const Moment from = std::max(begins[supply.cut], problem.machines()[way.machine].freeFrom);
            const std::vector<Transfer> transfers = transfersOf(problem, supply, way);
            const bool first = best.empty();
            best.resize(transfers.size());
            for (std::size_t move = 0; move < transfers.size(); ++move) {
                const Moment at = calendar.endsAt(calendar.workedBy(from) + transfers[move].offset);
                best[move].at = first ? at : std::min(best[move].at, at);
                best[move].pieces = transfers[move].arrived - (move == 0 ? 0 : transfers[move - 1].arrived);
            }
        }
        arrivals.insert(arrivals.end(), best.begin(), best.end());
    }
    std::sort(arrivals.begin(), arrivals.end(),
              [](const Arrival& left, const Arrival& right) { return left.at < right.at; });
    return arrivals;
}

/// When the way's work on the lot could begin, with nothing else on its machine.
Duration lotBegins(const Problem& problem, std::size_t lot, const Way& way,
                   const std::vector<Arrival>& arrivals)
{
    const Calendar& calendar = problem.calendar(way.machine);
    const Task& task = problem.tasks()[lot];
    Duration begin = calendar.workedBy(std::max(task.release, problem.machines()[way.machine].freeFrom));
    std::int64_t folded = task.units;
    for (const Arrival& arrival : arrivals)
        folded -= arrival.pieces;
    for (const Arrival& arrival : arrivals) {
        const Duration offset = Duration::seconds(folded * way.millisecondsEach / 1'000);
        begin = std::max(begin, calendar.workedBy(arrival.at) - offset);
        folded += arrival.pieces;
    }
    return begin;
}

struct Earliest {
    std::vector<Moment> begins;
    std::vector<Moment> ends;
};

Earliest earliestOf(const Problem& problem)
{
    Earliest earliest;
    earliest.begins.assign(problem.tasks().size(), problem.begin());
    earliest.ends = earliest.begins;
    for (const Stage stage : {Stage::Cut, Stage::Fold})
        for (std::size_t index = 0; index < problem.tasks().size(); ++index) {
            const Task& task = problem.tasks()[index];
            if (task.stage != stage)
                continue;
            const std::vector<Arrival> arrivals =
                stage == Stage::Cut ? std::vector<Arrival>() : arrivalsOf(problem, index, earliest.begins);
            bool first = true;
            for (const Way& way : task.ways) {
                const Calendar& calendar = problem.calendar(way.machine);
                const Duration begin = lotBegins(problem, index, way, arrivals);
                // The wall moment by which that much was worked: no later than the work could begin.
                const Moment from = std::max(problem.begin(), calendar.endsAt(begin));
                const Moment end = calendar.endsAt(begin + workOf(task, way));
                earliest.begins[index] = first ? from : std::min(earliest.begins[index], from);
                earliest.ends[index] = first ? end : std::min(earliest.ends[index], end);
                first = false;
            }
        }
    return earliest;
}

} // namespace

Capacity::Capacity(const Problem& problem, Stage stage) : begin_(problem.begin()), end_(problem.begin())
{
    std::set<std::size_t> used;
    for (const Task& task : problem.tasks())
        for (const Way& way : task.ways)
            if (task.stage == stage)
                used.insert(way.machine);
    for (const std::size_t machine : used) {
        const Calendar& calendar = problem.calendar(machine);
        machines_.push_back({&calendar, std::max(begin_, problem.machines()[machine].freeFrom)});
        end_ = std::max(end_, calendar.endsAt(calendar.total()));
    }
}

std::int64_t Capacity::workedBy(Moment moment) const
{
    std::int64_t sum = 0;
    for (const Open& open : machines_)
        if (moment > open.from)
            sum += (open.calendar->workedBy(moment) - open.calendar->workedBy(open.from)).inSeconds();
    return sum;
}

Moment Capacity::after(Moment from, std::int64_t seconds) const
{
    const std::int64_t wanted = workedBy(from) + seconds;
    std::int64_t low = from.sinceEpoch().inSeconds(), high = std::max(low, end_.sinceEpoch().inSeconds());
    while (low < high) {
        const std::int64_t middle = low + (high - low) / 2;
        if (workedBy(Moment::sinceEpoch(Duration::seconds(middle))) >= wanted)
            high = middle;
        else
            low = middle + 1;
    }
    return Moment::sinceEpoch(Duration::seconds(low));
}

std::vector<Moment> earliestBegins(const Problem& problem)
{
    return earliestOf(problem).begins;
}

std::vector<Moment> earliestEnds(const Problem& problem)
{
    return earliestOf(problem).ends;
}

} // namespace lapwright::schedule
