#pragma once

#include "schedule/civil.h"

#include <array>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// A stretch of work within one day, from midnight at most to midnight.
struct Shift {
    Duration from;
    Duration to;

    friend bool operator==(const Shift&, const Shift&) = default;
};

/// A day on which the hours are not those of its weekday; none: closed.
struct DayException {
    Date date;
    std::vector<Shift> shifts;
    std::string reason;

    friend bool operator==(const DayException&, const DayException&) = default;
};

/// When somebody is there to work.
struct Hours {
    std::array<std::vector<Shift>, 7> week; ///< by Weekday; each day's shifts in order, none over another
    std::vector<DayException> exceptions;   ///< at most one a date

    [[nodiscard]] const std::vector<Shift>& on(Date date) const;

    friend bool operator==(const Hours&, const Hours&) = default;
};

/// What is wrong with the hours: shifts out of order, empty or past midnight, a date twice, a week without
/// work. Places: "monday/0", "exceptions/3".
[[nodiscard]] std::vector<Error> faultsOf(const Hours& hours);

/// "monday" … as files name them.
[[nodiscard]] const std::array<const char*, 7>& weekdayNames();

} // namespace lapwright::schedule
