#pragma once

#include "schedule/problem.h"

#include <vector>

namespace lapwright::schedule {

/// The machines of a stage taken together, as if all could work on anything at once.
class Capacity {
public:
    Capacity(const Problem& problem, Stage stage);

    /// Seconds all of them work before `moment`, machines that are not free yet left out.
    [[nodiscard]] std::int64_t workedBy(Moment moment) const;
    /// The first moment by which they work `seconds` after `from`.
    [[nodiscard]] Moment after(Moment from, std::int64_t seconds) const;

private:
    struct Open {
        const Calendar* calendar;
        Moment from;
    };
    std::vector<Open> machines_;
    Moment begin_;
    Moment end_;
};

/// When each task could begin at the earliest with the shop to itself: its release and, for a lot, its first
/// blanks.
[[nodiscard]] std::vector<Moment> earliestBegins(const Problem& problem);
/// When each task could be done at the earliest, likewise.
[[nodiscard]] std::vector<Moment> earliestEnds(const Problem& problem);

} // namespace lapwright::schedule
