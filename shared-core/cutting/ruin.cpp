#include "cutting/ruin.h"

#include "cutting/level_order.h"
#include "cutting/part.h"
#include "cutting/value_correction.h"

#include <algorithm>
#include <numeric>

namespace lapwright::cutting {

Ruin::Ruin(const Instance& instance, RawPlan plan, std::vector<double> worths, std::uint64_t seed,
           NestedPatterns::Listener listener)
    : instance_(instance), plan_(std::move(plan)), worths_(std::move(worths)),
      random_(static_cast<std::mt19937::result_type>(seed)), listener_(std::move(listener))
{
    if (worths_.empty())
        for (const Kind& kind : instance.kinds)
            worths_.push_back(kind.area);
    for (const RawPattern& pattern : plan_)
        waste_.push_back(wasteOf(pattern));
    cost_ = costOf(instance_, plan_);
}

/// The share of its cost that the pattern's blanks are not worth.
double Ruin::wasteOf(const RawPattern& pattern) const
{
    const double worth = worthOf(instance_, pattern, worths_);
    const auto cost = static_cast<double>(instance_.costOf(instance_.stockAt(pattern.stock), pattern.along));
    return cost - worth;
}

/// Every copy is as likely.
std::size_t Ruin::draw()
{
    const auto copy = static_cast<std::int64_t>(random_()) % copiesTo_.back();
    return static_cast<std::size_t>(std::ranges::upper_bound(copiesTo_, copy) - copiesTo_.begin());
}

std::vector<std::size_t> Ruin::pick()
{
    copiesTo_.clear();
    std::int64_t copies = 0;
    for (const RawPattern& pattern : plan_)
        copiesTo_.push_back(copies += pattern.count);
    const auto wanted = static_cast<std::int64_t>(3 + random_() % 8);
    const auto size = static_cast<std::size_t>(std::min(copies, wanted));
    std::vector<std::size_t> picked;
    while (picked.size() < size) {
        // The more wasteful of some drawn at random.
        std::size_t best = draw();
        const std::size_t rivals = random_() % 4;
        for (std::size_t rival = 0; rival < rivals; ++rival) {
            const std::size_t other = draw();
            if (waste_[other] > waste_[best])
                best = other;
        }
        if (std::ranges::count(picked, best) < plan_[best].count)
            picked.push_back(best);
    }
    std::ranges::sort(picked);
    return picked;
}

bool Ruin::step()
{
    if (plan_.empty() || listener_.stop(10))
        return false;
    return recreate(pick());
}

bool Ruin::recreate(const std::vector<std::size_t>& picked)
{
    RawPlan old;
    for (const std::size_t index : picked) {
        old.push_back(plan_[index]);
        old.back().count = 1;
    }
    const Content content = contentOf(instance_, old);
    const Content all = contentOf(instance_, plan_);
    std::vector<std::int64_t> available;
    for (std::size_t stock = 0; stock < instance_.stocks.size(); ++stock) {
        const std::int64_t limit = instance_.stocks[stock].available;
        available.push_back(limit < 0 ? -1 : limit - all.stocks[stock] + content.stocks[stock]);
    }
    const Part part = partOf(instance_, content.kinds, available, Widths::Wanted);
    const std::int64_t limit = costOf(instance_, old) + 1;
    const bool inOrder = LevelOrder::takes(part.instance) && random_() % 8 == 0;
    RawPlan better = inOrder              ? byOrder(part, limit - 1)
                     : random_() % 2 == 0 ? byCorrection(part, limit)
                                          : byRelaxation(part, inPart(part, old));
    if (!better.empty())
        exchange(picked, part.inWhole(std::move(better), instance_));
    return !done_;
}

RawPlan Ruin::byCorrection(const Part& part, std::int64_t limit)
{
    constexpr int plans = 4;
    ValueCorrection search(part.instance, random_(), [this](std::int64_t ticks) { return stopped(ticks); });
    for (int plan = 0; plan < plans && !done_; ++plan)
        if (auto better = search.next(limit))
            return *better;
    return {};
}

RawPlan Ruin::byOrder(const Part& part, std::int64_t limit)
{
    constexpr int changes = 2'000;
    LevelOrder search(part.instance, random_(), [this](std::int64_t ticks) { return stopped(ticks); });
    return search.search(changes, limit).value_or(RawPlan());
}

RawPlan Ruin::byRelaxation(const Part& part, const RawPlan& old)
{
    RawPlan better;
    NestedPatterns::Listener listener;
    listener.stop = [this](std::int64_t ticks) { return stopped(ticks); };
    listener.plan = [&better](const RawPlan& plan) {
        better = plan;
        return true;
    };
    NestedPatterns search(part.instance, old, std::nullopt, {random_(), 1, MasterProgram::Columns::Whole},
                          std::move(listener));
    if (search.relax()) {
        constexpr int attempts = 3;
        for (int attempt = 0; attempt < attempts && better.empty() && search.round(attempt);)
            ++attempt;
    }
    return better;
}

bool Ruin::stopped(std::int64_t ticks)
{
    done_ = done_ || listener_.stop(ticks);
    return done_;
}

void Ruin::exchange(const std::vector<std::size_t>& picked, const RawPlan& better)
{
    for (std::size_t at = picked.size(); at-- > 0;) {
        if (--plan_[picked[at]].count > 0)
            continue;
        plan_.erase(plan_.begin() + static_cast<std::ptrdiff_t>(picked[at]));
        waste_.erase(waste_.begin() + static_cast<std::ptrdiff_t>(picked[at]));
    }
    for (const RawPattern& pattern : better) {
        plan_.push_back(pattern);
        waste_.push_back(wasteOf(pattern));
    }
    const std::int64_t cost = costOf(instance_, plan_);
    if (cost < cost_)
        done_ = listener_.plan(plan_) || done_;
    cost_ = cost;
}

} // namespace lapwright::cutting
