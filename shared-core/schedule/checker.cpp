#include "schedule/checker.h"

#include <algorithm>
#include <map>

namespace lapwright::schedule {

namespace {

class Inspection {
public:
    Inspection(const Problem& problem, const Schedule& schedule) : problem_(problem), schedule_(schedule) {}

    Verdict run()
    {
        if (!everyTaskOnce() || !machinesAble())
            return std::move(verdict_);
        for (std::size_t machine = 0; machine < problem_.machines().size(); ++machine)
            walk(machine);
        for (const Block& block : schedule_.blocks)
            if (problem_.tasks()[block.task].stage == Stage::Fold)
                blanksThere(block);
        pinsKept();
        scoreRight();
        return std::move(verdict_);
    }

private:
    void fail(bool& flag, const std::string& fault)
    {
        flag = false;
        verdict_.faults.push_back(fault);
    }
    [[nodiscard]] const Task& taskOf(const Block& block) const { return problem_.tasks()[block.task]; }
    [[nodiscard]] const Way& wayOf(const Block& block) const
    {
        for (const Way& way : taskOf(block).ways)
            if (way.machine == block.machine)
                return way;
        return taskOf(block).ways.front();
    }

    /// Seconds of the machine's hours within [from, to): shift by shift.
    [[nodiscard]] std::int64_t open(std::size_t machine, Moment from, Moment to) const
    {
        std::int64_t sum = 0;
        for (const Interval& shift : problem_.calendar(machine).worked()) {
            const Moment first = std::max(from, shift.from), last = std::min(to, shift.to);
            if (first < last)
                sum += (last - first).inSeconds();
        }
        return sum;
    }
    [[nodiscard]] bool inside(std::size_t machine, Moment moment, bool asEnd) const
    {
        for (const Interval& shift : problem_.calendar(machine).worked())
            if (asEnd ? shift.from < moment && moment <= shift.to : shift.from <= moment && moment < shift.to)
                return true;
        return false;
    }

    bool everyTaskOnce()
    {
        std::vector<int> seen(problem_.tasks().size(), 0);
        for (const Block& block : schedule_.blocks) {
            if (block.task >= seen.size() || block.machine >= problem_.machines().size()) {
                fail(verdict_.feasibility.everyTaskOnce, "a block of no task or machine");
                return false;
            }
            ++seen[block.task];
        }
        for (std::size_t task = 0; task < seen.size(); ++task)
            if (seen[task] != 1)
                fail(verdict_.feasibility.everyTaskOnce,
                     problem_.tasks()[task].name + " stands " + std::to_string(seen[task]) + " times");
        return verdict_.feasibility.everyTaskOnce;
    }

    bool machinesAble()
    {
        for (const Block& block : schedule_.blocks)
            if (wayOf(block).machine != block.machine)
                fail(verdict_.feasibility.machinesAble,
                     taskOf(block).name + " on " + problem_.machines()[block.machine].name);
        return verdict_.feasibility.machinesAble;
    }

    /// One machine from its first block to its last.
    void walk(std::size_t machine)
    {
        std::vector<Block> line;
        for (const Block& block : schedule_.blocks)
            if (block.machine == machine)
                line.push_back(block);
        std::stable_sort(line.begin(), line.end(), [](const Block& left, const Block& right) {
            return left.setupFrom != right.setupFrom ? left.setupFrom < right.setupFrom
                                                     : left.end < right.end;
        });
        Readiness standing = problem_.machines()[machine].standing;
        Moment free = std::max(problem_.begin(), problem_.machines()[machine].freeFrom);
        for (const Block& block : line) {
            const std::string& name = taskOf(block).name;
            const bool apart = open(machine, block.setupFrom, free) == 0;
            if (!apart || block.start < block.setupFrom || block.end < block.start)
                fail(verdict_.feasibility.oneAtATime, name + " begins before its machine is free");
            const std::int64_t work = secondsOf(block, taskOf(block).units);
            if (open(machine, block.start, block.end) != work ||
                (work > 0 && (!inside(machine, block.start, false) || !inside(machine, block.end, true))))
                fail(verdict_.feasibility.inHours, name + " does not take its time within the hours");
            makeReady(block, standing);
            if (block.start < taskOf(block).release)
                fail(verdict_.feasibility.releasesKept, name + " begins before it may");
            free = std::max(free, block.end);
        }
    }

    void makeReady(const Block& block, Readiness& standing)
    {
        const Way& way = wayOf(block);
        const bool fits = !way.ready.fitting.empty() && way.ready.fitting != standing.fitting;
        const bool sets = !way.ready.setting.empty() && way.ready.setting != standing.setting;
        const std::int64_t wanted = (fits ? way.fit.inSeconds() : 0) + (sets ? way.set.inSeconds() : 0);
        if (fits)
            standing.fitting = way.ready.fitting;
        if (sets)
            standing.setting = way.ready.setting;
        counted_.fittings += fits ? 1 : 0;
        counted_.settings += sets ? 1 : 0;
        counted_.time += Duration::seconds(wanted);
        if (block.fits != fits || block.sets != sets ||
            open(block.machine, block.setupFrom, block.start) != wanted)
            fail(verdict_.feasibility.madeReady,
                 taskOf(block).name + " is not made ready in its " + std::to_string(wanted) + " s");
    }

