#include "schedule/problem_checks.h"

#include <algorithm>
#include <set>

namespace lapwright::schedule {

namespace {

constexpr Duration longestSetup = Duration::days(7);

class Checks {
public:
    Checks(const std::vector<Machine>& machines, const std::vector<Task>& tasks, std::size_t deliveries)
        : machines_(machines), tasks_(tasks), deliveries_(deliveries)
    {
    }

    void machine(const Machine& machine)
    {
        once("machine", machine.key);
        for (const Error& error : schedule::faultsOf(machine.hours))
            errors_.push_back(error.within("machine " + machine.key));
    }

    void task(const Task& task)
    {
        const std::string place = "task " + task.key;
        once("task", task.key);
        inRange(place, "units", task.units, 1, ProblemBuilder::mostUnits);
        if (task.ways.empty())
            errors_.push_back({place, "no machine for it", "at least one"});
        if (task.delivery && (*task.delivery >= deliveries_ || task.stage == Stage::Cut))
            errors_.push_back({place, "a delivery it cannot have", "one of those given, and only for a lot"});
        std::set<std::size_t> seen;
        for (const Way& way : task.ways) {
            if (way.machine >= machines_.size() || machines_[way.machine].stage != task.stage ||
                !seen.insert(way.machine).second) {
                errors_.push_back(
                    {place, "machine " + std::to_string(way.machine), "machines of its stage, each once"});
                continue;
            }
            inRange(place, "milliseconds each", way.millisecondsEach, 0, ProblemBuilder::longestUnit);
            for (const Duration time : {way.fit, way.set})
                inRange(place, "seconds of making ready", time.inSeconds(), 0, longestSetup.inSeconds());
        }
    }

    void supply(const Supply& supply, std::vector<std::int64_t>& supplied)
    {
        if (supply.cut >= tasks_.size() || supply.lot >= tasks_.size() ||
            tasks_[supply.cut].stage != Stage::Cut || tasks_[supply.lot].stage != Stage::Fold) {
            errors_.push_back({"supply",
                               "tasks " + std::to_string(supply.cut) + " and " + std::to_string(supply.lot),
                               "a cut task and a lot"});
            return;
        }
        const Task& lot = tasks_[supply.lot];
        inRange("task " + lot.key, "pieces supplied", supply.pieces, 1, ProblemBuilder::mostUnits);
        supplied[supply.lot] += supply.pieces;
        if (supplied[supply.lot] > lot.units)
            errors_.push_back({"task " + lot.key, std::to_string(supplied[supply.lot]) + " pieces supplied",
                               "at most its " + std::to_string(lot.units)});
    }

    void delivery(const Delivery& delivery)
    {
        once("delivery", delivery.key);
        inRange("delivery " + delivery.key, "weight", delivery.weight, 0, ProblemBuilder::highestWeight);
    }

    void pin(const Pin& pin)
    {
        if (pin.task >= tasks_.size() || pin.machine.value_or(0) >= machines_.size() ||
            pin.after.value_or(0) >= tasks_.size())
            errors_.push_back({"pin", "a task or machine that is not there", "one of those given"});
    }

    void fail(Error error) { errors_.push_back(std::move(error)); }
    [[nodiscard]] std::vector<Error> take() { return std::move(errors_); }

private:
    void once(const std::string& kind, const std::string& key)
    {
        if (!keys_.insert(kind + " " + key).second)
            errors_.push_back({kind + " " + key, "the same key twice", "each only once"});
    }
    void inRange(const std::string& place, const std::string& what, std::int64_t value, std::int64_t least,
                 std::int64_t most)
    {
        if (value < least || value > most)
            errors_.push_back({place, std::to_string(value) + " " + what,
                               std::to_string(least) + " to " + std::to_string(most)});
    }

    const std::vector<Machine>& machines_;
    const std::vector<Task>& tasks_;
    std::size_t deliveries_;
    std::set<std::string> keys_;
    std::vector<Error> errors_;
};

} // namespace

std::vector<Error> faultsOf(Moment begin, const std::vector<Machine>& machines,
                            const std::vector<Task>& tasks, const std::vector<Supply>& supplies,
                            const std::vector<Delivery>& deliveries, const std::vector<Pin>& pins)
{
    constexpr Duration longestWait = Duration::days(3'660);
    Checks checks(machines, tasks, deliveries.size());
    if (tasks.size() > ProblemBuilder::mostTasks)
        checks.fail({"", std::to_string(tasks.size()) + " tasks",
                     "at most " + std::to_string(ProblemBuilder::mostTasks)});
    for (const Machine& machine : machines)
        checks.machine(machine);
    for (const Delivery& delivery : deliveries)
        checks.delivery(delivery);
    for (const Task& task : tasks) {
        checks.task(task);
        if (task.release > begin + longestWait)
            checks.fail({"task " + task.key, "a release at " + write(task.release), "one within ten years"});
    }
    std::vector<std::int64_t> supplied(tasks.size(), 0);
    for (const Supply& supply : supplies)
        checks.supply(supply, supplied);
    for (const Pin& pin : pins) {
        checks.pin(pin);
        if (pin.start && *pin.start > begin + longestWait)
            checks.fail({"pin", "a start at " + write(*pin.start), "one within ten years"});
    }
    return checks.take();
}

} // namespace lapwright::schedule
