#include "cutting/watch.h"

#include <algorithm>

namespace lapwright::cutting {

Watch::Watch(const Settings& settings, const Control& control) : settings_(settings), control_(control)
{
    if (control_.clock)
        start_ = now_ = nextReport_ = control_.clock();
}

std::int64_t Watch::ticksLeft() const
{
    return std::max<std::int64_t>(0, settings_.workLimit * ticksPerWork - ticks_);
}

void Watch::report()
{
    if (!control_.progress || ending_)
        return;
    constexpr std::chrono::milliseconds between(50);
    if (control_.clock && now_ < nextReport_)
        return;
    nextReport_ = now_ + between;
    progress_.work = work();
    if (!control_.progress(progress_))
        ending_ = Ending::Cancelled;
}

bool Watch::interrupted()
{
    if (ending_)
        return true;
    if (control_.clock)
        now_ = control_.clock();
    report();
    if (ending_ || !control_.clock || !settings_.timeLimit)
        return ending_.has_value();
    const std::chrono::microseconds limit = *settings_.timeLimit;
    if (now_ - start_ >= limit)
        ending_ = Ending::TimeLimit;
    return now_ - start_ >=
           std::chrono::microseconds(static_cast<std::int64_t>(share_ * static_cast<double>(limit.count())));
}

bool Watch::over(std::int64_t ticks)
{
    ticks_ += ticks;
    const bool out = interrupted();
    if (!ending_ && ticksLeft() == 0)
        ending_ = Ending::WorkLimit;
    const double limit = static_cast<double>(settings_.workLimit) * ticksPerWork;
    return out || ending_ || static_cast<double>(ticks_) >= share_ * limit;
}

void Watch::show(std::int64_t value, std::int64_t bound)
{
    progress_.value = value;
    progress_.bound = bound;
}

void Watch::enter(std::string_view phase)
{
    progress_.phase = phase;
    nextReport_ = now_;
}

} // namespace lapwright::cutting
