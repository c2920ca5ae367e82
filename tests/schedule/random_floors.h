#pragma once

// Small random scheduling problems, and every order of their tasks tried second by second: written apart from
// the library, which it checks. A machine's hours are the list of the seconds it works.
#include "schedule/problem.h"
#include "schedule/schedule.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <random>

namespace lapwright::schedule {

struct RandomFloor {
    std::size_t cutters = 1;
    std::size_t folders = 1;
    std::size_t cuts = 3;
    std::size_t lots = 3;
    bool setups = true;
    bool shortShifts = true;
    bool transfer = true;
    bool due = true;
    bool releases = false;
};

inline Moment monday()
{
    return momentOf({2026, 11, 30}, Duration());
}

inline Hours shortHours(std::mt19937& random, bool shortShifts)
{
    Hours hours;
    for (auto& day : hours.week) {
        if (!shortShifts) {
            day = {{Duration(), Duration::days(1)}};
            continue;
        }
        const auto first = Duration::seconds(static_cast<std::int64_t>(random() % 5));
        const auto pause = first + Duration::seconds(static_cast<std::int64_t>(2 + random() % 6));
        const auto again = pause + Duration::seconds(static_cast<std::int64_t>(1 + random() % 3));
        day = {{first, pause},
               {again, again + Duration::seconds(static_cast<std::int64_t>(2 + random() % 9))}};
    }
    return hours;
}

inline Way randomWay(std::mt19937& random, std::size_t machine, bool setups)
{
    Way way;
    way.machine = machine;
    way.millisecondsEach = static_cast<std::int64_t>(300 + random() % 2'500);
    if (setups) {
        way.ready = {std::string(1, static_cast<char>('a' + random() % 2)),
                     std::string(1, static_cast<char>('p' + random() % 3))};
        way.fit = Duration::seconds(static_cast<std::int64_t>(1 + random() % 3));
        way.set = Duration::seconds(static_cast<std::int64_t>(random() % 3));
    }
    return way;
}

inline ProblemBuilder randomProblem(std::mt19937& random, const RandomFloor& floor)
{
    ProblemBuilder builder(monday());
    std::vector<std::size_t> cutters, folders, cuts;
    for (std::size_t index = 0; index < floor.cutters + floor.folders; ++index) {
        const bool cut = index < floor.cutters;
        const std::string name = (cut ? "cutter " : "folder ") + std::to_string(index);
        const Readiness standing = floor.setups && random() % 2 == 0 ? Readiness{"a", "p"} : Readiness();
        (cut ? cutters : folders)
            .push_back(builder.machine({name,
                                        name,
                                        cut ? Stage::Cut : Stage::Fold,
                                        shortHours(random, floor.shortShifts),
                                        standing,
                                        {}}));
    }
    const auto waysOn = [&](const std::vector<std::size_t>& machines) {
        std::vector<Way> ways;
        for (const std::size_t machine : machines)
            if (random() % 4 != 0)
                ways.push_back(randomWay(random, machine, floor.setups));
        if (ways.empty())
            ways.push_back(randomWay(random, machines[random() % machines.size()], floor.setups));
        return ways;
    };
    if (floor.transfer)
        builder.transferPieces(static_cast<std::int64_t>(1 + random() % 3));
    for (std::size_t cut = 0; cut < floor.cuts; ++cut)
        cuts.push_back(
            builder.task({"cut " + std::to_string(cut),
                          "cut " + std::to_string(cut),
                          Stage::Cut,
                          static_cast<std::int64_t>(1 + random() % 3),
                          waysOn(cutters),
                          {},
                          floor.releases && random() % 3 == 0
                              ? monday() + Duration::seconds(static_cast<std::int64_t>(random() % 12))
                              : Moment()}));
    for (std::size_t lot = 0; lot < floor.lots; ++lot) {
        Delivery delivery{"order " + std::to_string(lot), "order " + std::to_string(lot), std::nullopt,
                          static_cast<std::int64_t>(1 + random() % 3)};
        if (floor.due)
            delivery.due = monday() + Duration::seconds(static_cast<std::int64_t>(random() % 30));
        const std::size_t owner = builder.delivery(delivery);
        const auto units = static_cast<std::int64_t>(1 + random() % 5);
        const std::size_t task = builder.task({"lot " + std::to_string(lot), "lot " + std::to_string(lot),
                                               Stage::Fold, units, waysOn(folders), owner, Moment()});
        std::int64_t left = units;
        for (const std::size_t cut : cuts)
            if (left > 0 && random() % 2 == 0) {
                const auto pieces =
                    static_cast<std::int64_t>(1 + random() % static_cast<std::uint64_t>(left));
                builder.supply({cut, task, pieces});
                left -= pieces;
            }
    }
    return builder;
}

/// Second by second.
class EveryOrder {
public:
    explicit EveryOrder(const Problem& problem) : problem_(problem)
    {
        for (const Machine& machine : problem.machines()) {
            std::vector<std::int64_t> worked;
            for (std::int64_t day = 0; worked.size() < 400; ++day)
                for (const Shift& shift : machine.hours.week[static_cast<std::size_t>(day % 7)])
                    for (std::int64_t second = shift.from.inSeconds();
                         second < shift.to.inSeconds() && worked.size() < 400; ++second)
                        worked.push_back(day * 86'400 + second);
            seconds_.push_back(std::move(worked));
        }
        order_.resize(problem.machines().size());
        began_.assign(problem.tasks().size(), -1);
        machine_.assign(problem.tasks().size(), 0);
    }

    Score best()
    {
        place(0);
        return *best_;
    }

private:
    /// Puts task after task at every place of every machine it can go to.
    void place(std::size_t task)
    {
        if (task == problem_.tasks().size())
            return simulate();
        for (const Way& way : problem_.tasks()[task].ways) {
            auto& line = order_[way.machine];
            for (std::size_t at = 0; at <= line.size(); ++at) {
                line.insert(line.begin() + static_cast<std::ptrdiff_t>(at), task);
                place(task + 1);
                line.erase(line.begin() + static_cast<std::ptrdiff_t>(at));
            }
        }
    }

    [[nodiscard]] std::int64_t length(std::size_t task, std::size_t machine, std::int64_t units) const
    {
        for (const Way& way : problem_.tasks()[task].ways)
            if (way.machine == machine)
                return (units * way.millisecondsEach + 999) / 1'000;
        return -1;
    }

    /// The second on the wall at which the `count`-th worked second of a machine is over.
    [[nodiscard]] std::int64_t over(std::size_t machine, std::int64_t count) const
    {
        return seconds_[machine][static_cast<std::size_t>(count - 1)] + 1;
    }
    [[nodiscard]] std::int64_t workedBefore(std::size_t machine, std::int64_t wall) const
    {
        std::int64_t count = 0;
        while (seconds_[machine][static_cast<std::size_t>(count)] < wall)
            ++count;
        return count;
    }

    /// When each piece of a lot is there, in order, seconds on the wall; at hand: before everything.
    [[nodiscard]] std::vector<std::int64_t> piecesOf(std::size_t lot) const
    {
        std::vector<std::int64_t> there;
        for (const Supply& supply : problem_.supplies()) {
            if (supply.lot != lot)
                continue;
            const std::int64_t units = problem_.tasks()[supply.cut].units;
            const std::int64_t step = problem_.transferPieces().value_or(supply.pieces);
            for (std::int64_t piece = 0; piece < supply.pieces; ++piece) {
                const std::int64_t last = std::min((piece / step + 1) * step, supply.pieces);
                std::int64_t unit = 1;
                while (supply.pieces * unit / units < last)
                    ++unit;
                if (last == supply.pieces)
                    unit = units;
                there.push_back(over(machine_[supply.cut],
                                     began_[supply.cut] + length(supply.cut, machine_[supply.cut], unit)));
            }
        }
        there.resize(static_cast<std::size_t>(problem_.tasks()[lot].units), -1);
        std::sort(there.begin(), there.end());
        return there;
    }

    [[nodiscard]] bool hasPieces(std::size_t machine, const std::vector<std::int64_t>& there,
                                 std::int64_t begin, std::int64_t each) const
    {
        for (std::size_t piece = 0; piece < there.size(); ++piece)
            if (there[piece] >= 0 && begin * 1'000 + static_cast<std::int64_t>(piece) * each <
                                         workedBefore(machine, there[piece]) * 1'000)
                return false;
        return true;
    }

    void simulate()
    {
        std::int64_t last = 0, ready = 0;
        std::vector<std::int64_t> done(problem_.deliveries().size(), 0);
        for (const Stage stage : {Stage::Cut, Stage::Fold})
            for (std::size_t machine = 0; machine < order_.size(); ++machine) {
                if (problem_.machines()[machine].stage != stage)
                    continue;
                std::string fitting = problem_.machines()[machine].standing.fitting;
                std::string setting = problem_.machines()[machine].standing.setting;
                std::int64_t at = 0;
                for (const std::size_t task : order_[machine]) {
                    const Way* way = wayOn(problem_.tasks()[task], machine);
                    std::int64_t setup = way->ready.fitting.empty() || way->ready.fitting == fitting
                                             ? 0
                                             : way->fit.inSeconds();
                    setup += way->ready.setting.empty() || way->ready.setting == setting
                                 ? 0
                                 : way->set.inSeconds();
                    fitting = way->ready.fitting.empty() ? fitting : way->ready.fitting;
                    setting = way->ready.setting.empty() ? setting : way->ready.setting;
                    ready += setup;
                    at += setup;
                    at = std::max(
                        at, workedBefore(machine,
                                         std::max<std::int64_t>(
                                             0, (problem_.tasks()[task].release - monday()).inSeconds())));
                    if (stage == Stage::Fold) {
                        const std::vector<std::int64_t> there = piecesOf(task);
                        while (!hasPieces(machine, there, at, way->millisecondsEach))
                            ++at;
                    }
                    began_[task] = at;
                    machine_[task] = machine;
                    at += length(task, machine, problem_.tasks()[task].units);
                    last = std::max(last, over(machine, at));
                    if (const auto delivery = problem_.tasks()[task].delivery)
                        done[*delivery] = std::max(done[*delivery], over(machine, at));
                }
            }
        std::int64_t late = 0;
        for (std::size_t index = 0; index < done.size(); ++index)
            if (const auto due = problem_.deliveries()[index].due)
                late += problem_.deliveries()[index].weight *
                        std::max<std::int64_t>(0, done[index] - (*due - monday()).inSeconds());
        const Score score{Duration(), late, Duration::seconds(last), Duration::seconds(ready)};
        best_ = best_ ? std::min(*best_, score) : score;
    }

    const Problem& problem_;
    std::vector<std::vector<std::int64_t>> seconds_; ///< by machine: the seconds it works, from Monday on
    std::vector<std::vector<std::size_t>> order_;
    std::vector<std::int64_t> began_; ///< by task: worked seconds of its machine before it
    std::vector<std::size_t> machine_;
    std::optional<Score> best_;
};

} // namespace lapwright::schedule
