#include "acts/schedule_progress.h"

#include "storage/progress.h"

#include <algorithm>
#include <optional>

namespace lapwright::acts {

namespace {

using State = TaskProgress::State;
using PlanState = storage::PlanProgress::State;

std::optional<TaskProgress> cutProgress(const storage::PlanProgress& plan, const schedule::RecordedTask& task)
{
    const bool ticked = plan.ticked.count(task.cut->pattern) > 0;
    if (ticked || (plan.state == PlanState::Cut && plan.ticked.empty()))
        return TaskProgress{State::Made, task.units};
    if (plan.state == PlanState::Waiting)
        return std::nullopt;
    return TaskProgress{State::Gone, 0};
}

/// `open`: pieces of the lot that are not folded yet.
std::optional<TaskProgress> lotProgress(const storage::Database& database, const schedule::RecordedTask& task,
                                        std::int64_t open)
{
    const std::int64_t made = std::max<std::int64_t>(0, task.units - open);
    if (open > 0)
        return made == 0 ? std::nullopt : std::optional(TaskProgress{State::Begun, made});
    const std::string profile = task.key.substr(task.key.find('/') + 1);
    const bool folded = storage::foldedPieces(database, *task.order, profile) > 0;
    return TaskProgress{folded ? State::Made : State::Gone, folded ? task.units : 0};
}

} // namespace

ScheduleProgress progressOf(const storage::Database& database, const schedule::ScheduleRecord& schedule)
{
    ScheduleProgress progress;
    std::map<std::string, std::optional<storage::PlanProgress>> plans;
    const std::map<std::string, std::int64_t> open = storage::unfoldedPieces(database);
    for (const schedule::RecordedTask& task : schedule.tasks) {
        std::optional<TaskProgress> of;
        if (task.cut) {
            auto plan = plans.find(task.cut->plan);
            if (plan == plans.end())
                plan = plans.emplace(task.cut->plan, storage::planProgress(database, task.cut->plan)).first;
            of = cutProgress(plan->second.value_or(storage::PlanProgress{PlanState::TakenBack, {}}), task);
        } else if (task.order) {
            const auto left = open.find(task.key);
            of = lotProgress(database, task, left == open.end() ? 0 : left->second);
        }
        if (of)
            progress[task.key] = *of;
    }
    return progress;
}

bool isOver(const ScheduleProgress& progress, const std::string& task)
{
    const auto of = progress.find(task);
    return of != progress.end() && of->second.state != State::Begun;
}

} // namespace lapwright::acts
