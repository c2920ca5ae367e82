#include "schedule/hours.h"

#include <algorithm>
#include <set>

namespace lapwright::schedule {

namespace {

void checkDay(const std::vector<Shift>& shifts, const std::string& place, std::vector<Error>& errors)
{
    Duration last;
    for (std::size_t index = 0; index < shifts.size(); ++index) {
        const Shift& shift = shifts[index];
        if (shift.from < last || shift.to <= shift.from || shift.to > Duration::days(1))
            errors.push_back({place + "/" + std::to_string(index),
                              writeTimeOfDay(shift.from) + "-" + writeTimeOfDay(shift.to),
                              "shifts of one day in order, each ending after it begins"});
        last = shift.to;
    }
}

} // namespace

const std::vector<Shift>& Hours::on(Date date) const
{
    for (const DayException& exception : exceptions)
        if (exception.date == date)
            return exception.shifts;
    return week[static_cast<std::size_t>(weekdayOf(date))];
}

std::vector<Error> faultsOf(const Hours& hours)
{
    std::vector<Error> errors;
    for (std::size_t day = 0; day < hours.week.size(); ++day)
        checkDay(hours.week[day], weekdayNames()[day], errors);
    std::set<Date> seen;
    for (std::size_t index = 0; index < hours.exceptions.size(); ++index) {
        const std::string place = "exceptions/" + std::to_string(index);
        checkDay(hours.exceptions[index].shifts, place, errors);
        if (!seen.insert(hours.exceptions[index].date).second)
            errors.push_back({place, write(hours.exceptions[index].date) + " again", "each date only once"});
    }
    if (std::all_of(hours.week.begin(), hours.week.end(), [](const auto& day) { return day.empty(); }))
        errors.push_back({"", "a week without hours", "at least one shift on one weekday"});
    return errors;
}

const std::array<const char*, 7>& weekdayNames()
{
    static const std::array<const char*, 7> names = {"monday", "tuesday",  "wednesday", "thursday",
                                                     "friday", "saturday", "sunday"};
    return names;
}

} // namespace lapwright::schedule
