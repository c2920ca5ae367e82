#pragma once

#include "schedule/record.h"

#include <string>
#include <vector>

namespace lapwright::acts {

/// What a schedule comes to, for a person: when all is done and how far that can be from the least, what is
/// late and why, setups against the order of arrival.
[[nodiscard]] std::vector<std::string> inWords(const schedule::ScheduleRecord& schedule);

} // namespace lapwright::acts
