#pragma once

#include "drawing/display_list.h"
#include "schedule/record.h"

#include <vector>

namespace lapwright::drawing {

/// What a picture of a schedule shows.
struct GanttPicture {
    schedule::Date day;
    Length width = Length::millimetres(297);
    Length height = Length::millimetres(210); ///< at least; the list of a full day may need more
};

/// The days on which a machine of the schedule is made ready or works, in order.
[[nodiscard]] std::vector<schedule::Date> daysOf(const schedule::ScheduleRecord& schedule);

/// One day of a schedule: a row for each machine, hours along the top, hours not worked hatched, making ready
/// hatched the other way; tasks numbered through the day, with a thick outline and a flag at the end where
/// their order is late and a pin's head where a person pinned them, so that nothing rests on colour. Below it
/// the tasks by number with times, what is fitted and set for them, due dates and why they are late. Numbers
/// that fit nowhere stand in the list alone.
[[nodiscard]] DisplayList gantt(const schedule::ScheduleRecord& schedule, const GanttPicture& picture);

} // namespace lapwright::drawing
