#pragma once

#include "measure/length.h"
#include "schedule/record.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::drawing {

/// Where the hours and the machines of one day lie on the picture of a schedule: the hours along it, a row
/// for each machine down it. Millimetres of the page.
class GanttScale {
public:
    static constexpr double margin = 8.0;
    static constexpr double nameRoom = 36.0; ///< between the margin and the first hour

    /// On a page of that width, from the first machine that opens to the last that closes that day, to whole
    /// hours; the whole day where none opens.
    GanttScale(const schedule::ScheduleRecord& schedule, const schedule::Date& day, Length width);

    [[nodiscard]] schedule::Moment dayBegins() const { return dayBegins_; }
    [[nodiscard]] schedule::Moment dayEnds() const { return dayEnds_; }
    /// Of the hours that are shown.
    [[nodiscard]] schedule::Moment from() const { return from_; }
    [[nodiscard]] schedule::Moment to() const { return from_ + schedule::Duration::hours(hours_); }
    /// How many are shown.
    [[nodiscard]] std::int64_t hours() const { return hours_; }
    [[nodiscard]] double perHour() const { return perSecond_ * 3'600.0; }

    /// What lies before the hours that are shown is at their left end, what lies after them at the right.
    [[nodiscard]] double x(schedule::Moment moment) const;
    [[nodiscard]] double rowTop(std::size_t row) const;
    /// Nothing beside the hours that are shown.
    [[nodiscard]] std::optional<schedule::Moment> momentAt(double x) const;
    /// By index of the schedule's machines; nothing beside their rows.
    [[nodiscard]] std::optional<std::size_t> rowAt(double y) const;

    /// Whether it is made ready or worked on that day.
    [[nodiscard]] bool shows(const schedule::RecordedTask& task) const;
    /// The parts of [from, to) that the machine works that day.
    [[nodiscard]] std::vector<schedule::Interval>
    workedParts(const schedule::RecordedMachine& machine, schedule::Moment from, schedule::Moment to) const;

private:
    schedule::Moment dayBegins_, dayEnds_, from_;
    std::int64_t hours_ = 1;
    double perSecond_ = 1.0;
    std::size_t rows_ = 0;
};

} // namespace lapwright::drawing
