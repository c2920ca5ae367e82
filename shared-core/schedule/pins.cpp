#include "schedule/pins.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

class PinDesk {
public:
    explicit PinDesk(const Problem& problem) : problem_(problem) { admission_.tasks = problem.tasks(); }

    void consider(const Pin& pin)
    {
        const bool kept = !twice(pin) && machineCan(pin) && startsInHours(pin) && hasItsBlanks(pin) &&
                          keepsClear(pin) && followsSomething(pin);
        if (kept) {
            admission_.tasks[pin.task].ways = ways_;
            admission_.kept.push_back(pin);
        }
    }

    PinAdmission take() { return std::move(admission_); }

private:
    bool refuse(const Pin& pin, const char* code, Phrase statement, const char* remedy)
    {
        admission_.refused.push_back({rules::Weight::Blocks,
                                      code,
                                      problem_.tasks()[pin.task].name,
                                      std::move(statement),
                                      {remedy, {}},
                                      std::nullopt});
        return false;
    }

    [[nodiscard]] const Pin* pinOf(std::size_t task) const
    {
        for (const Pin& pin : admission_.kept)
            if (pin.task == task)
                return &pin;
        return nullptr;
    }

    bool twice(const Pin& pin)
    {
        if (pinOf(pin.task) == nullptr)
            return false;
        refuse(pin, "schedule.pin.twice", {"it is pinned twice; the first pin holds", {}},
               "take one of the two away");
        return true;
    }

    bool machineCan(const Pin& pin)
    {
        ways_ = problem_.tasks()[pin.task].ways;
        if (!pin.machine)
            return true;
        std::erase_if(ways_, [&](const Way& way) { return way.machine != *pin.machine; });
        return !ways_.empty() || refuse(pin, "schedule.pin.machine",
                                        {"it is pinned to {machine}, which cannot make it",
                                         {{"machine", problem_.machines()[*pin.machine].name}}},
                                        "pin it to a machine that can, or to none");
    }

    bool startsInHours(const Pin& pin)
    {
        if (!pin.start)
            return true;
        const Moment start = *pin.start;
        if (start < problem_.begin() || start < problem_.tasks()[pin.task].release)
            return refuse(pin, "schedule.pin.past",
                          {"it is pinned to {start}, before it can begin", {{"start", inWords(start)}}},
                          "pin it later");
        std::erase_if(ways_, [&](const Way& way) {
            return !problem_.calendar(way.machine).isOpen(start) ||
                   start < problem_.machines()[way.machine].freeFrom;
        });
        return !ways_.empty() ||
               refuse(pin, "schedule.pin.hours",
                      {"it is pinned to {start}, when no machine that can make it works",
                       {{"start", inWords(start)}}},
                      "pin it within the hours of its machine, or change the floor's hours");
    }

    /// A lot cannot begin before its first transfer can have come off any machine.
    bool hasItsBlanks(const Pin& pin)
    {
        if (!pin.start || problem_.tasks()[pin.task].stage == Stage::Cut)
            return true;
        Moment earliest = problem_.begin();
        std::int64_t supplied = 0;
        for (const std::size_t index : problem_.suppliesOf(pin.task)) {
            supplied += problem_.supplies()[index].pieces;
            const Moment arrives = earliestArrival(problem_.supplies()[index]);
            earliest = supplied == problem_.supplies()[index].pieces ? arrives : std::min(earliest, arrives);
        }
        const bool someAtHand = supplied < problem_.tasks()[pin.task].units;
        return someAtHand || *pin.start >= earliest ||
               refuse(pin, "schedule.pin.blanks",
                      {"it is pinned to {start}; its first blanks cannot be cut before {earliest}",
                       {{"start", inWords(*pin.start)}, {"earliest", inWords(earliest)}}},
                      "pin it later");
    }

    [[nodiscard]] Moment earliestArrival(const Supply& supply) const
    {
        const Task& cut = problem_.tasks()[supply.cut];
        std::optional<Moment> earliest;
        for (const Way& way : cut.ways) {
            const Calendar& calendar = problem_.calendar(way.machine);
            const Moment from = std::max(cut.release, problem_.machines()[way.machine].freeFrom);
            const Moment arrives =
                calendar.endsAt(calendar.workedBy(from) + transfersOf(problem_, supply, way).front().offset);
            earliest = std::min(earliest.value_or(arrives), arrives);
        }
        return *earliest;
    }

    /// Two pinned starts on one machine leave room for the earlier task, on every machine both may be on.
    bool keepsClear(const Pin& pin)
    {
        if (!pin.start)
            return true;
        for (const Pin& other : admission_.kept) {
            if (!other.start)
                continue;
            std::erase_if(ways_, [&](const Way& way) {
                return onlyThere(other, way.machine) && clash(pin, other, way);
            });
            if (ways_.empty())
                return refuse(pin, "schedule.pin.clash",
                              {"it is pinned to {start}, while {other}, pinned to {there}, takes its machine",
                               {{"start", inWords(*pin.start)},
                                {"other", problem_.tasks()[other.task].name},
                                {"there", inWords(*other.start)}}},
                              "move one of the two, or pin it to another machine");
        }
        return true;
    }

    [[nodiscard]] bool onlyThere(const Pin& pin, std::size_t machine) const
    {
        const auto& ways = admission_.tasks[pin.task].ways;
        return ways.size() == 1 && ways.front().machine == machine;
    }

    [[nodiscard]] bool clash(const Pin& pin, const Pin& other, const Way& way) const
    {
        const Calendar& calendar = problem_.calendar(way.machine);
        const Duration mine = calendar.workedBy(*pin.start), theirs = calendar.workedBy(*other.start);
        const Task& task = problem_.tasks()[pin.task];
        const Task& otherTask = problem_.tasks()[other.task];
        return mine < theirs ? mine + workOf(task, way) > theirs
                             : theirs + workOf(otherTask, *wayOn(otherTask, way.machine)) > mine;
    }

    bool followsSomething(const Pin& pin)
    {
        if (!pin.after)
            return true;
        const std::string& name = problem_.tasks()[*pin.after].name;
        std::erase_if(ways_, [&](const Way& way) {
            return wayOn(admission_.tasks[*pin.after], way.machine) == nullptr;
        });
        if (ways_.empty())
            return refuse(
                pin, "schedule.pin.after",
                {"it is pinned after {other}, which no machine that can make it makes", {{"other", name}}},
                "pin the order of tasks on one machine");
        std::size_t before = *pin.after;
        while (before != pin.task) {
            const Pin* next = pinOf(before);
            if (next == nullptr || !next->after)
                return true;
            before = *next->after;
        }
        return refuse(pin, "schedule.pin.ring",
                      {"it is pinned after {other}, which is pinned after it", {{"other", name}}},
                      "take one of the pins away");
    }

    const Problem& problem_;
    PinAdmission admission_;
    std::vector<Way> ways_; ///< what the pin in hand leaves of its task's ways
};

} // namespace

PinAdmission admitPins(const Problem& problem, const std::vector<Pin>& pins)
{
    PinDesk desk(problem);
    for (const Pin& pin : pins)
        desk.consider(pin);
    return desk.take();
}

} // namespace lapwright::schedule
