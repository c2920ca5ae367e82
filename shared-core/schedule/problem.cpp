#include "schedule/problem.h"

#include "schedule/pins.h"
#include "schedule/problem_checks.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

/// How long machines of a stage can be busy at most, each doing all there is.
Duration everything(const std::vector<Task>& tasks, Stage stage)
{
    Duration sum;
    for (const Task& task : tasks) {
        if (task.stage != stage)
            continue;
        Duration longest;
        for (const Way& way : task.ways)
            longest = std::max(longest, workOf(task, way) + way.fit + way.set);
        sum += longest;
    }
    return sum + Duration::seconds(1);
}

/// The last moment before which something may have to wait that does not wait for cutting.
Moment latestWait(Moment begin, const std::vector<Machine>& machines, const std::vector<Task>& tasks,
                  const std::vector<Pin>& pins)
{
    Moment latest = begin;
    for (const Machine& machine : machines)
        latest = std::max(latest, machine.freeFrom);
    for (const Task& task : tasks)
        latest = std::max(latest, task.release);
    for (const Pin& pin : pins)
        latest = std::max(latest, pin.start.value_or(latest));
    return latest;
}

/// Hours for any schedule: every machine alone can do all of its stage, folders after all is cut.
Result<std::vector<Calendar>> calendarsFor(Moment begin, Moment latest, const std::vector<Machine>& machines,
                                           const std::vector<Task>& tasks)
{
    std::vector<Calendar> calendars(machines.size());
    std::vector<Error> errors;
    Moment from = latest;
    for (const Stage stage : {Stage::Cut, Stage::Fold}) {
        const Duration work = everything(tasks, stage);
        Moment allDone = from;
        for (std::size_t machine = 0; machine < machines.size(); ++machine) {
            if (machines[machine].stage != stage)
                continue;
            auto calendar = calendarOf(machines[machine].hours, begin, from, work);
            if (!calendar.ok()) {
                errors.push_back(calendar.errors().front().within(machines[machine].name));
                continue;
            }
            allDone = std::max(allDone, calendar->endsAt(calendar->total()));
            calendars[machine] = *std::move(calendar);
        }
        from = allDone;
    }
    if (!errors.empty())
        return errors;
    return calendars;
}

} // namespace

Duration workOf(const Task& task, const Way& way)
{
    return roundUpToSeconds(task.units, way.millisecondsEach);
}

Duration leastWork(const Task& task)
{
    Duration least = workOf(task, task.ways.front());
    for (const Way& way : task.ways)
        least = std::min(least, workOf(task, way));
    return least;
}

const Way* wayOn(const Task& task, std::size_t machine)
{
    for (const Way& way : task.ways)
        if (way.machine == machine)
            return &way;
    return nullptr;
}

std::vector<Transfer> transfersOf(const Problem& problem, const Supply& supply, const Way& way)
{
    const std::int64_t units = problem.tasks()[supply.cut].units;
    const std::int64_t least = (supply.pieces + mostTransfers - 1) / mostTransfers;
    const std::int64_t step = std::max(least, problem.transferPieces().value_or(supply.pieces));
    std::vector<Transfer> transfers;
    for (std::int64_t arrived = std::min(step, supply.pieces);;
         arrived = std::min(arrived + step, supply.pieces)) {
        // The last move is made when the whole task is done: nobody knows before that no more comes.
        const std::int64_t unit =
            arrived == supply.pieces ? units : (arrived * units + supply.pieces - 1) / supply.pieces;
        transfers.push_back({arrived, roundUpToSeconds(unit, way.millisecondsEach)});
        if (arrived == supply.pieces)
            return transfers;
    }
}

ProblemBuilder& ProblemBuilder::transferPieces(std::optional<std::int64_t> pieces)
{
    transferPieces_ = pieces;
    return *this;
}

std::size_t ProblemBuilder::machine(Machine machine)
{
    machines_.push_back(std::move(machine));
    return machines_.size() - 1;
}

std::size_t ProblemBuilder::task(Task task)
{
    tasks_.push_back(std::move(task));
    return tasks_.size() - 1;
}

std::size_t ProblemBuilder::delivery(Delivery delivery)
{
    deliveries_.push_back(std::move(delivery));
    return deliveries_.size() - 1;
}

ProblemBuilder& ProblemBuilder::supply(const Supply& supply)
{
    supplies_.push_back(supply);
    return *this;
}

ProblemBuilder& ProblemBuilder::pin(const Pin& pin)
{
    pins_.push_back(pin);
    return *this;
}

Result<Problem> ProblemBuilder::build() const
{
    std::vector<Error> errors = faultsOf(begin_, machines_, tasks_, supplies_, deliveries_, pins_);
    if (transferPieces_ && *transferPieces_ < 1)
        errors.push_back({"transfer", std::to_string(*transferPieces_) + " pieces", "one or more"});
    if (!errors.empty())
        return errors;
    auto calendars = calendarsFor(begin_, latestWait(begin_, machines_, tasks_, pins_), machines_, tasks_);
    if (!calendars.ok())
        return calendars.errors();

    Problem problem;
    problem.begin_ = begin_;
    problem.machines_ = machines_;
    problem.tasks_ = tasks_;
    problem.supplies_ = supplies_;
    problem.deliveries_ = deliveries_;
    problem.transferPieces_ = transferPieces_;
    problem.calendars_ = *std::move(calendars);
    problem.suppliesOf_.resize(tasks_.size());
    for (std::size_t index = 0; index < supplies_.size(); ++index) {
        problem.suppliesOf_[supplies_[index].cut].push_back(index);
        problem.suppliesOf_[supplies_[index].lot].push_back(index);
    }
    problem.pinOf_.resize(tasks_.size());
    PinAdmission admission = admitPins(problem, pins_);
    problem.tasks_ = std::move(admission.tasks);
    problem.pins_ = std::move(admission.kept);
    problem.refusedPins_ = std::move(admission.refused);
    for (std::size_t index = 0; index < problem.pins_.size(); ++index)
        problem.pinOf_[problem.pins_[index].task] = index;
    return problem;
}

} // namespace lapwright::schedule
