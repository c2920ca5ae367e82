#include "schedule/late.h"

#include "schedule/capacity.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

class Reasons {
public:
    Reasons(const Problem& problem, const std::vector<Block>& blocks)
        : problem_(problem), blocks_(blocks), alone_(earliestEnds(problem)), begins_(earliestBegins(problem)),
          blockOf_(problem.tasks().size(), 0), lines_(problem.machines().size())
    {
        for (std::size_t index = 0; index < blocks.size(); ++index) {
            blockOf_[blocks[index].task] = index;
            lines_[blocks[index].machine].push_back(index);
        }
        for (auto& line : lines_)
            std::stable_sort(line.begin(), line.end(), [&](std::size_t left, std::size_t right) {
                return blocks_[left].start < blocks_[right].start;
            });
    }

    std::vector<LateReason> all() const
    {
        std::vector<LateReason> reasons;
        for (const Block& block : blocks_) {
            const auto delivery = problem_.tasks()[block.task].delivery;
            if (!delivery || !problem_.deliveries()[*delivery].due)
                continue;
            const Moment due = *problem_.deliveries()[*delivery].due;
            if (block.end > due)
                reasons.push_back(reasonFor(block, due));
        }
        std::stable_sort(reasons.begin(), reasons.end(), [](const LateReason& left, const LateReason& right) {
            return left.late > right.late;
        });
        return reasons;
    }

private:
    [[nodiscard]] const std::string& nameOf(std::size_t task) const { return problem_.tasks()[task].name; }
    [[nodiscard]] bool isPinned(std::size_t task) const
    {
        const auto pin = problem_.pinOf(task);
        return pin && problem_.pins()[*pin].start;
    }

    [[nodiscard]] LateReason reasonFor(const Block& block, Moment due) const
    {
        LateReason reason;
        reason.lot = block.task;
        reason.late = block.end - due;
        if (alone_[block.task] > due) {
            reason.statement = notEnoughHours(block, due);
            return reason;
        }
        if (isPinned(block.task))
            return pinned(reason, block);
        // What held the lot: its machine, or the cut task that brought the last of what it waited for.
        const Block* held = waitsForItsMachine(block) ? &block : lastCut(block);
        reason.kind = held == &block ? LateReason::Kind::WaitedForMachine : LateReason::Kind::WaitedForBlanks;
        if (held != &block && isPinned(held->task))
            return pinned(reason, *held);
        sayWhatWentBefore(reason, *held);
        return reason;
    }

    [[nodiscard]] Phrase notEnoughHours(const Block& block, Moment due) const
    {
        const Calendar& calendar = problem_.calendar(block.machine);
        const Duration there = calendar.workedBy(due) - calendar.workedBy(begins_[block.task]);
        const Duration work = leastWork(problem_.tasks()[block.task]);
        return {
            "even alone in the shop it is done only {alone}: {work} of folding, and {machine} works {there} "
            "between {blanks}, when its first blanks can be there, and {due}",
            {{"alone", inWords(alone_[block.task])},
             {"work", inWords(work)},
             {"machine", problem_.machines()[block.machine].name},
             {"there", inWords(std::max(there, Duration()))},
             {"blanks", inWords(begins_[block.task])},
             {"due", inWords(due)}}};
    }

    [[nodiscard]] LateReason pinned(LateReason reason, const Block& block) const
    {
        reason.kind = LateReason::Kind::Pinned;
        reason.machine = block.machine;
        reason.statement = {"{what} is pinned to {start} on {machine}",
                            {{"what", nameOf(block.task)},
                             {"start", inWords(block.start)},
                             {"machine", problem_.machines()[block.machine].name}}};
        return reason;
    }

    /// The task right before it on its machine ends where its making ready begins.
    [[nodiscard]] bool waitsForItsMachine(const Block& block) const
    {
        const Block* previous = before(block);
        const Calendar& calendar = problem_.calendar(block.machine);
        const bool pressed =
            previous != nullptr && calendar.workedBy(previous->end) == calendar.workedBy(block.setupFrom);
        return pressed || lastCut(block) == nullptr;
    }

    [[nodiscard]] const Block* before(const Block& block) const
    {
        const auto& line = lines_[block.machine];
        const auto at = std::find(line.begin(), line.end(), blockOf_[block.task]);
        return at == line.begin() ? nullptr : &blocks_[*(at - 1)];
    }

    [[nodiscard]] const Block* lastCut(const Block& lot) const
    {
        const Block* last = nullptr;
        for (const std::size_t link : problem_.suppliesOf(lot.task)) {
            const Block& cut = blocks_[blockOf_[problem_.supplies()[link].cut]];
            if (last == nullptr || cut.end > last->end)
                last = &cut;
        }
        return last;
    }

    /// Everything that its machine did before it without a pause, back to when it could have begun.
    void sayWhatWentBefore(LateReason& reason, const Block& held) const
    {
        const Calendar& calendar = problem_.calendar(held.machine);
        const Duration could = calendar.workedBy(begins_[held.task]);
        reason.machine = held.machine;
        reason.waited = std::max(Duration(), calendar.workedBy(held.start) - could);
        const auto& line = lines_[held.machine];
        auto at = std::find(line.begin(), line.end(), blockOf_[held.task]);
        while (at != line.begin() && calendar.workedBy(blocks_[*(at - 1)].end) > could) {
            --at;
            reason.before.insert(reason.before.begin(), blocks_[*at].task);
        }
        const bool behindPin = std::any_of(reason.before.begin(), reason.before.end(),
                                           [&](std::size_t task) { return isPinned(task); });
        if (behindPin && reason.kind == LateReason::Kind::WaitedForMachine)
            reason.kind = LateReason::Kind::BehindPinned;
        const char* text = reason.kind == LateReason::Kind::WaitedForBlanks
                               ? "its blanks waited {waited} for {machine}, behind {before}"
                           : behindPin
                               ? "it waited {waited} for {machine}, behind {before}, some of it pinned"
                               : "it waited {waited} for {machine}, behind {before}";
        reason.statement = {text,
                            {{"waited", inWords(reason.waited)},
                             {"machine", problem_.machines()[held.machine].name},
                             {"before", listOf(reason.before)}}};
    }

    /// The nearest few by name, how many more besides.
    [[nodiscard]] std::string listOf(const std::vector<std::size_t>& tasks) const
    {
        constexpr std::size_t most = 3;
        if (tasks.empty())
            return "its own setup";
        std::string list;
        for (std::size_t shown = 0; shown < std::min(most, tasks.size()); ++shown)
            list += (shown == 0 ? "" : "; ") + nameOf(tasks[tasks.size() - 1 - shown]);
        return tasks.size() > most ? list + " and " + std::to_string(tasks.size() - most) + " more" : list;
    }

    const Problem& problem_;
    const std::vector<Block>& blocks_;
    std::vector<Moment> alone_;
    std::vector<Moment> begins_;
    std::vector<std::size_t> blockOf_;
    std::vector<std::vector<std::size_t>> lines_;
};

} // namespace

std::vector<LateReason> whyLate(const Problem& problem, const std::vector<Block>& blocks)
{
    return Reasons(problem, blocks).all();
}

} // namespace lapwright::schedule
