#pragma once

#include "acts/schedule_progress.h"
#include "schedule/record.h"

#include <string>
#include <vector>

namespace lapwright::acts {

/// What a schedule comes to, for a person: when all is done and how far that can be from the least, how much
/// is late, setups against the order of arrival.
[[nodiscard]] std::vector<std::string> totalsInWords(const schedule::ScheduleRecord& schedule);
/// The same, and what is late and why.
[[nodiscard]] std::vector<std::string> inWords(const schedule::ScheduleRecord& schedule);

/// "made", "3 of 8 made"; empty where nothing is made yet.
[[nodiscard]] std::string inWords(const TaskProgress& progress, const schedule::RecordedTask& task);
/// "3 of 12 tasks made since it was scheduled"; empty where none is over.
[[nodiscard]] std::string inWords(const ScheduleProgress& progress, const schedule::ScheduleRecord& schedule);

} // namespace lapwright::acts
