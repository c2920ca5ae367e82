#pragma once

#include "cutting/plan.h"
#include "cutting/settings.h"

#include <optional>

namespace lapwright::cutting {

/// Counts the work, asks the caller whether to go on, and knows when a limit is reached. Ticks are
/// thousandths of the unit of Settings::workLimit.
class Watch {
public:
    static constexpr std::int64_t ticksPerWork = 1'000;

    Watch(const Settings& settings, const Control& control);

    /// The share of all limits that may be used up before over() says so for the present phase; the limits
    /// themselves end the whole search.
    void allow(double share) { share_ = share; }
    /// Adds work, reports where it is time to, and says whether the phase has to end.
    [[nodiscard]] bool over(std::int64_t ticks);
    /// The same for cancel and time alone: what may depend on the number of threads.
    [[nodiscard]] bool interrupted();
    /// What the caller is shown.
    void show(std::int64_t value, std::int64_t bound);
    void enter(std::string_view phase);

    /// Why the whole search has to end, if it has to.
    [[nodiscard]] std::optional<Ending> ending() const { return ending_; }
    [[nodiscard]] std::int64_t work() const { return ticks_ / ticksPerWork; }
    [[nodiscard]] std::int64_t ticksLeft() const;

private:
    void report();

    const Settings& settings_;
    const Control& control_;
    std::chrono::microseconds start_{}, now_{}, nextReport_{};
    std::int64_t ticks_ = 0;
    double share_ = 1.0;
    Progress progress_;
    std::optional<Ending> ending_;
};

} // namespace lapwright::cutting
