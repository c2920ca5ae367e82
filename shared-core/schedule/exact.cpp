#include "schedule/exact.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

/// Machines are filled one after the other, each from its first task to its last, so that every schedule of a
/// stage is met exactly once.
class Branching {
public:
    Branching(Timing& timing, Candidate start, std::int64_t mostPlaced, Watch& watch)
        : timing_(timing), problem_(timing.problem()), best_(std::move(start)), mostPlaced_(mostPlaced),
          watch_(watch), sequences_(problem_.machines().size()), placed_(problem_.tasks().size(), false)
    {
        for (std::size_t machine = 0; machine < problem_.machines().size(); ++machine)
            (problem_.machines()[machine].stage == Stage::Cut ? cutters_ : folders_).push_back(machine);
        for (std::size_t task = 0; task < problem_.tasks().size(); ++task)
            (problem_.tasks()[task].stage == Stage::Cut ? cuts_ : lots_).push_back(task);
    }

    ExactAnswer run()
    {
        fill(Stage::Cut, 0);
        return {std::move(best_), !stopped_};
    }

private:
    [[nodiscard]] const std::vector<std::size_t>& machinesOf(Stage stage) const
    {
        return stage == Stage::Cut ? cutters_ : folders_;
    }
    [[nodiscard]] const std::vector<std::size_t>& tasksOf(Stage stage) const
    {
        return stage == Stage::Cut ? cuts_ : lots_;
    }

    /// Goes on with the `at`-th machine of the stage: each task left next on it, or the next machine.
    void fill(Stage stage, std::size_t at)
    {
        if (stopped_)
            return;
        const auto& machines = machinesOf(stage);
        if (at == machines.size())
            return stageFilled(stage);
        const std::size_t machine = machines[at];
        for (const std::size_t task : tasksOf(stage)) {
            if (placed_[task] || wayOn(problem_.tasks()[task], machine) == nullptr)
                continue;
            placed_[task] = true;
            sequences_[machine].push_back(static_cast<std::uint32_t>(task));
            if (mayBeBetter(stage))
                fill(stage, at);
            sequences_[machine].pop_back();
            placed_[task] = false;
        }
        if (allGoElsewhere(stage, at + 1))
            fill(stage, at + 1);
    }

    /// Every task left has a way on a machine that is still to be filled.
    [[nodiscard]] bool allGoElsewhere(Stage stage, std::size_t from) const
    {
        const auto& machines = machinesOf(stage);
        const auto& tasks = tasksOf(stage);
        return std::all_of(tasks.begin(), tasks.end(), [&](std::size_t task) {
            return placed_[task] || std::any_of(machines.begin() + static_cast<std::ptrdiff_t>(from),
                                                machines.end(), [&](std::size_t machine) {
                                                    return wayOn(problem_.tasks()[task], machine) != nullptr;
                                                });
        });
    }

    void stageFilled(Stage stage)
    {
        if (stage == Stage::Cut)
            return fill(Stage::Fold, 0);
        const Score score = timing_.time(sequences_).score;
        if (score < best_.score)
            best_ = {sequences_, score};
    }

    /// What is placed, timed without the rest: pins missed, lateness, makespan and setups only grow when more
    /// is appended, and where all cutting is placed nothing that follows moves what stands.
    [[nodiscard]] bool mayBeBetter(Stage stage)
    {
        const std::int64_t before = timing_.placed();
        const Times times = timing_.time(sequences_);
        const std::int64_t placed = timing_.placed() - before + 1;
        placedHere_ += placed;
        if (watch_.over(placed, best_.score) || placedHere_ > mostPlaced_) {
            stopped_ = true;
            return false;
        }
        Score least = times.score;
        const auto& tasks = tasksOf(stage);
        std::int64_t last = (problem_.begin() + least.makespan).sinceEpoch().inSeconds();
        std::int64_t workLeft = 0;
        for (const std::size_t task : tasks)
            if (!placed_[task])
                workLeft += leastWork(problem_.tasks()[task]).inSeconds();
        if (machinesOf(stage).size() == 1 && workLeft > 0) {
            const std::size_t machine = machinesOf(stage).front();
            const std::int64_t end = times.end[sequences_[machine].back()];
            const Calendar& calendar = problem_.calendar(machine);
            last =
                std::max(last, calendar.endsAt(Duration::seconds(end + workLeft)).sinceEpoch().inSeconds());
        }
        least.makespan = Duration::seconds(last) - problem_.begin().sinceEpoch();
        return least < best_.score;
    }

    Timing& timing_;
    const Problem& problem_;
    Candidate best_;
    std::int64_t mostPlaced_;
    Watch& watch_;
    Sequences sequences_;
    std::vector<bool> placed_;
    std::vector<std::size_t> cutters_, folders_, cuts_, lots_;
    std::int64_t placedHere_ = 0;
    bool stopped_ = false;
};

} // namespace

ExactAnswer everyOrder(Timing& timing, Candidate start, std::int64_t mostPlaced, Watch& watch)
{
    return Branching(timing, std::move(start), mostPlaced, watch).run();
}

} // namespace lapwright::schedule