    [[nodiscard]] std::int64_t secondsOf(const Block& block, std::int64_t units) const
    {
        const std::int64_t milliseconds = units * wayOf(block).millisecondsEach;
        return milliseconds / 1'000 + (milliseconds % 1'000 != 0 ? 1 : 0);
    }

    /// The moment at which the block's machine has worked on it for so long.
    [[nodiscard]] Moment workedFor(const Block& block, std::int64_t seconds) const
    {
        for (const Interval& shift : problem_.calendar(block.machine).worked()) {
            if (shift.to <= block.start)
                continue;
            const Moment from = std::max(shift.from, block.start);
            if ((shift.to - from).inSeconds() >= seconds)
                return from + Duration::seconds(seconds);
            seconds -= (shift.to - from).inSeconds();
        }
        return block.end;
    }

    /// Pieces come in moves; each move is there before the first piece it is needed for is begun.
    void blanksThere(const Block& lot)
    {
        std::multimap<Moment, std::int64_t> moves;
        std::int64_t supplied = 0;
        for (const Supply& supply : problem_.supplies()) {
            if (supply.lot != lot.task)
                continue;
            supplied += supply.pieces;
            addMoves(supply, moves);
        }
        std::int64_t folded = taskOf(lot).units - supplied;
        for (const auto& [at, pieces] : moves) {
            // Thousandths of a second, so that nothing is rounded here.
            const std::int64_t until = folded * wayOf(lot).millisecondsEach;
            if (open(lot.machine, lot.start, at) * 1'000 > until) {
                fail(verdict_.feasibility.blanksThere, taskOf(lot).name + " waits for blanks");
                return;
            }
            folded += pieces;
        }
    }

    void addMoves(const Supply& supply, std::multimap<Moment, std::int64_t>& moves) const
    {
        for (const Block& cut : schedule_.blocks) {
            if (cut.task != supply.cut)
                continue;
            const std::int64_t units = taskOf(cut).units;
            std::int64_t step = problem_.transferPieces().value_or(supply.pieces);
            while (step * mostTransfers < supply.pieces)
                ++step;
            for (std::int64_t arrived = 0; arrived < supply.pieces;) {
                const std::int64_t move = std::min(step, supply.pieces - arrived);
                arrived += move;
                std::int64_t unit = arrived == supply.pieces ? units : 0;
                while (unit < units && supply.pieces * unit < arrived * units)
                    ++unit;
                moves.emplace(unit == units ? cut.end : workedFor(cut, secondsOf(cut, unit)), move);
            }
        }
    }

    void pinsKept()
    {
        for (const Pin& pin : problem_.pins()) {
            const Block& block = blockOf(pin.task);
            const bool machine = !pin.machine || *pin.machine == block.machine;
            const bool start = !pin.start || *pin.start == block.start;
            const bool order = !pin.after || (blockOf(*pin.after).machine == block.machine &&
                                              blockOf(*pin.after).end <= block.start);
            if (!machine || !start || !order)
                fail(verdict_.feasibility.pinsKept, taskOf(block).name + " is not where it is pinned");
        }
    }

    [[nodiscard]] const Block& blockOf(std::size_t task) const
    {
        return *std::find_if(schedule_.blocks.begin(), schedule_.blocks.end(),
                             [task](const Block& block) { return block.task == task; });
    }

    void scoreRight()
    {
        Moment last = problem_.begin();
        std::vector<Moment> done(problem_.deliveries().size(), problem_.begin());
        for (const Block& block : schedule_.blocks) {
            last = std::max(last, block.end);
            if (const auto delivery = taskOf(block).delivery)
                done[*delivery] = std::max(done[*delivery], block.end);
        }
        std::int64_t lateness = 0, late = 0;
        for (std::size_t index = 0; index < done.size(); ++index) {
            const Delivery& delivery = problem_.deliveries()[index];
            if (!delivery.due || done[index] <= *delivery.due)
                continue;
            lateness += delivery.weight * (done[index] - *delivery.due).inSeconds();
            ++late;
        }
        const Score& said = schedule_.score;
        if (said.weightedLateness != lateness || said.makespan != last - problem_.begin() ||
            said.makingReady != counted_.time || !(schedule_.setups == counted_) ||
            schedule_.lateDeliveries != late)
            fail(verdict_.feasibility.scoreRight,
                 "lateness, makespan or setups are not what the blocks give");
        if (schedule_.bound.weightedLateness > lateness ||
            schedule_.bound.makespan > last - problem_.begin() || schedule_.bound.makingReady > counted_.time)
            fail(verdict_.feasibility.boundHolds, "a bound is above what the blocks give");
    }

    const Problem& problem_;
    const Schedule& schedule_;
    Verdict verdict_;
    Setups counted_;
};

} // namespace

Verdict check(const Problem& problem, const Schedule& schedule)
{
    return Inspection(problem, schedule).run();
}

} // namespace lapwright::schedule
