#include "schedule/construct.h"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>

namespace lapwright::schedule {

namespace {

std::vector<std::size_t> sortedBy(const Problem& problem, const std::vector<std::int64_t>& key)
{
    std::vector<std::size_t> order = arrivalOrder(problem);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t left, std::size_t right) { return key[left] < key[right]; });
    return order;
}

/// For each cut task the least key of the lots it feeds.
void passToCutting(const Problem& problem, std::vector<std::int64_t>& key)
{
    for (std::size_t task = 0; task < key.size(); ++task)
        if (problem.tasks()[task].stage == Stage::Cut && !problem.suppliesOf(task).empty()) {
            key[task] = std::numeric_limits<std::int64_t>::max();
            for (const std::size_t link : problem.suppliesOf(task))
                key[task] = std::min(key[task], key[problem.supplies()[link].lot]);
        }
}

/// The end of each machine's line so far.
struct LineEnd {
    std::int64_t at = 0;
    Timing::Standing standing;
};

class Line {
public:
    Line(Timing& timing, Stage stage, Times* cut) : timing_(timing), stage_(stage), cut_(cut)
    {
        const Problem& problem = timing.problem();
        sequences_.resize(problem.machines().size());
        for (std::size_t machine = 0; machine < sequences_.size(); ++machine)
            ends_.push_back(
                {problem.calendar(machine).workedBy(problem.machines()[machine].freeFrom).inSeconds(),
                 timing.standing(machine)});
    }

    void take(std::size_t task)
    {
        const Problem& problem = timing_.problem();
        std::optional<Moment> best;
        std::size_t chosen = 0;
        const auto& ways = timing_.ways(task);
        for (std::size_t index = 0; index < ways.size(); ++index) {
            LineEnd end = ends_[ways[index].machine];
            append(end, task, index);
            const Moment done = problem.calendar(ways[index].machine).endsAt(Duration::seconds(end.at));
            if (!best || done < *best) {
                best = done;
                chosen = index;
            }
        }
        append(ends_[ways[chosen].machine], task, chosen);
        sequences_[ways[chosen].machine].push_back(static_cast<std::uint32_t>(task));
    }

    [[nodiscard]] const Sequences& sequences() const { return sequences_; }

private:
    void append(LineEnd& end, std::size_t task, std::size_t index) const
    {
        const Timing::WayNumbers& way = timing_.ways(task)[index];
        const std::int64_t setup = Timing::makeReady(end.standing, way);
        std::int64_t begin = std::max(end.at + setup, way.earliest);
        if (stage_ == Stage::Fold)
            begin = std::max(begin, cut_->metal[task][index]);
        end.at = begin + way.work;
    }

    Timing& timing_;
    Stage stage_;
    Times* cut_;
    std::vector<LineEnd> ends_;
    Sequences sequences_;
};

/// The place in a line at which a pinned task may keep its moment: before the first task that is pinned
/// later, or that would not leave it the time to be made ready. One pinned only behind another: right behind
/// that.
std::size_t placeFor(const Timing& timing, const Times& times, std::size_t task,
                     const Timing::WayNumbers& way, const std::vector<std::uint32_t>& line)
{
    const Pin& pin = timing.problem().pins()[*timing.problem().pinOf(task)];
    if (way.pinned < 0) {
        const auto before = std::find(line.begin(), line.end(), pin.after.value_or(task));
        return static_cast<std::size_t>(before - line.begin()) + (before == line.end() ? 0 : 1);
    }
    std::size_t at = 0;
    for (; at < line.size(); ++at) {
        const std::int64_t pinned = timing.way(line[at], way.machine).pinned;
        if (pinned >= 0 ? pinned > way.pinned : times.end[line[at]] + way.fit + way.set > way.pinned)
            break;
    }
    return at;
}

/// Puts pinned tasks, the earliest first, into lines that hold the others.
void placePinned(Timing& timing, const std::vector<std::size_t>& pinned, Sequences& sequences)
{
    for (const std::size_t task : pinned) {
        const Times times = timing.time(sequences);
        std::optional<Score> best;
        std::pair<std::size_t, std::size_t> place;
        for (const Timing::WayNumbers& way : timing.ways(task)) {
            auto& line = sequences[way.machine];
            const std::size_t at = placeFor(timing, times, task, way, line);
            line.insert(line.begin() + static_cast<std::ptrdiff_t>(at), static_cast<std::uint32_t>(task));
            const Score score = timing.time(sequences).score;
            if (!best || score < *best) {
                best = score;
                place = {way.machine, at};
            }
            line.erase(line.begin() + static_cast<std::ptrdiff_t>(at));
        }
        auto& line = sequences[place.first];
        line.insert(line.begin() + static_cast<std::ptrdiff_t>(place.second),
                    static_cast<std::uint32_t>(task));
    }
}

} // namespace

