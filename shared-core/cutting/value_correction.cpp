#include "cutting/value_correction.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace lapwright::cutting {

namespace {

constexpr int plansFromOneStart = 4;

} // namespace

ValueCorrection::ValueCorrection(const Instance& instance, std::uint64_t seed, Stop stop)
    : instance_(instance), random_(static_cast<std::mt19937::result_type>(seed)), stop_(std::move(stop)),
      pricing_(instance, LevelTable::Lengths::Few), price_(std::numeric_limits<double>::infinity()),
      areas_(instance.kinds.size(), 0.0)
{
    for (const StockClass& row : instance.stocks)
        price_ =
            std::min(price_, static_cast<double>(instance.costOf(row, row.along)) / row.along / row.across);
    for (std::size_t frame = 0; frame < instance.frames.size(); ++frame) {
        int longest = 0;
        for (const StockClass& row : instance.stocks)
            longest = std::cmp_equal(row.frame, frame) ? std::max(longest, row.along) : longest;
        tables_.emplace_back(instance, static_cast<int>(frame), longest);
    }
    sides_.resize(instance.kinds.size());
    for (const StockClass& row : instance.stocks)
        for (const Placement& placement : instance.frames[static_cast<std::size_t>(row.frame)].placements) {
            const auto kind = static_cast<std::size_t>(placement.kind);
            areas_[kind] = static_cast<double>(placement.across) * placement.along;
            sides_[kind] = {static_cast<double>(placement.across) / row.across,
                            static_cast<double>(placement.along) / row.along};
        }
}

/// Long and wide blanks are harder to place than their area says, how much so depends: starts try other
/// measures of it, by turns any and one near the best so far.
ValueCorrection::Shape ValueCorrection::nextShape()
{
    const int start = plans_ / plansFromOneStart;
    if (start == 0)
        return {};
    const auto upTo = [this](double most) { return std::uniform_real_distribution(0.0, most)(random_); };
    if (start % 2 == 1)
        return {upTo(0.15), upTo(0.8)};
    return {bestShape_.across * (0.5 + upTo(1.0)), bestShape_.along * (0.5 + upTo(1.0))};
}

void ValueCorrection::startAnew()
{
    if (plans_ > 0 && plansOfShape_ == plansFromOneStart && costOfShape_ < leastCost_) {
        leastCost_ = costOfShape_;
        bestShape_ = shape_;
    }
    costOfShape_ = 0.0;
    plansOfShape_ = 0;
    shape_ = nextShape();
    shapes_.clear();
    worths_.clear();
    for (std::size_t kind = 0; kind < areas_.size(); ++kind) {
        shapes_.push_back(std::pow(sides_[kind].first, shape_.across) *
                          std::pow(sides_[kind].second, shape_.along));
        worths_.push_back(price_ * areas_[kind] * shapes_[kind]);
    }
}

/// Of all stock still at hand and all lengths of level, what would be worth most for its cost if there were
/// more of what is wanted; most first.
std::vector<ValueCorrection::Choice> ValueCorrection::choices() const
{
    std::vector<Choice> found;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        const int stock = static_cast<int>(index);
        const std::int64_t left =
            row.available < 0 ? std::numeric_limits<int>::max() : row.available - used_[index];
        if (left <= 0)
            continue;
        const int longest = row.coil ? static_cast<int>(std::min<std::int64_t>(row.along, left)) : row.along;
        double before = 0.0;
        for (int along = row.coil ? 1 : longest; along <= longest; ++along) {
            const double value = pricing_.valueOf(stock, along);
            if (value > before)
                found.push_back({stock, along, value / static_cast<double>(instance_.costOf(row, along))});
            before = std::max(before, value);
        }
    }
    std::ranges::stable_sort(found, std::greater<>(), &Choice::ratio);
    return found;
}

/// Worth for cost of a pattern as it is, credits counted.
double ValueCorrection::ratioOf(const RawPattern& pattern) const
{
    const double worth = worthOf(instance_, pattern, worths_);
    return worth / static_cast<double>(std::max<std::int64_t>(1, netCostOf(instance_, pattern)));
}

/// The pattern of most worth for its cost of what is still wanted: the first choices, filled.
RawPattern ValueCorrection::choose()
{
    constexpr std::size_t most = 3;
    RawPattern best;
    double bestRatio = 0.0;
    std::size_t filled = 0;
    for (const Choice& choice : choices()) {
        if (filled == most || (choice.ratio <= bestRatio && !instance_.problem->creditsRemnants()))
            break;
        RawPattern pattern = pricing_.patternOf(choice.stock, choice.along);
        if (repeats(pattern) == 0) {
            pattern = fill(choice);
            ++filled;
        }
        if (pattern.strips.empty())
            continue;
        if (const double ratio = ratioOf(pattern); ratio > bestRatio) {
            bestRatio = ratio;
            best = std::move(pattern);
        }
    }
    return best;
}

