#include "cutting/first_fit.h"

#include <algorithm>
#include <limits>
#include <map>

namespace lapwright::cutting {

namespace {

/// One strip of this width filled from the residual, which it lowers. Returns the length taken.
int fillStrip(const Frame& frame, int width, int span, std::vector<std::int64_t>& residual, RawStrip& strip)
{
    const auto w = static_cast<std::size_t>(width);
    int left = span;
    strip.width = width;
    for (int index = frame.firstOfWidth[w + 1] - 1; index >= frame.firstOfWidth[w]; --index) {
        const Placement& placement = frame.placements[static_cast<std::size_t>(index)];
        std::int64_t& wanted = residual[static_cast<std::size_t>(placement.kind)];
        if (wanted == 0 || placement.along > left)
            continue;
        const int count = static_cast<int>(std::min<std::int64_t>(wanted, left / placement.along));
        strip.pieces.emplace_back(index, count);
        wanted -= count;
        left -= count * placement.along;
    }
    return span - left;
}

class Filler {
public:
    Filler(const Instance& instance, std::vector<std::int64_t>& residual, std::vector<std::int64_t>& used)
        : instance_(instance), residual_(residual), used_(used)
    {
    }

    /// How often the stock can still give this pattern.
    [[nodiscard]] std::int64_t availability(const RawPattern& pattern) const
    {
        const auto s = static_cast<std::size_t>(pattern.stock);
        const StockClass& row = instance_.stocks[s];
        if (row.available < 0)
            return std::numeric_limits<std::int64_t>::max();
        return (row.available - used_[s]) / (row.coil ? std::max(1, pattern.along) : 1);
    }

    [[nodiscard]] RawPattern propose(int stock) const
    {
        const auto s = static_cast<std::size_t>(stock);
        const StockClass& row = instance_.stocks[s];
        if (row.available >= 0 && row.available == used_[s])
            return {stock, 0, 0, {}};
        RawPattern pattern = firstFitPattern(instance_, stock, residual_);
        if (!pattern.strips.empty() && availability(pattern) == 0)
            pattern.strips.clear();
        return pattern;
    }

    /// Cost for each square millimetre of blanks.
    [[nodiscard]] double price(const RawPattern& pattern) const
    {
        double area = 0.0;
        for (const auto& [kind, count] : contents(pattern))
            area += instance_.kinds[static_cast<std::size_t>(kind)].area * static_cast<double>(count);
        return static_cast<double>(netCostOf(instance_, pattern)) / area;
    }

    /// Takes the pattern as often as the residual repeats it.
    void commit(RawPattern pattern, RawPlan& plan)
    {
        std::int64_t times = availability(pattern);
        const std::map<int, std::int64_t> need = contents(pattern);
        for (const auto& [kind, count] : need)
            times = std::min(times, residual_[static_cast<std::size_t>(kind)] / count);
        for (const auto& [kind, count] : need)
            residual_[static_cast<std::size_t>(kind)] -= times * count;
        const auto s = static_cast<std::size_t>(pattern.stock);
        used_[s] += times * (instance_.stocks[s].coil ? pattern.along : 1);
        pattern.count = times;
        plan.push_back(std::move(pattern));
    }

private:
    [[nodiscard]] std::map<int, std::int64_t> contents(const RawPattern& pattern) const
    {
        const Frame& frame = instance_.frames[static_cast<std::size_t>(
            instance_.stocks[static_cast<std::size_t>(pattern.stock)].frame)];
        std::map<int, std::int64_t> contents;
        for (const RawStrip& strip : pattern.strips)
            for (const auto& [placement, count] : strip.pieces)
                contents[frame.placements[static_cast<std::size_t>(placement)].kind] += count;
        return contents;
    }

    const Instance& instance_;
    std::vector<std::int64_t>& residual_;
    std::vector<std::int64_t>& used_;
};

/// Of the proposals of these stocks, the one that carries most blanks for its cost; none: strips are empty.
RawPattern cheapest(const Filler& filler, const std::vector<int>& stocks)
{
    RawPattern best;
    double bestPrice = std::numeric_limits<double>::infinity();
    for (const int stock : stocks) {
        RawPattern pattern = filler.propose(stock);
        if (pattern.strips.empty())
            continue;
        const double price = filler.price(pattern);
        if (price < bestPrice) {
            bestPrice = price;
            best = std::move(pattern);
        }
    }
    return best;
}

} // namespace

RawPattern firstFitPattern(const Instance& instance, int stock, const std::vector<std::int64_t>& residual)
{
    const StockClass& row = instance.stocks[static_cast<std::size_t>(stock)];
    const Frame& frame = instance.frames[static_cast<std::size_t>(row.frame)];
    std::vector<std::int64_t> left = residual;
    RawPattern pattern{stock, row.coil ? 0 : row.along, 1, {}};
    int across = row.across;
    const int along = row.available >= 0 && row.coil
                          ? static_cast<int>(std::min<std::int64_t>(row.along, row.available))
                          : row.along;
    for (int width = static_cast<int>(frame.widths.size()) - 1; width >= 0; --width) {
        while (frame.widths[static_cast<std::size_t>(width)] <= across &&
               static_cast<int>(pattern.strips.size()) < instance.mostStrips) {
            RawStrip strip;
            const int taken = fillStrip(frame, width, along, left, strip);
            if (strip.pieces.empty())
                break;
            across -= frame.widths[static_cast<std::size_t>(width)];
            if (row.coil)
                pattern.along = std::max(pattern.along, taken);
            pattern.strips.push_back(std::move(strip));
        }
    }
    return pattern;
}

RawPlan firstFitPlan(const Instance& instance, std::vector<std::int64_t>& residual,
                     std::vector<std::int64_t>& used)
{
    Filler filler(instance, residual, used);
    std::vector<int> single, plenty;
    for (std::size_t stock = 0; stock < instance.stocks.size(); ++stock)
        (instance.stocks[stock].available == 1 ? single : plenty).push_back(static_cast<int>(stock));

    RawPlan plan;
    // What a square millimetre of blanks costs in the plentiful stock is what a remnant has to beat.
    const RawPattern usual = cheapest(filler, plenty);
    const double usualPrice =
        usual.strips.empty() ? std::numeric_limits<double>::infinity() : filler.price(usual);
    for (const int stock : single) {
        RawPattern pattern = filler.propose(stock);
        if (!pattern.strips.empty() && filler.price(pattern) <= usualPrice)
            filler.commit(std::move(pattern), plan);
    }
    for (const auto& group : {plenty, single}) {
        for (RawPattern pattern = cheapest(filler, group); !pattern.strips.empty();
             pattern = cheapest(filler, group))
            filler.commit(std::move(pattern), plan);
    }
    return plan;
}

} // namespace lapwright::cutting
