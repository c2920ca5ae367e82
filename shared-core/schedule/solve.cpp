#include "schedule/solve.h"

#include "schedule/bound.h"
#include "schedule/checker.h"
#include "schedule/construct.h"
#include "schedule/dispatch.h"
#include "schedule/exact.h"
#include "schedule/johnson.h"
#include "schedule/late.h"
#include "schedule/search.h"
#include "schedule/watch.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

std::int64_t lateDeliveries(const Problem& problem, const Times& times)
{
    std::vector<bool> late(problem.deliveries().size(), false);
    for (std::size_t task = 0; task < problem.tasks().size(); ++task)
        if (const auto delivery = problem.tasks()[task].delivery)
            if (const auto due = problem.deliveries()[*delivery].due)
                late[*delivery] = late[*delivery] || times.wallEnd[task] > due->sinceEpoch().inSeconds();
    return std::count(late.begin(), late.end(), true);
}

Reference referenceOf(Timing& timing, const Sequences& sequences)
{
    const Times times = timing.time(sequences);
    return {times.score, setupsOf(timing, sequences), lateDeliveries(timing.problem(), times)};
}

/// Blocks with their moments, machine after machine.
std::vector<Block> blocksOf(const Timing& timing, const Sequences& sequences, const Times& times)
{
    std::vector<Block> blocks;
    for (std::size_t machine = 0; machine < sequences.size(); ++machine) {
        const Calendar& calendar = timing.problem().calendar(machine);
        Timing::Standing standing = timing.standing(machine);
        for (const std::uint32_t task : sequences[machine]) {
            const Timing::Standing before = standing;
            const std::int64_t setup = Timing::makeReady(standing, timing.way(task, machine));
            Block block;
            block.task = task;
            block.machine = machine;
            block.fits = standing.fitting != before.fitting;
            block.sets = standing.setting != before.setting;
            block.start = calendar.beginsAt(Duration::seconds(times.begin[task]));
            block.setupFrom =
                setup == 0 ? block.start : calendar.beginsAt(Duration::seconds(times.begin[task] - setup));
            block.end = std::max(block.start, calendar.endsAt(Duration::seconds(times.end[task])));
            blocks.push_back(block);
        }
    }
    return blocks;
}

/// Pinned starts that others push back, each named with where it stands now.
void nameMissedPins(const Problem& problem, Schedule& schedule)
{
    schedule.findings = problem.refusedPins();
    for (const Block& block : schedule.blocks) {
        const auto index = problem.pinOf(block.task);
        if (!index)
            continue;
        const Pin& pin = problem.pins()[*index];
        if (pin.start && block.start != *pin.start)
            schedule.findings.push_back(
                {rules::Weight::Blocks,
                 "schedule.pin.missed",
                 problem.tasks()[block.task].name,
                 {"its pinned start {start} cannot be kept together with the others; it begins {late}",
                  {{"start", inWords(*pin.start)}, {"late", inWords(block.start)}}},
                 {"pin it later, or free what stands before it", {}},
                 std::nullopt});
        if (!pin.after)
            continue;
        const bool follows =
            std::any_of(schedule.blocks.begin(), schedule.blocks.end(), [&](const Block& other) {
                return other.task == *pin.after && other.machine == block.machine &&
                       other.start < block.start;
            });
        if (!follows)
            schedule.findings.push_back(
                {rules::Weight::Blocks,
                 "schedule.pin.order",
                 problem.tasks()[block.task].name,
                 {"it cannot come after {other} as pinned", {{"other", problem.tasks()[*pin.after].name}}},
                 {"take one of the pins away", {}},
                 std::nullopt});
    }
}

Score leastOf(const Bound& bound)
{
    return {Duration(), bound.weightedLateness, bound.makespan, bound.makingReady};
}

class Solver {
public:
    Solver(const Problem& problem, const Settings& settings, const GoOn& goOn)
        : problem_(problem), settings_(settings), timing_(problem), bound_(boundOf(problem, boundWork_)),
          watch_(settings, goOn, bound_)
    {
    }

