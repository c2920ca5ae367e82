#include "schedule/calendar.h"

#include <algorithm>

namespace lapwright::schedule {

Calendar::Calendar(const std::vector<Interval>& worked)
{
    Duration sum;
    for (const Interval& interval : worked) {
        if (!worked_.empty() && worked_.back().to == interval.from) {
            worked_.back().to = interval.to;
        } else {
            worked_.push_back(interval);
            before_.push_back(sum);
        }
        sum += interval.to - interval.from;
    }
    before_.push_back(sum);
}

Duration Calendar::workedBy(Moment moment) const
{
    const auto after =
        std::upper_bound(worked_.begin(), worked_.end(), moment,
                         [](Moment wanted, const Interval& interval) { return wanted < interval.from; });
    if (after == worked_.begin())
        return {};
    const auto index = static_cast<std::size_t>(after - worked_.begin() - 1);
    return before_[index] + (std::min(moment, worked_[index].to) - worked_[index].from);
}

Moment Calendar::beginsAt(Duration worked) const
{
    const auto after = std::upper_bound(before_.begin(), before_.end(), worked);
    const auto index = static_cast<std::size_t>(after - before_.begin() - 1);
    return worked_[index].from + (worked - before_[index]);
}

Moment Calendar::endsAt(Duration worked) const
{
    const auto after = std::lower_bound(before_.begin(), before_.end(), worked);
    const auto index = static_cast<std::size_t>(after == before_.begin() ? 0 : after - before_.begin() - 1);
    return worked_[index].from + (worked - before_[index]);
}

bool Calendar::isOpen(Moment moment) const
{
    return std::any_of(worked_.begin(), worked_.end(), [&](const Interval& interval) {
        return interval.from <= moment && moment < interval.to;
    });
}

Result<Calendar> calendarOf(const Hours& hours, Moment begin, Moment from, Duration work)
{
    constexpr int mostDays = 20 * 366;
    std::vector<Interval> worked;
    Duration after;
    const std::int64_t first = daysSinceEpoch(dateOf(begin));
    const std::int64_t last = daysSinceEpoch(dateOf(from)) + mostDays;
    for (std::int64_t day = first; day <= last && after < work; ++day) {
        const Date date = dateAfterEpoch(day);
        for (const Shift& shift : hours.on(date)) {
            const Interval open{std::max(begin, momentOf(date, shift.from)), momentOf(date, shift.to)};
            if (open.from >= open.to)
                continue;
            worked.push_back(open);
            if (open.to > from)
                after += open.to - std::max(open.from, from);
        }
    }
    if (after < work || worked.empty())
        return Error{"", inWords(after) + " of work within twenty years", inWords(work)};
    return Calendar(worked);
}

Calendar unionOf(const std::vector<const Calendar*>& calendars)
{
    std::vector<Interval> all;
    for (const Calendar* calendar : calendars)
        all.insert(all.end(), calendar->worked().begin(), calendar->worked().end());
    std::sort(all.begin(), all.end(),
              [](const Interval& left, const Interval& right) { return left.from < right.from; });
    std::vector<Interval> merged;
    for (const Interval& interval : all)
        if (!merged.empty() && interval.from <= merged.back().to)
            merged.back().to = std::max(merged.back().to, interval.to);
        else
            merged.push_back(interval);
    return Calendar(merged);
}

} // namespace lapwright::schedule
