#include "drawing/gantt_scale.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

using schedule::Duration;
using schedule::Interval;
using schedule::Moment;

namespace {

constexpr double headHeight = 22.0;
constexpr double rowHeight = 15.0;

} // namespace

GanttScale::GanttScale(const schedule::ScheduleRecord& schedule, const schedule::Date& day, Length width)
    : dayBegins_(schedule::momentOf(day, Duration())), dayEnds_(dayBegins_ + Duration::days(1)),
      rows_(schedule.machines.size())
{
    Moment opens = dayEnds_, closes = dayBegins_;
    for (const schedule::RecordedMachine& machine : schedule.machines)
        for (const Interval& part : workedParts(machine, dayBegins_, dayEnds_)) {
            opens = std::min(opens, part.from);
            closes = std::max(closes, part.to);
        }
    if (opens >= closes) {
        opens = dayBegins_;
        closes = dayEnds_;
    }
    const std::int64_t first = (opens - dayBegins_).inSeconds() / 3'600;
    const std::int64_t last = ((closes - dayBegins_).inSeconds() + 3'599) / 3'600;
    from_ = dayBegins_ + Duration::hours(first);
    hours_ = std::max<std::int64_t>(1, last - first);
    perSecond_ = (inMillimetres(width) - 2.0 * margin - nameRoom) / static_cast<double>(hours_ * 3'600);
}

double GanttScale::x(Moment moment) const
{
    const Duration along = std::clamp(moment - from_, Duration(), Duration::hours(hours_));
    return margin + nameRoom + static_cast<double>(along.inSeconds()) * perSecond_;
}

double GanttScale::rowTop(std::size_t row) const
{
    return margin + headHeight + static_cast<double>(row) * rowHeight;
}

std::optional<Moment> GanttScale::momentAt(double x) const
{
    const auto seconds = static_cast<std::int64_t>(std::floor((x - margin - nameRoom) / perSecond_));
    if (seconds < 0 || seconds >= hours_ * 3'600)
        return std::nullopt;
    return from_ + Duration::seconds(seconds);
}

std::optional<std::size_t> GanttScale::rowAt(double y) const
{
    const auto row = static_cast<std::int64_t>(std::floor((y - rowTop(0)) / rowHeight));
    if (row < 0 || row >= static_cast<std::int64_t>(rows_))
        return std::nullopt;
    return static_cast<std::size_t>(row);
}

bool GanttScale::shows(const schedule::RecordedTask& task) const
{
    return task.end > dayBegins_ && task.setupFrom < dayEnds_;
}

std::vector<Interval> GanttScale::workedParts(const schedule::RecordedMachine& machine, Moment from,
                                              Moment to) const
{
    std::vector<Interval> parts;
    for (const Interval& worked : machine.worked) {
        const Moment first = std::max({from, worked.from, dayBegins_});
        const Moment last = std::min({to, worked.to, dayEnds_});
        if (first < last)
            parts.push_back({first, last});
    }
    return parts;
}

} // namespace lapwright::drawing
