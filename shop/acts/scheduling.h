#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "rules/finding.h"
#include "schedule/record.h"
#include "schedule/settings.h"
#include "storage/database.h"

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// When each waiting cut and each profile still to be folded is done, and on which machine.
namespace lapwright::acts {

/// What the schedule kept in the database pins.
struct PinsAsKept {};

/// The same but for one task.
struct OtherPin {
    std::string task;                      ///< schedule::NamedPin::task
    std::optional<schedule::NamedPin> pin; ///< of that task; missing: it is not pinned
};

/// Others in place of those.
using AllPins = std::vector<schedule::NamedPin>;

struct ScheduleRequest {
    /// Floor to schedule on and to keep; missing: what stands in the database, or else the usual one.
    std::optional<documents::Document<schedule::Floor>> floor;
    schedule::Moment from; ///< the shop's wall clock
    std::variant<PinsAsKept, OtherPin, AllPins> pins;
    schedule::Settings settings;
    /// Ends the search sooner than its work limit, by the clock of this machine.
    std::optional<std::chrono::milliseconds> timeLimit;
    /// Called every now and then on the calling thread; false ends the search with the best schedule so far.
    schedule::GoOn goOn = {};
    std::vector<std::string> libraryFolders;
};

struct Scheduled {
    std::optional<schedule::ScheduleRecord> record; ///< missing: nothing is to be done
    rules::Findings findings;                       ///< what no machine makes, pins that cannot be kept
    bool usualFloor = false;                        ///< no floor was given and none is kept
    bool floorReplaced = false;                     ///< the floor in the database was another
};

/// Schedules all waiting cut plans and all pieces not yet folded, and keeps the schedule with the floor; anew
/// if another station keeps a schedule meanwhile, so that no pin of it is lost. Errors: a floor, schedule or
/// library file that does not hold, a folding machine that is not known, other stations that schedule again
/// and again. Throws storage::StorageFailure where the database or an order in it does not hold.
[[nodiscard]] Result<Scheduled> scheduleAll(const storage::Database& database,
                                            const ScheduleRequest& request);

/// The schedule last made; nothing before the first. Error: a document there that does not hold.
[[nodiscard]] Result<std::optional<schedule::ScheduleRecord>>
standingSchedule(const storage::Database& database);

/// The floor the shop gave; nothing before the first. Error: a document there that does not hold.
[[nodiscard]] Result<std::optional<documents::Document<schedule::Floor>>>
standingFloor(const storage::Database& database);

/// The floor that is scheduled on: the one the shop gave, or the usual one with its machines. Errors: a
/// floor, stock or library file that does not hold, a machine that is not known.
[[nodiscard]] Result<documents::Document<schedule::Floor>>
floorInUse(const storage::Database& database, const std::vector<std::string>& libraryFolders);

} // namespace lapwright::acts
