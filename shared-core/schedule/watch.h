#pragma once

#include "schedule/settings.h"

#include <optional>

namespace lapwright::schedule {

/// Counts the work, asks the caller whether to go on, and knows when the limit is reached.
class Watch {
public:
    static constexpr std::int64_t placedPerWork = 1'000;

    Watch(const Settings& settings, const GoOn& goOn, const Bound& bound)
        : limit_(settings.workLimit * placedPerWork), goOn_(goOn)
    {
        progress_.bound = bound;
    }

    void enter(std::string_view phase, const Score& best)
    {
        progress_.phase = phase;
        progress_.best = best;
    }
    /// Counts `placed` more and says whether the search has to end.
    [[nodiscard]] bool over(std::int64_t placed, const Score& best)
    {
        placed_ += placed;
        progress_.best = best;
        if (placed_ >= nextReport_) {
            nextReport_ = placed_ + reportEvery;
            progress_.work = work();
            if (goOn_ && !goOn_(progress_))
                ending_ = Ending::Cancelled;
        }
        if (!ending_ && placed_ >= limit_)
            ending_ = Ending::WorkLimit;
        return ending_.has_value();
    }
    [[nodiscard]] std::optional<Ending> ending() const { return ending_; }
    [[nodiscard]] std::int64_t work() const { return placed_ / placedPerWork; }
    [[nodiscard]] std::int64_t placed() const { return placed_; }
    [[nodiscard]] std::int64_t left() const { return limit_ - placed_; }

private:
    static constexpr std::int64_t reportEvery = 20'000;

    std::int64_t limit_;
    const GoOn& goOn_;
    Progress progress_;
    std::int64_t placed_ = 0;
    std::int64_t nextReport_ = 0;
    std::optional<Ending> ending_;
};

} // namespace lapwright::schedule
