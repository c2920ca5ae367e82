#include "schedule/search.h"

#include "schedule/moves.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

/// How many changes back a new one is compared with, after how many without a better best the search goes
/// back to it, and how many changes away from it it then begins. Tried on the problems of bench_schedule.
constexpr std::size_t memory = 60;
constexpr std::int64_t patience = 20'000;
constexpr int shakes = 6;

} // namespace

Candidate searched(Timing& timing, Candidate start, std::uint64_t seed, Watch& watch,
                   const std::optional<Score>& least)
{
    if (timing.problem().tasks().size() < 2)
        return start;
    Moves moves(timing, seed);
    Candidate best = start;
    Times standing = timing.time(start.sequences), trial;
    Sequences sequences = start.sequences, changed;
    std::vector<Score> history(memory, start.score);
    std::int64_t sinceBest = 0, counted = timing.placed();
    for (std::size_t step = 0;; ++step) {
        changed = sequences;
        const std::vector<std::size_t> machines = moves.change(changed, standing);
        const std::int64_t placed = timing.placed() - counted;
        counted = timing.placed();
        if (watch.over(placed + 1, best.score) || (least && best.score <= *least))
            return best;
        if (machines.empty())
            continue;
        trial = standing;
        timing.retime(changed, machines, trial);
        Score& past = history[step % memory];
        if (trial.score <= standing.score || trial.score <= past) {
            std::swap(sequences, changed);
            std::swap(standing, trial);
        }
        past = std::min(past, standing.score);
        ++sinceBest;
        if (standing.score < best.score) {
            best = {sequences, standing.score};
            sinceBest = 0;
        } else if (sinceBest > patience) {
            // Away from the best by a few changes, good or bad, and on from there.
            sequences = best.sequences;
            standing = timing.time(sequences);
            for (int shake = 0; shake < shakes; ++shake)
                timing.retime(sequences, moves.change(sequences, standing), standing);
            std::fill(history.begin(), history.end(), standing.score);
            sinceBest = 0;
        }
    }
}

} // namespace lapwright::schedule