/// The strips of the best pattern, as far as what is wanted suffices for them; beside them strip after strip,
/// each the best beside those that could still follow.
RawPattern ValueCorrection::fill(const Choice& choice)
{
    const StockClass& row = instance_.stockAt(choice.stock);
    const Frame& frame = instance_.frameAt(choice.stock);
    RawPattern pattern{choice.stock, row.coil ? 0 : row.along, 1, {}};
    std::vector<std::int64_t> wanted = residual_;
    int across = row.across, room = instance_.mostStrips;
    const auto kind = [&frame](int placement) {
        return static_cast<std::size_t>(frame.placements[static_cast<std::size_t>(placement)].kind);
    };
    const auto add = [&](RawStrip strip) {
        for (const auto& [placement, count] : strip.pieces)
            wanted[kind(placement)] -= count;
        across -= frame.widths[static_cast<std::size_t>(strip.width)];
        --room;
        if (row.coil)
            pattern.along = std::max(pattern.along, takenBy(frame, strip));
        pattern.strips.push_back(std::move(strip));
    };
    // A kind that turns lies in the tables both ways, each as often as it is wanted.
    const auto clipped = [&](const RawStrip& strip) {
        RawStrip result{strip.width, {}};
        std::map<std::size_t, std::int64_t> taken;
        for (const auto& [placement, count] : strip.pieces) {
            std::int64_t& before = taken[kind(placement)];
            const auto most =
                static_cast<int>(std::min<std::int64_t>(count, wanted[kind(placement)] - before));
            if (most > 0)
                result.pieces.emplace_back(placement, most);
            before += most;
        }
        return result;
    };
    for (RawStrip& strip : pricing_.patternOf(choice.stock, choice.along).strips)
        if (clipped(strip) == strip)
            add(std::move(strip));
    for (;;) {
        RawStrip strip = clipped(bestStrip(choice.stock, choice.along, across, room, wanted));
        if (strip.pieces.empty())
            return pattern;
        strip.width = frame.widthOfPlacement[static_cast<std::size_t>(strip.pieces.front().first)];
        add(std::move(strip));
    }
}

RawStrip ValueCorrection::bestStrip(int stock, int along, int across, int room,
                                    const std::vector<std::int64_t>& wanted)
{
    BarProblem widths = acrossProblem(instance_, stock);
    while (!widths.sizes.empty() && widths.sizes.back() > across)
        widths.sizes.pop_back();
    if (widths.sizes.empty() || room <= 0)
        return {};
    widths.capacity = across;
    widths.mostPieces = std::min(room, across);
    widths.demands = mostStripsOfWidths(instance_, stock, wanted);
    StripTable& table = tables_[static_cast<std::size_t>(instance_.stockAt(stock).frame)];
    table.fill(worths_, wanted);
    ticks_ += table.cellsFilled() / 500;
    std::vector<double> values;
    for (std::size_t width = 0; width < widths.sizes.size(); ++width)
        values.push_back(table.best(static_cast<int>(width), along));
    Knapsack<double> knapsack(widths);
    knapsack.fill(values);
    const Pieces chosen = knapsack.pieces(across, false);
    return chosen.empty() ? RawStrip() : table.strip(chosen.back().first, along);
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

/// As often as what is wanted repeats it. False where that is not once.
bool ValueCorrection::take(RawPattern pattern, RawPlan& plan)
{
    pattern.count = repeats(pattern);
    if (pattern.count <= 0)
        return false;
    const StockClass& row = instance_.stockAt(pattern.stock);
    const Frame& frame = instance_.frameAt(pattern.stock);
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces)
            residual_[static_cast<std::size_t>(frame.placements[static_cast<std::size_t>(placement)].kind)] -=
                count * pattern.count;
    used_[static_cast<std::size_t>(pattern.stock)] += pattern.count * (row.coil ? pattern.along : 1);
    correct(pattern);
    plan.push_back(std::move(pattern));
    return true;
}

/// In large batches one pattern hardly moves the worths: others of the same tables follow it.
void ValueCorrection::takeRivals(RawPlan& plan)
{
    constexpr std::size_t kindsForEach = 400;
    std::size_t left = instance_.kinds.size() / kindsForEach;
    if (left == 0)
        return;
    for (const Choice& choice : choices()) {
        if (left == 0)
            return;
        RawPattern pattern = pricing_.patternOf(choice.stock, choice.along);
        left -= !pattern.strips.empty() && take(std::move(pattern), plan) ? 1 : 0;
    }
}

std::optional<RawPlan> ValueCorrection::next(std::int64_t limit)
{
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
        RawPattern pattern = choose();
        if (stop_(std::exchange(ticks_, 0)) || pattern.strips.empty() || !take(std::move(pattern), plan))
            return std::nullopt;
        takeRivals(plan);
    }
    const std::int64_t cost = lapwright::cutting::costOf(instance_, plan);
    costOfShape_ += static_cast<double>(cost);
    ++plansOfShape_;
    if (cost >= limit)
        return std::nullopt;
    return plan;
}

} // namespace lapwright::cutting