    Schedule solve()
    {
        Schedule schedule;
        const Sequences arrival = inOrder(timing_, arrivalOrder(problem_));
        const Sequences shortest = inOrder(timing_, shortestOrder(problem_));
        schedule.firstCome = referenceOf(timing_, arrival);
        schedule.shortest = referenceOf(timing_, shortest);
        best_ = {arrival, schedule.firstCome.score};
        offer(shortest, "search");
        startFromRules();
        improve(schedule);
        schedule.bound = bound_;
        schedule.method = method_;
        writeOut(schedule);
        return schedule;
    }

private:
    void offer(const Sequences& sequences, const char* method)
    {
        const Score score = timing_.time(sequences).score;
        if (!(score < best_.score))
            return;
        best_ = {sequences, score};
        method_ = method;
    }

    void startFromRules()
    {
        if (const auto johnson = johnsonSchedule(problem_)) {
            offer(*johnson, "Johnson's rule");
            const Times times = timing_.time(*johnson);
            byJohnson_ = times.score == best_.score && times.score.weightedLateness == 0;
            if (byJohnson_) {
                method_ = "Johnson's rule";
                bound_.makespan = std::max(bound_.makespan, times.score.makespan);
            }
        }
        // Choosing the next task looks at all that are left: too much for very many.
        constexpr std::size_t mostDispatched = 2'000;
        for (const auto& order : {dueOrder(problem_), twoStageOrder(problem_)}) {
            offer(inOrder(timing_, order), "search");
            offer(inOrder(timing_, gathered(problem_, order)), "search");
            if (problem_.tasks().size() > mostDispatched)
                continue;
            for (const std::int64_t cutting : {0, 5, 50, 5'000})
                for (const std::int64_t folding : {0, 5, 50, 5'000})
                    offer(dispatched(timing_, order, {cutting, folding}), "search");
        }
    }

    [[nodiscard]] bool atBound() const { return best_.score == leastOf(bound_); }

    [[nodiscard]] bool fewTasks() const
    {
        std::size_t cuts = 0;
        for (const Task& task : problem_.tasks())
            cuts += task.stage == Stage::Cut ? 1 : 0;
        return cuts <= mostExactTasks && problem_.tasks().size() - cuts <= mostExactTasks;
    }

    void improve(Schedule& schedule)
    {
        bool proven = byJohnson_ || atBound() || problem_.tasks().empty();
        if (!proven && fewTasks())
            proven = tryEveryOrder();
        if (!proven && !watch_.ending()) {
            watch_.enter("search", best_.score);
            Candidate found = searched(timing_, best_, settings_.seed, watch_, leastOf(bound_));
            if (found.score < best_.score) {
                best_ = std::move(found);
                method_ = "search";
            }
            proven = atBound();
        }
        schedule.proof = proven ? Proof::ProvenBest : Proof::Gap;
        schedule.ending = proven ? Ending::Proven : watch_.ending().value_or(Ending::NothingBetterFound);
        schedule.work = watch_.work();
    }

    bool tryEveryOrder()
    {
        watch_.enter("every order", best_.score);
        ExactAnswer answer = everyOrder(timing_, best_, watch_.left() / 2, watch_);
        best_ = std::move(answer.best);
        if (!answer.proven)
            return false;
        method_ = "every order tried";
        bound_.weightedLateness = best_.score.weightedLateness;
        return true;
    }

    void writeOut(Schedule& schedule)
    {
        const Times times = timing_.time(best_.sequences);
        schedule.blocks = blocksOf(timing_, best_.sequences, times);
        schedule.score = times.score;
        schedule.setups = setupsOf(timing_, best_.sequences);
        schedule.lateDeliveries = lateDeliveries(problem_, times);
        schedule.late = whyLate(problem_, schedule.blocks);
        nameMissedPins(problem_, schedule);
        schedule.feasibility = check(problem_, schedule).feasibility;
    }

    const Problem& problem_;
    const Settings& settings_;
    Timing timing_;
    std::int64_t boundWork_ = 0;
    Bound bound_;
    Watch watch_;
    Candidate best_;
    std::string method_ = "first come, first served";
    bool byJohnson_ = false;
};

} // namespace

Schedule solve(const Problem& problem, const Settings& settings, const GoOn& goOn)
{
    return Solver(problem, settings, goOn).solve();
}

} // namespace lapwright::schedule
