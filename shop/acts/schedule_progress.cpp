#include "acts/schedule_progress.h"

#include "storage/progress.h"

#include <algorithm>
#include <optional>
#include <set>

namespace lapwright::acts {

namespace {

using State = TaskProgress::State;
using PlanState = storage::PlanProgress::State;

std::optional<TaskProgress> cutProgress(const storage::PlanProgress& plan, const schedule::RecordedTask& task)
{
    if (plan.ticked.count(task.cut->pattern) > 0)
        return TaskProgress{State::Made, task.units};
    if (plan.state == PlanState::Waiting)
        return std::nullopt;
    return TaskProgress{State::Gone, 0};
}

/// `open`: pieces of the lot that are not folded yet. `folded`: any of it is.
std::optional<TaskProgress> lotProgress(const schedule::RecordedTask& task, std::int64_t open, bool folded)
{
    const std::int64_t made = std::max<std::int64_t>(0, task.units - open);
    if (open > 0)
        return made == 0 ? std::nullopt : std::optional(TaskProgress{State::Begun, made});
    return TaskProgress{folded ? State::Made : State::Gone, folded ? task.units : 0};
}

/// What is read of the database, each plan and order once.
class Read {
public:
    explicit Read(const storage::Database& database)
        : database_(database), open_(storage::unfoldedPieces(database))
    {
    }

    std::optional<TaskProgress> progressOf(const schedule::RecordedTask& task)
    {
        if (task.cut)
            return cutProgress(plan(task.cut->plan), task);
        if (!task.order)
            return std::nullopt;
        const auto open = open_.find(task.key);
        if (open != open_.end())
            return lotProgress(task, open->second, true);
        const std::string profile = task.key.substr(task.key.find('/') + 1);
        return lotProgress(task, 0, folded(*task.order).count(profile) > 0);
    }

private:
    const storage::PlanProgress& plan(const std::string& id)
    {
        auto known = plans_.find(id);
        if (known == plans_.end())
            known = plans_
                        .emplace(id, storage::planProgress(database_, id)
                                         .value_or(storage::PlanProgress{PlanState::TakenBack, {}}))
                        .first;
        return known->second;
    }

    const std::set<std::string>& folded(const std::string& order)
    {
        auto known = folded_.find(order);
        if (known == folded_.end())
            known = folded_.emplace(order, storage::foldedProfiles(database_, order)).first;
        return known->second;
    }

    const storage::Database& database_;
    std::map<std::string, std::int64_t> open_;
    std::map<std::string, storage::PlanProgress> plans_;
    std::map<std::string, std::set<std::string>> folded_;
};

} // namespace

ScheduleProgress progressOf(const storage::Database& database, const schedule::ScheduleRecord& schedule)
{
    ScheduleProgress progress;
    Read read(database);
    for (const schedule::RecordedTask& task : schedule.tasks)
        if (const auto of = read.progressOf(task))
            progress.emplace(task.key, *of);
    return progress;
}

bool isOver(const ScheduleProgress& progress, const std::string& task)
{
    const auto of = progress.find(task);
    return of != progress.end() && of->second.state != State::Begun;
}

} // namespace lapwright::acts
