#include "cutting/value_correction.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace lapwright::cutting {

ValueCorrection::ValueCorrection(const Instance& instance, std::uint64_t seed, Stop stop)
    : instance_(instance), random_(static_cast<std::mt19937::result_type>(seed)), stop_(std::move(stop)),
      pricing_(instance), price_(std::numeric_limits<double>::infinity()), areas_(instance.kinds.size(), 0.0)
{
    for (const StockClass& row : instance.stocks)
        price_ =
            std::min(price_, static_cast<double>(instance.costOf(row, row.along)) / row.along / row.across);
    sides_.resize(instance.kinds.size());
    for (const StockClass& row : instance.stocks)
        for (const Placement& placement : instance.frames[static_cast<std::size_t>(row.frame)].placements) {
            const auto kind = static_cast<std::size_t>(placement.kind);
            areas_[kind] = static_cast<double>(placement.across) * placement.along;
            sides_[kind] = {static_cast<double>(placement.across) / row.across,
                            static_cast<double>(placement.along) / row.along};
        }
}

/// Long and wide blanks are harder to place than their area says, how much so depends: each start tries
/// another measure of it, the first the area alone.
void ValueCorrection::startAnew()
{
    const double across = plans_ == 0 ? 0.0 : std::uniform_real_distribution(0.0, 0.3)(random_);
    const double along = plans_ == 0 ? 0.03 : std::uniform_real_distribution(0.0, 1.0)(random_);
    shapes_.clear();
    worths_.clear();
    for (std::size_t kind = 0; kind < areas_.size(); ++kind) {
        shapes_.push_back(std::pow(sides_[kind].first, across) * std::pow(sides_[kind].second, along));
        worths_.push_back(price_ * areas_[kind] * shapes_[kind]);
    }
}

/// Of all stock still at hand and all lengths of level, the pattern of most worth for its cost.
ValueCorrection::Choice ValueCorrection::choose() const
{
    Choice best;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        const int stock = static_cast<int>(index);
        const std::int64_t left =
            row.available < 0 ? std::numeric_limits<int>::max() : row.available - used_[index];
        if (left <= 0)
            continue;
        const int longest = row.coil ? static_cast<int>(std::min<std::int64_t>(row.along, left)) : row.along;
        double before = 0.0;
        Choice here;
        for (int along = row.coil ? 1 : longest; along <= longest; ++along) {
            const double value = pricing_.valueOf(stock, along);
            if (value <= before)
                continue;
            before = value;
            const double ratio = value / static_cast<double>(instance_.costOf(row, along));
            if (ratio > here.ratio)
                here = {stock, along, ratio};
        }
        if (here.ratio > 0.0 && instance_.problem->creditsRemnants())
            here.ratio = pricing_.valueOf(stock, here.along) /
                         static_cast<double>(std::max<std::int64_t>(
                             1, netCostOf(instance_, pricing_.patternOf(stock, here.along))));
        if (here.ratio > best.ratio)
            best = here;
    }
    return best;
}

std::int64_t ValueCorrection::repeats(const RawPattern& pattern) const
{
    const StockClass& row = instance_.stockAt(pattern.stock);
    const auto s = static_cast<std::size_t>(pattern.stock);
    std::int64_t times = row.available < 0 ? std::numeric_limits<std::int64_t>::max()
                                           : (row.available - used_[s]) / (row.coil ? pattern.along : 1);
    std::map<int, std::int64_t> need;
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces)
            need[instance_.frameAt(pattern.stock).placements[static_cast<std::size_t>(placement)].kind] +=
                count;
    for (const auto& [kind, count] : need)
        times = std::min(times, residual_[static_cast<std::size_t>(kind)] / count);
    return times;
}

/// A blank of the pattern was worth its share of the cost; the worth it goes on with lies between that and
/// before.
void ValueCorrection::correct(const RawPattern& pattern)
{
    const StockClass& row = instance_.stockAt(pattern.stock);
    const Frame& frame = instance_.frameAt(pattern.stock);
    std::map<int, int> counts;
    double area = 0.0;
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces) {
            const int kind = frame.placements[static_cast<std::size_t>(placement)].kind;
            counts[kind] += count;
            area += count * areas_[static_cast<std::size_t>(kind)];
        }
    const double price = static_cast<double>(instance_.costOf(row, pattern.along)) / area;
    for (const auto& [kind, count] : counts) {
        const auto k = static_cast<std::size_t>(kind);
        const double share = std::uniform_real_distribution(0.1, 0.6)(random_) * count /
                             static_cast<double>(count + residual_[k]);
        const double found = price * areas_[k] * shapes_[k];
        worths_[k] = (1.0 - share) * worths_[k] + share * found;
    }
}

std::optional<RawPlan> ValueCorrection::next(std::int64_t limit)
{
    constexpr int plansFromOneStart = 12;
    if (plans_ % plansFromOneStart == 0)
        startAnew();
    ++plans_;
    residual_.clear();
    for (const Kind& kind : instance_.kinds)
        residual_.push_back(kind.demand);
    used_.assign(instance_.stocks.size(), 0);
    RawPlan plan;
    while (std::ranges::any_of(residual_, [](std::int64_t left) { return left > 0; })) {
        pricing_.fill(worths_, residual_);
        if (stop_(pricing_.ticks()))
            return std::nullopt;
        const Choice choice = choose();
        if (choice.stock < 0)
            return std::nullopt;
        RawPattern pattern = pricing_.patternOf(choice.stock, choice.along);
        pattern.count = repeats(pattern);
        if (pattern.count <= 0)
            return std::nullopt;
        const StockClass& row = instance_.stockAt(pattern.stock);
        const Frame& frame = instance_.frameAt(pattern.stock);
        for (const RawStrip& strip : pattern.strips)
            for (const auto& [placement, count] : strip.pieces)
                residual_[static_cast<std::size_t>(
                    frame.placements[static_cast<std::size_t>(placement)].kind)] -= count * pattern.count;
        used_[static_cast<std::size_t>(pattern.stock)] += pattern.count * (row.coil ? pattern.along : 1);
        correct(pattern);
        plan.push_back(std::move(pattern));
    }
    if (lapwright::cutting::costOf(instance_, plan) >= limit)
        return std::nullopt;
    return plan;
}

} // namespace lapwright::cutting
