#pragma once

#include "schedule/hours.h"

#include <vector>

namespace lapwright::schedule {

/// From `from` on and before `to`.
struct Interval {
    Moment from;
    Moment to;

    friend bool operator==(const Interval&, const Interval&) = default;
};

/// A machine's hours laid end to end. Work is placed on this axis, where it never pauses, and read back as
/// moments: what is not finished at the end of a shift goes on at the beginning of the next.
class Calendar {
public:
    Calendar() = default;
    /// Precondition: in order, none empty, none over another; intervals that touch are joined.
    explicit Calendar(const std::vector<Interval>& worked);

    /// How much is worked before `moment`.
    [[nodiscard]] Duration workedBy(Moment moment) const;
    /// When work begins that has `worked` before it: never the end of a shift. Precondition: worked <
    /// total().
    [[nodiscard]] Moment beginsAt(Duration worked) const;
    /// When work ends that fills `worked`: never the beginning of a shift, but for nothing worked at all.
    /// Precondition: worked <= total().
    [[nodiscard]] Moment endsAt(Duration worked) const;
    [[nodiscard]] Duration total() const { return before_.empty() ? Duration() : before_.back(); }
    [[nodiscard]] const std::vector<Interval>& worked() const { return worked_; }
    [[nodiscard]] bool isOpen(Moment moment) const;

private:
    std::vector<Interval> worked_;
    std::vector<Duration> before_; ///< worked before each interval, and at last all of it
};

/// The hours from `begin` until `work` of them lie after `from`. Error: they do not within twenty years.
/// Precondition: faultsOf(hours) is empty and begin <= from.
[[nodiscard]] Result<Calendar> calendarOf(const Hours& hours, Moment begin, Moment from, Duration work);

/// Open whenever one of them is.
[[nodiscard]] Calendar unionOf(const std::vector<const Calendar*>& calendars);

} // namespace lapwright::schedule
