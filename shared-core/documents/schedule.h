#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "schedule/floor.h"
#include "schedule/record.h"

#include <string>
#include <string_view>

/// The shop floor and the schedules made for it. All reading errors are those of openDocument, with a JSON
/// pointer as place, and what is said beside each. Times of day are those of the shop's wall clock.
namespace lapwright::documents {

/// lapwright/floor. Errors also: those of schedule::faultsOf.
[[nodiscard]] Result<Document<schedule::Floor>> readFloor(std::string_view text);
[[nodiscard]] std::string writeFloor(const Document<schedule::Floor>& floor,
                                     Layout layout = Layout::Readable);

/// lapwright/schedule. Errors also: those of schedule::faultsOf.
[[nodiscard]] Result<Document<schedule::ScheduleRecord>> readSchedule(std::string_view text);
[[nodiscard]] std::string writeSchedule(const Document<schedule::ScheduleRecord>& schedule,
                                        Layout layout = Layout::Readable);

} // namespace lapwright::documents
