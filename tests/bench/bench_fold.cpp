// Guards nothing by itself: prints how long plans of 12-bend profiles take, how 1 000 random profiles and the
// growth per added bend run, and that of trying every sequence for 6 and 7 bends. A plan that the checker
// does not accept ends the program with 1. Processor time of one core.
#include "fold/blank.h"
#include "fold/check.h"
#include "fold/fold_cases.h"
#include "fold/search.h"

#include <algorithm>
#include <cstdio>
#include <ctime>

using namespace foldcases;

namespace {

double processorMilliseconds()
{
    return 1'000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

struct Run {
    double milliseconds = 0.0;
    bool planned = false;
    bool holds = true;
};

Run time(const trim::Profile& profile, const fold::Machine& machine, bool check)
{
    const metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    if (!flat)
        return {};
    fold::Settings settings;
    const double before = processorMilliseconds();
    const auto outcome =
        fold::planFold(profile, *flat, metal, metal.sheets[0], machine, Length::feet(4), settings);
    Run run{processorMilliseconds() - before, false, outcome.ok()};
    if (const auto* plan = std::get_if<fold::FoldPlan>(&*outcome)) {
        run.planned = true;
        if (check)
            run.holds = fold::checkPlan(profile, *flat, metal, metal.sheets[0], machine, *plan,
                                        Length::feet(4), settings)
                            ->problems.empty();
    }
    return run;
}

bool report(const char* name, std::vector<Run> runs)
{
    std::sort(runs.begin(), runs.end(),
              [](const Run& a, const Run& b) { return a.milliseconds < b.milliseconds; });
    double sum = 0.0;
    for (const Run& run : runs)
        sum += run.milliseconds;
    const auto planned = std::count_if(runs.begin(), runs.end(), [](const Run& run) { return run.planned; });
    const bool hold = std::all_of(runs.begin(), runs.end(), [](const Run& run) { return run.holds; });
    std::printf(
        "%-34s %5zu profiles, %5td planned, %5td refused: median %8.3f ms, worst %8.3f ms, sum %9.1f ms%s\n",
        name, runs.size(), planned, static_cast<std::ptrdiff_t>(runs.size()) - planned,
        runs[runs.size() / 2].milliseconds, runs.back().milliseconds, sum,
        hold ? "" : "  A PLAN DOES NOT HOLD");
    return hold;
}

/// Number of complete sequences, trying every bend, end and face in every order.
std::int64_t everySequence(fold::StepChecker& steps, fold::Made made)
{
    if (made + 1 == fold::Made{1} << steps.lineCount())
        return 1;
    std::int64_t count = 0;
    for (std::size_t line = 0; line < steps.lineCount(); ++line)
        for (const fold::End end : {fold::End::Start, fold::End::End})
            for (const trim::Side up : {trim::Side::Left, trim::Side::Right})
                if ((made >> line & 1U) == 0U && !steps.obstacle(made, line, {end, up}))
                    count += everySequence(steps, made | fold::Made{1} << line);
    return count;
}

void againstEverySequence(int bends)
{
    std::mt19937 random(5);
    const metal::Metal metal = steel();
    const fold::Machine folder = machine("long-folder-up");
    const trim::Profile profile = ribbed(random, bends);
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    const fold::Settings settings;
    const auto blank = fold::makeBlank(profile, *flat, metal, metal.sheets[0], folder, settings);
    fold::StepChecker steps(*blank, folder, 0, settings);
    const double before = processorMilliseconds();
    const std::int64_t count = everySequence(steps, 0);
    const double brute = processorMilliseconds() - before;
    std::printf("%d bends: every sequence %.1f ms (%lld sequences), search %.3f ms\n", bends, brute,
                static_cast<long long>(count), time(profile, folder, false).milliseconds);
}

/// Of each three one that any folder makes, one that some do, and one of which most run through themselves,
/// or close round the clamp.
trim::Profile mixed(std::mt19937& random, int number, int bends)
{
    return number % 3 == 0   ? ribbed(random, bends)
           : number % 3 == 1 ? stepped(random, bends)
                             : randomProfile(random, bends, bends);
}

} // namespace

int main()
{
    bool good = true;
    for (const std::string& id : machineIds()) {
        const fold::Machine folder = machine(id);
        std::mt19937 random(1);
        std::vector<Run> ribs, steps, turns, all;
        for (int i = 0; i < 100; ++i) {
            ribs.push_back(time(ribbed(random, 12), folder, i < 3));
            steps.push_back(time(stepped(random, 12), folder, i < 3));
            turns.push_back(time(randomProfile(random, 12, 12), folder, i < 3));
        }
        for (const auto* runs : {&ribs, &steps, &turns})
            all.insert(all.end(), runs->begin(), runs->end());
        good = report(("12 bends, ribs, " + id).c_str(), ribs) && good;
        good = report(("12 bends, steps, " + id).c_str(), steps) && good;
        good = report(("12 bends, random, " + id).c_str(), turns) && good;
        good = report(("12 bends, all, " + id).c_str(), all) && good;
    }
    std::mt19937 random(2);
    std::vector<Run> thousand;
    for (int i = 0; i < 1'000; ++i)
        thousand.push_back(time(mixed(random, i, 1 + static_cast<int>(random() % 12)),
                                machine(machineIds()[static_cast<std::size_t>(i) % machineIds().size()]),
                                false));
    good = report("1 000 distinct, 1 to 12 bends", thousand) && good;
    for (int bends = 2; bends <= 16; bends += 2) {
        std::vector<Run> runs;
        for (int i = 0; i < 20; ++i)
            runs.push_back(time(ribbed(random, bends), machine("long-folder-up"), false));
        good = report((std::to_string(bends) + " bends, ribs").c_str(), runs) && good;
    }
    againstEverySequence(6);
    againstEverySequence(7);
    return good ? 0 : 1;
}
