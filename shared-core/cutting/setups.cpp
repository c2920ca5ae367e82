#include "cutting/setups.h"

#include "cutting/one_dimension.h"
#include "cutting/setup_maker.h"

#include <algorithm>
#include <map>
#include <random>

namespace lapwright::cutting {

namespace {

using Counts = std::vector<int>; ///< of strips, by width

struct Supply {
    std::vector<std::vector<std::pair<RawStrip, std::int64_t>>> strips; ///< by width
    std::vector<std::int64_t> parts; ///< more strips of each width that parting could make
};

/// How often a strip can be parted so that each part still holds a blank of its width.
std::int64_t partings(const Frame& frame, const RawStrip& strip)
{
    return holdersOfWidth(frame, strip) - 1;
}

/// The setups counted, the rarest first: the beginning of a search for fewer.
std::vector<Setup> listed(const std::map<Counts, std::int64_t>& counts)
{
    std::vector<Setup> setups;
    for (const auto& [strips, count] : counts)
        setups.push_back({strips, count});
    std::ranges::stable_sort(setups, {}, &Setup::count);
    return setups;
}

BarProblem barsOf(const Instance& instance, int stock, const std::vector<Setup>& setups)
{
    const Frame& frame = instance.frameAt(stock);
    BarProblem bars{instance.stockAt(stock).across, frame.widths,
                    std::vector<std::int64_t>(frame.widths.size(), 0),
                    std::max(1, std::min(instance.mostStrips, instance.stockAt(stock).across))};
    // Widths of other stock, wanted of this one no times.
    for (int& size : bars.sizes)
        size = std::min(size, bars.capacity);
    for (const Setup& setup : setups)
        for (std::size_t width = 0; width < frame.widths.size(); ++width)
            bars.demands[width] += setup.count * setup.strips[width];
    return bars;
}

/// The fewest setups found from this beginning and from others made for as many sheets and the same strips.
std::vector<Setup> fewest(const Instance& instance, int stock, std::vector<Setup> best,
                          const std::vector<std::int64_t>& parts,
                          const std::function<bool(std::int64_t)>& stop)
{
    // Once there are no more setups than widths little is left to gain.
    constexpr std::int64_t ticksForMore = 250'000, mostTicks = 1'500'000, ticksToCombine = 300'000;
    const BarProblem bars = barsOf(instance, stock, best);
    const auto widths = static_cast<std::size_t>(
        std::ranges::count_if(bars.demands, [](std::int64_t demand) { return demand > 0; }));
    std::int64_t sheets = 0, ticks = 0;
    for (const Setup& setup : best)
        sheets += setup.count;
    bool stopped = false;
    std::int64_t limit = mostTicks;
    const std::function<bool(std::int64_t)> counted = [&](std::int64_t more) {
        ticks += more;
        stopped = stopped || stop(more);
        return stopped || ticks >= limit;
    };
    const auto enough = [&] { return ticks >= (best.size() > widths ? mostTicks : ticksForMore); };
    SetupMaker maker(bars, best, sheets, parts, counted);
    std::mt19937 random(1);
    while (!stopped && best.size() > 2 && !enough())
        if (auto setups = maker.make(best.size(), random))
            best = std::move(*setups);
    limit = ticks + ticksToCombine;
    std::ranges::stable_sort(best, {}, &Setup::count);
    return combineSetups(instance, stock, std::move(best), parts, counted);
}

/// Parts strips of one width until there are enough of them.
void partStrips(const Frame& frame, std::int64_t wanted,
                std::vector<std::pair<RawStrip, std::int64_t>>& strips)
{
    std::int64_t have = 0;
    for (const auto& [strip, count] : strips)
        have += count;
    for (std::size_t at = 0; at < strips.size() && have < wanted;) {
        if (partings(frame, strips[at].first) < 1) {
            ++at;
            continue;
        }
        RawStrip rest = strips[at].first;
        auto& first = rest.pieces.front();
        const RawStrip off{rest.width, {{first.first, 1}}};
        if (--first.second == 0)
            rest.pieces.erase(rest.pieces.begin());
        const std::int64_t times = std::min(strips[at].second, wanted - have);
        strips[at].second -= times;
        strips.emplace_back(off, times);
        strips.emplace_back(std::move(rest), times);
        have += times;
        if (strips[at].second == 0)
            ++at;
    }
    std::erase_if(strips, [](const auto& entry) { return entry.second == 0; });
}

/// Hands the strips out to the slots, fullest first.
void handOut(int stock, int along, const Frame& frame, const std::vector<Setup>& setups, Supply supply,
             RawPlan& plan)
{
    for (std::size_t width = 0; width < frame.widths.size(); ++width) {
        std::int64_t wanted = 0;
        for (const Setup& setup : setups)
            wanted += setup.strips[width] * setup.count;
        auto& strips = supply.strips[width];
        partStrips(frame, wanted, strips);
        std::ranges::stable_sort(strips, [&frame](const auto& one, const auto& other) {
            return takenBy(frame, one.first) < takenBy(frame, other.first);
        });
    }
    for (const Setup& setup : setups) {
        for (std::int64_t left = setup.count; left > 0;) {
            std::int64_t alike = left;
            for (std::size_t width = 0; width < frame.widths.size(); ++width)
                if (setup.strips[width] > 0 && !supply.strips[width].empty())
                    alike = std::min(alike, supply.strips[width].back().second / setup.strips[width]);
            RawPattern pattern{stock, along, std::max<std::int64_t>(1, alike), {}};
            for (std::size_t width = frame.widths.size(); width-- > 0;) {
                auto& strips = supply.strips[width];
                for (int copy = 0; copy < setup.strips[width] && !strips.empty(); ++copy) {
                    pattern.strips.push_back(strips.back().first);
                    strips.back().second -= pattern.count;
                    if (strips.back().second == 0)
                        strips.pop_back();
                }
            }
            left -= pattern.count;
            if (!pattern.strips.empty())
                plan.push_back(std::move(pattern));
        }
    }
}

} // namespace

RawPlan withFewerSetups(const Instance& instance, const RawPlan& plan,
                        const std::function<bool(std::int64_t ticks)>& stop)
{
    RawPlan result;
    for (std::size_t index = 0; index < instance.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        const Frame& frame = instance.frameAt(stock);
        std::map<Counts, std::int64_t> counts;
        Supply supply{{}, std::vector<std::int64_t>(frame.widths.size(), 0)};
        supply.strips.resize(frame.widths.size());
        for (const RawPattern& pattern : plan) {
            if (pattern.stock != stock)
                continue;
            if (instance.stockAt(stock).coil) {
                result.push_back(pattern);
                continue;
            }
            Counts strips(frame.widths.size(), 0);
            for (const RawStrip& strip : pattern.strips) {
                ++strips[static_cast<std::size_t>(strip.width)];
                supply.strips[static_cast<std::size_t>(strip.width)].emplace_back(strip, pattern.count);
                supply.parts[static_cast<std::size_t>(strip.width)] += pattern.count * partings(frame, strip);
            }
            counts[strips] += pattern.count;
        }
        if (counts.empty())
            continue;
        const std::vector<Setup> setups = fewest(instance, stock, listed(counts), supply.parts, stop);
        handOut(stock, instance.stockAt(stock).along, frame, setups, std::move(supply), result);
    }
    return result;
}

} // namespace lapwright::cutting
