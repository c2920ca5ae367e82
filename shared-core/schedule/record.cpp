#include "schedule/record.h"
#include "measure/writing.h"

#include <algorithm>
#include <set>

namespace lapwright::schedule {

namespace {

RecordedScore scoreOf(const Score& score, const Setups& setups, std::int64_t late)
{
    return {score.makespan, score.weightedLateness, late, setups.fittings, setups.settings, setups.time};
}

RecordedTask recorded(const Problem& problem, const Block& block)
{
    const Task& task = problem.tasks()[block.task];
    const Way* way = wayOn(task, block.machine);
    RecordedTask record;
    record.key = task.key;
    record.name = task.name;
    record.machine = problem.machines()[block.machine].key;
    record.units = task.units;
    record.setupFrom = block.setupFrom;
    record.start = block.start;
    record.end = block.end;
    record.pinned = problem.pinOf(block.task).has_value();
    if (block.fits)
        record.fitting = way->ready.fitting;
    if (block.sets)
        record.setting = way->ready.setting;
    if (task.delivery) {
        record.order = problem.deliveries()[*task.delivery].key;
        record.due = problem.deliveries()[*task.delivery].due;
    }
    return record;
}

NamedPin named(const Problem& problem, const Pin& pin)
{
    NamedPin result{problem.tasks()[pin.task].key, std::nullopt, pin.start, std::nullopt};
    if (pin.machine)
        result.machine = problem.machines()[*pin.machine].key;
    if (pin.after)
        result.after = problem.tasks()[*pin.after].key;
    return result;
}

} // namespace

ScheduleRecord recordOf(const Problem& problem, const Schedule& schedule,
                        const std::map<std::string, CutOf>& cuts)
{
    ScheduleRecord record;
    record.from = problem.begin();
    const Moment last = momentOf(dateOf(problem.begin() + schedule.score.makespan), Duration::days(1));
    for (std::size_t index = 0; index < problem.machines().size(); ++index) {
        const Machine& machine = problem.machines()[index];
        record.machines.push_back({machine.key, machine.name, machine.stage, {}});
        for (const Interval& worked : problem.calendar(index).worked())
            if (worked.from < last)
                record.machines.back().worked.push_back({worked.from, std::min(worked.to, last)});
    }
    std::vector<Moment> done(problem.deliveries().size(), problem.begin());
    for (const Block& block : schedule.blocks) {
        record.tasks.push_back(recorded(problem, block));
        if (const auto cut = cuts.find(record.tasks.back().key); cut != cuts.end())
            record.tasks.back().cut = cut->second;
        if (const auto delivery = problem.tasks()[block.task].delivery)
            done[*delivery] = std::max(done[*delivery], block.end);
        for (const LateReason& reason : schedule.late)
            if (reason.lot == block.task)
                record.tasks.back().late = say(reason.statement, {});
    }
    for (std::size_t index = 0; index < problem.deliveries().size(); ++index) {
        const Delivery& delivery = problem.deliveries()[index];
        record.deliveries.push_back(
            {delivery.key, delivery.name, delivery.due, done[index], delivery.weight});
    }
    for (const Pin& pin : problem.pins())
        record.pins.push_back(named(problem, pin));
    record.score = scoreOf(schedule.score, schedule.setups, schedule.lateDeliveries);
    record.makespanBound = schedule.bound.makespan;
    record.weightedLatenessBound = schedule.bound.weightedLateness;
    record.provenBest = schedule.proof == Proof::ProvenBest;
    record.method = schedule.method;
    record.firstCome =
        scoreOf(schedule.firstCome.score, schedule.firstCome.setups, schedule.firstCome.lateDeliveries);
    record.shortest =
        scoreOf(schedule.shortest.score, schedule.shortest.setups, schedule.shortest.lateDeliveries);
    return record;
}

std::vector<Error> faultsOf(const ScheduleRecord& record)
{
    constexpr Duration longest = Duration::days(std::int64_t{21} * 366);
    std::vector<Error> errors;
    std::set<std::string> machines, tasks;
    if (record.score.makespan > longest)
        errors.push_back({"/score/makespan_seconds", std::to_string(record.score.makespan.inSeconds()),
                          "at most twenty years"});
    for (std::size_t index = 0; index < record.machines.size(); ++index) {
        const std::string place = "/machines/" + std::to_string(index);
        if (!machines.insert(record.machines[index].id).second)
            errors.push_back({place + "/id", record.machines[index].id + " again", "each only once"});
        Moment last = record.from;
        for (const Interval& worked : record.machines[index].worked) {
            if (worked.from < last || worked.to <= worked.from || worked.to > record.from + longest)
                errors.push_back({place + "/worked", write(worked.from) + " to " + write(worked.to),
                                  "hours in order, from the schedule's begin, within twenty years"});
            last = std::max(last, worked.to);
        }
    }
    for (std::size_t index = 0; index < record.tasks.size(); ++index) {
        const RecordedTask& task = record.tasks[index];
        const std::string place = "/tasks/" + std::to_string(index);
        if (!tasks.insert(task.key).second)
            errors.push_back({place + "/key", task.key + " again", "each only once"});
        if (machines.count(task.machine) == 0)
            errors.push_back({place + "/machine", task.machine, "one of the machines of the document"});
        if (task.setupFrom > task.start || task.start > task.end || task.setupFrom < record.from ||
            task.end > record.from + longest)
            errors.push_back({place,
                              write(task.setupFrom) + ", " + write(task.start) + ", " + write(task.end),
                              "made ready, begun and ended in this order, from the schedule's begin"});
    }
    return errors;
}

} // namespace lapwright::schedule
