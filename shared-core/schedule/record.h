#pragma once

#include "schedule/schedule.h"
#include "schedule/work.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// A schedule by names alone, so that it can be kept, drawn and pinned wherever it goes.
namespace lapwright::schedule {

struct RecordedMachine {
    std::string id;
    std::string name;
    Stage stage = Stage::Cut;
    std::vector<Interval> worked; ///< its hours from the begin through the day of the last end

    friend bool operator==(const RecordedMachine&, const RecordedMachine&) = default;
};

struct RecordedTask {
    std::string key; ///< what pins name it by
    std::string name;
    std::string machine; ///< id
    std::int64_t units = 1;
    std::optional<std::string> order; ///< of a lot
    std::optional<CutOf> cut;         ///< of a cut task
    std::string fitting;              ///< where it is changed before the task, to what
    std::string setting;
    Moment setupFrom;
    Moment start;
    Moment end;
    std::optional<Moment> due;
    bool pinned = false;
    std::string late; ///< why, in words; empty: in time

    friend bool operator==(const RecordedTask&, const RecordedTask&) = default;
};

struct RecordedDelivery {
    std::string order;
    std::string name;
    std::optional<Moment> due;
    Moment done;
    std::int64_t weight = 1;

    friend bool operator==(const RecordedDelivery&, const RecordedDelivery&) = default;
};

/// What one way of working comes to.
struct RecordedScore {
    Duration makespan;
    std::int64_t weightedLateness = 0; ///< seconds × weight
    std::int64_t lateDeliveries = 0;
    std::int64_t fittings = 0;
    std::int64_t settings = 0;
    Duration makingReady;

    friend bool operator==(const RecordedScore&, const RecordedScore&) = default;
};

struct ScheduleRecord {
    Moment from;
    std::vector<RecordedMachine> machines;
    std::vector<RecordedTask> tasks; ///< machine after machine, each by time
    std::vector<RecordedDelivery> deliveries;
    std::vector<NamedPin> pins;
    RecordedScore score;
    Duration makespanBound;
    std::int64_t weightedLatenessBound = 0;
    bool provenBest = false;
    std::string method;
    RecordedScore firstCome;
    RecordedScore shortest;

    friend bool operator==(const ScheduleRecord&, const ScheduleRecord&) = default;
};

/// Precondition: `schedule` is one of `problem`. A late reason's values stand in its words. `cuts`: what the
/// cut tasks cut, by key.
[[nodiscard]] ScheduleRecord recordOf(const Problem& problem, const Schedule& schedule,
                                      const std::map<std::string, CutOf>& cuts = {});

/// What a record from outside says that cannot be: a task's machine that is not there, a task twice,
/// ends before begins. Places are those of the document.
[[nodiscard]] std::vector<Error> faultsOf(const ScheduleRecord& record);

} // namespace lapwright::schedule
