#pragma once

#include "schedule/record.h"
#include "storage/database.h"

#include <cstdint>
#include <map>
#include <string>

namespace lapwright::acts {

/// How far a task has come since it was scheduled.
struct TaskProgress {
    enum class State {
        Begun, ///< some units are made
        Made,
        Gone ///< there is nothing left of it to make: planned another way, held, cancelled
    } state = State::Begun;
    std::int64_t made = 0; ///< units

    friend bool operator==(const TaskProgress&, const TaskProgress&) = default;
};

/// By key of the task; what nothing is made of yet is left out. A lot that grew since counts fewer pieces
/// than are made.
using ScheduleProgress = std::map<std::string, TaskProgress>;
[[nodiscard]] ScheduleProgress progressOf(const storage::Database& database,
                                          const schedule::ScheduleRecord& schedule);

/// Whether nobody has to do anything for it any more.
[[nodiscard]] bool isOver(const ScheduleProgress& progress, const std::string& task);

} // namespace lapwright::acts
