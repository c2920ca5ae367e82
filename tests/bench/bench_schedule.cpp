// Guards nothing by itself: prints how near schedules of 200 jobs in two stages come to their bounds, beside
// first come, first served and shortest processing time first, and how long they take. Every schedule is
// checked; a broken one ends the program with 1.
#include "schedule/checker.h"
#include "schedule/solve.h"

#include <chrono>
#include <cstdio>
#include <random>
#include <string>

using namespace lapwright::schedule;

namespace {

struct Case {
    const char* name;
    std::size_t jobs;
    std::size_t cutters;
    std::size_t folders;
    bool setups;
    int daysToDue; ///< due dates are spread over so many working days; 0: none
};

/// Invented orders: sheets of one of eight colours slit to one of twelve strip lists, folded with one of
/// thirty programs on one of two beam faces. The same case is the same problem every time.
Problem problemFor(const Case& wanted)
{
    std::mt19937 random(20261125);
    const auto below = [&](std::uint64_t count) { return static_cast<std::int64_t>(random() % count); };
    Hours hours;
    for (std::size_t day = 0; day < 5; ++day)
        hours.week[day] = {{Duration::hours(7), Duration::hours(12)},
                           {Duration::minutes(750), Duration::minutes(930)}};
    const Moment begin = momentOf({2026, 11, 30}, Duration::hours(7));
    ProblemBuilder builder(begin);
    builder.transferPieces(10);
    for (std::size_t machine = 0; machine < wanted.cutters + wanted.folders; ++machine) {
        const std::string name = std::to_string(machine);
        builder.machine({name, name, machine < wanted.cutters ? Stage::Cut : Stage::Fold, hours, {}, {}});
    }
    for (std::size_t job = 0; job < wanted.jobs; ++job) {
        const std::string name = std::to_string(job);
        Delivery delivery{name, name, std::nullopt, 1 + 4 * (below(5) / 4)};
        if (wanted.daysToDue > 0)
            delivery.due =
                begin + Duration::days(1 + below(static_cast<std::uint64_t>(wanted.daysToDue)) * 7 / 5);
        const std::size_t owner = builder.delivery(delivery);
        Task cut{"cut " + name, name, Stage::Cut, 1 + below(6), {}, {}, {}};
        Task lot{"lot " + name, name, Stage::Fold, cut.units * (2 + below(6)), {}, owner, {}};
        const Readiness slit{"rack " + std::to_string(below(8)), "strips " + std::to_string(below(12))};
        const Readiness fold{"face " + std::to_string(below(2)), "program " + std::to_string(below(30))};
        const std::int64_t sheet = 90'000 + below(120'000), piece = 25'000 + below(60'000);
        for (std::size_t machine = 0; machine < wanted.cutters; ++machine)
            cut.ways.push_back({machine, sheet, wanted.setups ? slit : Readiness(), Duration::minutes(8),
                                Duration::minutes(10)});
        for (std::size_t machine = 0; machine < wanted.folders; ++machine)
            lot.ways.push_back({wanted.cutters + machine, piece, wanted.setups ? fold : Readiness(),
                                Duration::minutes(5), Duration::minutes(2)});
        const std::int64_t pieces = lot.units;
        const std::size_t first = builder.task(std::move(cut)), second = builder.task(std::move(lot));
        builder.supply({first, second, pieces});
    }
    return builder.build().value();
}

double gap(Duration value, Duration bound)
{
    return 100.0 * static_cast<double>((value - bound).inSeconds()) /
           static_cast<double>(std::max<std::int64_t>(1, bound.inSeconds()));
}

void printLine(const char* what, const Score& score, const Setups& setups, std::int64_t late,
               const Bound& bound)
{
    std::printf(
        "  %-12s makespan %8.2f h (%+5.1f %% over the bound)  weighted lateness %10.1f h  late %3d  setups %4d, %6.1f h\n",
        what, static_cast<double>(score.makespan.inSeconds()) / 3'600.0, gap(score.makespan, bound.makespan),
        static_cast<double>(score.weightedLateness) / 3'600.0, static_cast<int>(late),
        static_cast<int>(setups.fittings + setups.settings),
        static_cast<double>(setups.time.inSeconds()) / 3'600.0);
}

} // namespace

int main()
{
    const Case cases[] = {
        {"200 jobs, one slitter, one folder, no setups, nothing due", 200, 1, 1, false, 0},
        {"200 jobs, one slitter, one folder, setups, nothing due", 200, 1, 1, true, 0},
        {"200 jobs, one slitter, two folders, setups, due in three weeks", 200, 1, 2, true, 15},
        {"200 jobs, two slitters, four folders, setups, due in two weeks", 200, 2, 4, true, 10},
        {"200 jobs, two slitters, three folders, setups, all too late", 200, 2, 3, true, 3}};
    bool sound = true;
    for (const Case& wanted : cases) {
        const Problem problem = problemFor(wanted);
        const auto start = std::chrono::steady_clock::now();
        const Schedule schedule = solve(problem, {});
        const double seconds =
            std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        std::printf("%s: %.2f s, %s, work %d\n", wanted.name, seconds, schedule.method.c_str(),
                    static_cast<int>(schedule.work));
        printLine("found", schedule.score, schedule.setups, schedule.lateDeliveries, schedule.bound);
        printLine("first come", schedule.firstCome.score, schedule.firstCome.setups,
                  schedule.firstCome.lateDeliveries, schedule.bound);
        printLine("shortest", schedule.shortest.score, schedule.shortest.setups,
                  schedule.shortest.lateDeliveries, schedule.bound);
        std::printf("  %-12s makespan %8.2f h %33s weighted lateness %10.1f h %25.1f h of setups\n", "bound",
                    static_cast<double>(schedule.bound.makespan.inSeconds()) / 3'600.0, "",
                    static_cast<double>(schedule.bound.weightedLateness) / 3'600.0,
                    static_cast<double>(schedule.bound.makingReady.inSeconds()) / 3'600.0);
        for (const std::string& fault : check(problem, schedule).faults) {
            std::printf("  BROKEN: %s\n", fault.c_str());
            sound = false;
        }
    }
    return sound ? 0 : 1;
}
