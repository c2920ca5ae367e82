#include "acts/schedule_words.h"

#include "acts/words.h"

#include <algorithm>

namespace lapwright::acts {

namespace {

using schedule::Duration;

/// "1.3", from tenths.
std::string tenths(std::int64_t value)
{
    return std::to_string(value / 10) + "." + std::to_string(value % 10);
}

std::string hoursOf(std::int64_t seconds)
{
    return tenths((seconds + 180) / 360) + " h";
}

std::string makespanInWords(const schedule::ScheduleRecord& schedule)
{
    const std::int64_t span = schedule.score.makespan.inSeconds(), least = schedule.makespanBound.inSeconds();
    std::string words = "all done " + schedule::inWords(schedule.from + schedule.score.makespan) + ", " +
                        schedule::inWords(schedule.score.makespan) + " from " +
                        schedule::inWords(schedule.from);
    if (span == least)
        return words + ", the least there is";
    // Rounded up: never said to be nearer than it is.
    return words + ", at most " +
           tenths((1'000 * (span - least) + least - 1) / std::max<std::int64_t>(1, least)) + " %" +
           " over the least (bound " + schedule::inWords(schedule.makespanBound) + ")";
}

std::string latenessInWords(const schedule::ScheduleRecord& schedule)
{
    std::string words = std::to_string(schedule.score.lateDeliveries) + " of " +
                        counted(static_cast<std::int64_t>(schedule.deliveries.size()), "order") + " late";
    words += ", weighted lateness " + hoursOf(schedule.score.weightedLateness);
    if (schedule.score.weightedLateness > 0)
        words += schedule.score.weightedLateness == schedule.weightedLatenessBound
                     ? ", the least there is"
                     : " (bound " + hoursOf(schedule.weightedLatenessBound) + ")";
    return words + "; in the order of arrival " + std::to_string(schedule.firstCome.lateDeliveries) +
           " late, " + hoursOf(schedule.firstCome.weightedLateness);
}

std::string setupsInWords(const schedule::ScheduleRecord& schedule)
{
    const std::int64_t setups = schedule.score.fittings + schedule.score.settings;
    const std::int64_t saved = schedule.firstCome.fittings + schedule.firstCome.settings - setups;
    const Duration time = schedule.firstCome.makingReady - schedule.score.makingReady;
    return counted(setups, "setup") + ", " + schedule::inWords(schedule.score.makingReady) + "; " +
           (saved >= 0 ? counted(saved, "setup") + " saved" : counted(-saved, "setup") + " more") + " and " +
           (time >= Duration() ? schedule::inWords(time) + " saved"
                               : schedule::inWords(Duration() - time) + " more") +
           " against the order of arrival";
}

} // namespace

std::vector<std::string> totalsInWords(const schedule::ScheduleRecord& schedule)
{
    return {makespanInWords(schedule), latenessInWords(schedule), setupsInWords(schedule)};
}

std::vector<std::string> inWords(const schedule::ScheduleRecord& schedule)
{
    std::vector<std::string> lines = totalsInWords(schedule);
    for (const schedule::RecordedTask& task : schedule.tasks)
        if (!task.late.empty())
            lines.push_back(task.name + " is done " + schedule::inWords(task.end) + ", due " +
                            schedule::inWords(task.due.value_or(task.end)) + ": " + task.late);
    return lines;
}

std::string inWords(const TaskProgress& progress, const schedule::RecordedTask& task)
{
    switch (progress.state) {
    case TaskProgress::State::Begun:
        return std::to_string(progress.made) + " of " + std::to_string(task.units) + " made";
    case TaskProgress::State::Made:
        return "made";
    case TaskProgress::State::Gone:
        break;
    }
    return "not to be made any more";
}

std::string inWords(const ScheduleProgress& progress, const schedule::ScheduleRecord& schedule)
{
    const auto isMade = [](const auto& one) { return one.second.state == TaskProgress::State::Made; };
    const std::int64_t made = std::count_if(progress.begin(), progress.end(), isMade);
    const std::int64_t over = std::count_if(schedule.tasks.begin(), schedule.tasks.end(),
                                            [&](const auto& task) { return isOver(progress, task.key); });
    if (over == 0)
        return {};
    const auto tasks = static_cast<std::int64_t>(schedule.tasks.size());
    std::string words =
        std::to_string(made) + " of " + counted(tasks, "task") + " made since it was scheduled";
    if (over > made)
        words += ", " + std::to_string(over - made) + " not to be made any more";
    return words;
}

} // namespace lapwright::acts
