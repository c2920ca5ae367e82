#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "schedule/record.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::drawing {

/// How far a task has come since it was scheduled.
struct GanttProgress {
    std::string words; ///< "made", "3 of 8 made"
    bool made = false; ///< all of it
    bool over = false; ///< made, or not to be made any more

    friend bool operator==(const GanttProgress&, const GanttProgress&) = default;
};

/// What a picture of a schedule shows.
struct GanttPicture {
    schedule::Date day;
    Length width = Length::millimetres(297);
    Length height = Length::millimetres(210);           ///< at least; the list of a full day may need more
    Style style = {};                                   ///< in whose language
    std::map<std::string, GanttProgress> progress = {}; ///< by key of the task
};

/// The days on which a machine of the schedule is made ready or works, in order.
[[nodiscard]] std::vector<schedule::Date> daysOf(const schedule::ScheduleRecord& schedule);

/// One day of a schedule: a row for each machine, hours along the top, hours not worked hatched, making ready
/// hatched the other way; tasks numbered through the day, with a thick outline and a flag at the end where
/// their order is late and a pin's head where a person pinned them, dashed and ticked where they are made, so
/// that nothing rests on colour. Below it the tasks by number with times, how far they have come, what is
/// fitted and set for them, due dates and why they are late. Numbers
/// that fit nowhere stand in the list alone.
[[nodiscard]] DisplayList gantt(const schedule::ScheduleRecord& schedule, const GanttPicture& picture);

/// A place in the picture of a day.
struct GanttSpot {
    std::size_t machine = 0;         ///< whose row it is, by index of the schedule's machines
    schedule::Moment moment;         ///< to the nearest minute
    std::optional<std::size_t> task; ///< that is worked on there, by index of the schedule's tasks
};

/// What lies at `at`, in millimetres on the page; nothing beside the machines' rows and the hours of the day.
[[nodiscard]] std::optional<GanttSpot> ganttSpot(const schedule::ScheduleRecord& schedule,
                                                 const GanttPicture& picture, Point at);

} // namespace lapwright::drawing
