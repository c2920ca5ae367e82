#pragma once

#include "schedule/timing.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Two machines, each job first on one, then on the other.
namespace lapwright::schedule {

/// Seconds a job takes on the first and on the second machine, and how long after its begin on the first it
/// may begin on the second without ever waiting for its own pieces. Without transfer of parts the lag is
/// `first`.
struct TwoStageJob {
    std::int64_t first = 0;
    std::int64_t second = 0;
    std::int64_t lag = 0; ///< at most `first`, at least first − second; may be negative
};

/// The order of least makespan: jobs with first < second by growing lag, then the others by falling
/// second + lag − first; ties keep the order given. S. M. Johnson, "Optimal two- and three-stage production
/// schedules with setup times included", Naval Research Logistics Quarterly 1 (1954) 61-68; with lags L. G.
/// Mitten, "Sequencing n jobs on two machines with arbitrary time lags", Management Science 5 (1959) 293-298.
/// With lags within the limits above no schedule that passes jobs is better: a job taken behind another on
/// the first machine only has to be there when that other's work on the second begins.
[[nodiscard]] std::vector<std::size_t> johnsonOrder(const std::vector<TwoStageJob>& jobs);

/// When the second machine is done if both do the jobs in this order, from 0.
[[nodiscard]] std::int64_t makespanOf(const std::vector<TwoStageJob>& jobs,
                                      const std::vector<std::size_t>& order);

/// The sequences of Johnson's rule where it gives the least makespan of all: one machine a stage with the
/// same hours, free at once; no setup that depends on the order; no releases or pins; each cut task for at
/// most one lot and each lot from at most one cut task.
[[nodiscard]] std::optional<Sequences> johnsonSchedule(const Problem& problem);

/// A bound on the makespan where one machine of each stage does all: links between cut tasks and lots are
/// dropped until none has two, the machines work whenever either does, and every setup that must be made once
/// may be made at any time. Missing where a stage has several machines.
[[nodiscard]] std::optional<Duration> johnsonBound(const Problem& problem);

} // namespace lapwright::schedule
