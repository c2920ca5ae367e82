#include "cutting/level_order.h"

#include <algorithm>
#include <limits>
#include <map>

namespace lapwright::cutting {

bool LevelOrder::takes(const Instance& instance)
{
    constexpr std::int64_t mostBlanks = 400;
    std::int64_t blanks = 0;
    for (const Kind& kind : instance.kinds)
        blanks += kind.demand;
    return instance.stocks.size() == 1 && instance.stocks.front().coil &&
           instance.stocks.front().available < 0 && blanks <= mostBlanks;
}

LevelOrder::LevelOrder(const Instance& instance, std::uint64_t seed, Stop stop)
    : instance_(instance), frame_(instance.frames.front()),
      random_(static_cast<std::mt19937::result_type>(seed)), stop_(std::move(stop)),
      waysOfKind_(instance.kinds.size())
{
    const StockClass& row = instance.stocks.front();
    for (std::size_t at = 0; at < frame_.placements.size(); ++at) {
        const Placement& placement = frame_.placements[at];
        if (placement.across <= row.across && placement.along <= row.along)
            waysOfKind_[static_cast<std::size_t>(placement.kind)].push_back(static_cast<int>(at));
    }
}

/// Longest first, wider first among equals, blurred a little.
void LevelOrder::startAnew()
{
    std::vector<std::pair<double, int>> keyed;
    for (std::size_t kind = 0; kind < instance_.kinds.size(); ++kind)
        for (std::int64_t copy = 0; copy < instance_.kinds[kind].demand; ++copy) {
            const int at = waysOfKind_[kind][random_() % waysOfKind_[kind].size()];
            const Placement& placement = frame_.placements[static_cast<std::size_t>(at)];
            const double blur = std::uniform_real_distribution(0.98, 1.02)(random_);
            keyed.emplace_back(-placement.along * blur - 1e-3 * placement.across * blur, at);
        }
    std::ranges::sort(keyed);
    order_.clear();
    for (const auto& [key, at] : keyed)
        order_.push_back(at);
}

bool LevelOrder::layInto(Level& level, int at) const
{
    const Placement& placement = frame_.placements[static_cast<std::size_t>(at)];
    if (placement.along > level.length)
        return false;
    for (Strip& strip : level.strips) {
        const bool wide = instance_.patterns == PatternClass::Exact ? strip.width == placement.across
                                                                    : strip.width >= placement.across;
        if (!wide || strip.left < placement.along)
            continue;
        strip.left -= placement.along;
        strip.placements.push_back(at);
        return true;
    }
    if (level.left < placement.across || std::cmp_greater_equal(level.strips.size(), instance_.mostStrips))
        return false;
    level.left -= placement.across;
    level.strips.push_back({placement.across, level.length - placement.along, {at}});
    return true;
}

double LevelOrder::lay()
{
    used_ = 0;
    for (const int at : order_) {
        std::size_t level = 0;
        while (level < used_ && !layInto(levels_[level], at))
            ++level;
        if (level < used_)
            continue;
        if (used_ == levels_.size())
            levels_.emplace_back();
        Level& opened = levels_[used_++];
        opened.strips.clear();
        opened.length = frame_.placements[static_cast<std::size_t>(at)].along;
        opened.left = instance_.stocks.front().across;
        layInto(opened, at);
    }
    double cost = 0.0;
    for (std::size_t level = 0; level < used_; ++level) {
        const double share = static_cast<double>(levels_[level].left) / instance_.stocks.front().across;
        cost += static_cast<double>(levels_[level].length) * (1.0 - 0.02 * share * share);
    }
    return cost;
}

/// Two blanks change places or one moves; one that may turn may do so.
void LevelOrder::change()
{
    const std::size_t from = random_() % order_.size(), to = random_() % order_.size();
    const auto begin = order_.begin();
    const auto f = static_cast<std::ptrdiff_t>(from), t = static_cast<std::ptrdiff_t>(to);
    const auto& ways =
        waysOfKind_[static_cast<std::size_t>(frame_.placements[static_cast<std::size_t>(order_[from])].kind)];
    if (ways.size() > 1 && random_() % 3 == 0)
        order_[from] = ways[random_() % ways.size()];
    if (random_() % 2 == 0)
        std::swap(order_[from], order_[to]);
    else if (from < to)
        std::rotate(begin + f, begin + f + 1, begin + t + 1);
    else
        std::rotate(begin + t, begin + f, begin + f + 1);
}

RawPlan LevelOrder::plan() const
{
    RawPlan plan;
    for (std::size_t level = 0; level < used_; ++level) {
        RawPattern pattern{0, 0, 1, {}};
        for (const Strip& strip : levels_[level].strips) {
            std::map<int, int, std::greater<>> counts;
            for (const int at : strip.placements)
                ++counts[at];
            RawStrip raw{frame_.widthOfPlacement[static_cast<std::size_t>(counts.begin()->first)], {}};
            raw.pieces.assign(counts.begin(), counts.end());
            pattern.along = std::max(pattern.along, takenBy(frame_, raw));
            pattern.strips.push_back(std::move(raw));
        }
        plan.push_back(std::move(pattern));
    }
    return plan;
}

std::optional<RawPlan> LevelOrder::search(int changes, std::int64_t limit)
{
    constexpr std::size_t memory = 50; // late acceptance: no dearer than this many changes ago
    startAnew();
    double cost = lay();
    std::vector<double> before(memory, cost);
    std::optional<RawPlan> best;
    for (int done = 0; done < changes; ++done) {
        constexpr int between = 64;
        if (done % between == 0 && stop_(between * static_cast<std::int64_t>(order_.size()) / 20))
            break;
        const std::vector<int> kept = order_;
        change();
        const double next = lay();
        double& late = before[static_cast<std::size_t>(done) % memory];
        if (next > late && next > cost) {
            order_ = kept;
            continue;
        }
        cost = next;
        late = std::min(late, cost);
        RawPlan found = plan();
        if (const std::int64_t price = lapwright::cutting::costOf(instance_, found); price < limit) {
            limit = price;
            best = std::move(found);
        }
    }
    return best;
}

} // namespace lapwright::cutting