bool standsByPin(const Problem& problem, std::size_t task)
{
    const auto pin = problem.pinOf(task);
    return pin && (problem.pins()[*pin].start || problem.pins()[*pin].after);
}

void addPinned(Timing& timing, Stage stage, Sequences& sequences)
{
    const Problem& problem = timing.problem();
    std::vector<std::size_t> pinned;
    for (std::size_t task = 0; task < problem.tasks().size(); ++task)
        if (problem.tasks()[task].stage == stage && standsByPin(problem, task))
            pinned.push_back(task);
    // Moments first, by time; then what only has to come behind another.
    std::stable_sort(pinned.begin(), pinned.end(), [&](std::size_t left, std::size_t right) {
        const auto rank = [&](std::size_t task) {
            const Timing::WayNumbers& way = timing.ways(task).front();
            return std::pair(way.pinned < 0, way.pinned);
        };
        return rank(left) < rank(right);
    });
    placePinned(timing, pinned, sequences);
}

Sequences inOrder(Timing& timing, const std::vector<std::size_t>& order)
{
    const Problem& problem = timing.problem();
    Sequences sequences(problem.machines().size());
    Times cut;
    for (const Stage stage : {Stage::Cut, Stage::Fold}) {
        Line line(timing, stage, &cut);
        for (const std::size_t task : order)
            if (problem.tasks()[task].stage == stage && !standsByPin(problem, task))
                line.take(task);
        for (std::size_t machine = 0; machine < sequences.size(); ++machine)
            if (problem.machines()[machine].stage == stage)
                sequences[machine] = line.sequences()[machine];
        addPinned(timing, stage, sequences);
        if (stage == Stage::Cut)
            cut = timing.time(sequences);
    }
    return sequences;
}

std::vector<std::size_t> arrivalOrder(const Problem& problem)
{
    std::vector<std::size_t> order(problem.tasks().size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    return order;
}

std::vector<std::size_t> shortestOrder(const Problem& problem)
{
    std::vector<std::int64_t> key;
    for (const Task& task : problem.tasks())
        key.push_back(leastWork(task).inSeconds());
    return sortedBy(problem, key);
}

std::vector<std::size_t> dueOrder(const Problem& problem)
{
    std::vector<std::int64_t> key;
    for (const Task& task : problem.tasks()) {
        constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max() / 4;
        std::int64_t due = never;
        if (task.delivery && problem.deliveries()[*task.delivery].due)
            due = problem.deliveries()[*task.delivery].due->sinceEpoch().inSeconds() * 2'000 -
                  problem.deliveries()[*task.delivery].weight;
        key.push_back(due);
    }
    passToCutting(problem, key);
    return sortedBy(problem, key);
}

std::vector<std::size_t> twoStageOrder(const Problem& problem)
{
    constexpr std::int64_t second = 1'000'000'000'000;
    std::vector<std::int64_t> cutting(problem.tasks().size(), 0), key(problem.tasks().size(), 0);
    for (const Supply& supply : problem.supplies())
        cutting[supply.lot] += leastWork(problem.tasks()[supply.cut]).inSeconds();
    for (std::size_t task = 0; task < key.size(); ++task) {
        const std::int64_t folding = leastWork(problem.tasks()[task]).inSeconds();
        key[task] = cutting[task] < folding ? cutting[task] : second - folding;
    }
    passToCutting(problem, key);
    return sortedBy(problem, key);
}

std::vector<std::size_t> gathered(const Problem& problem, const std::vector<std::size_t>& order)
{
    std::map<std::string, std::int64_t> fittings, settings;
    std::vector<std::int64_t> key(problem.tasks().size(), 0);
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        const Readiness& ready = problem.tasks()[order[rank]].ways.front().ready;
        const auto first = static_cast<std::int64_t>(rank);
        const std::int64_t fitting = fittings.try_emplace(ready.fitting, first).first->second;
        const std::int64_t setting =
            settings.try_emplace(ready.fitting + "\n" + ready.setting, first).first->second;
        key[order[rank]] = fitting * static_cast<std::int64_t>(order.size()) + setting;
    }
    std::vector<std::size_t> result = order;
    std::stable_sort(result.begin(), result.end(),
                     [&](std::size_t left, std::size_t right) { return key[left] < key[right]; });
    return result;
}

Setups setupsOf(const Timing& timing, const Sequences& sequences)
{
    Setups setups;
    for (std::size_t machine = 0; machine < sequences.size(); ++machine) {
        Timing::Standing standing = timing.standing(machine);
        for (const std::uint32_t task : sequences[machine]) {
            const Timing::Standing before = standing;
            setups.time += Duration::seconds(Timing::makeReady(standing, timing.way(task, machine)));
            setups.fittings += standing.fitting != before.fitting ? 1 : 0;
            setups.settings += standing.setting != before.setting ? 1 : 0;
        }
    }
    return setups;
}

} // namespace lapwright::schedule
