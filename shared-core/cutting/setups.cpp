#include "cutting/setups.h"

#include "cutting/one_dimension.h"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>
#include <random>
#include <tuple>

namespace lapwright::cutting {

namespace {

using Counts = std::vector<int>; ///< of strips, by width

struct Setup {
    Counts strips;
    std::int64_t count = 0;
};

struct Supply {
    std::vector<std::vector<std::pair<RawStrip, std::int64_t>>> strips; ///< by width
    std::vector<std::int64_t> parts; ///< more strips of each width that parting could make
};

/// How often a strip can be parted so that each part still holds a blank of its width.
std::int64_t partings(const Frame& frame, const RawStrip& strip)
{
    std::int64_t widest = 0;
    for (const auto& [placement, count] : strip.pieces)
        if (frame.widthOfPlacement[static_cast<std::size_t>(placement)] == strip.width)
            widest += count;
    return widest - 1;
}

/// Combines the setups of the sheets of one stock.
class Combiner {
public:
    Combiner(const Instance& instance, int stock, std::vector<Setup> setups, std::vector<std::int64_t> parts,
             const std::function<bool(std::int64_t)>& stop)
        : row_(instance.stockAt(stock)), frame_(instance.frameAt(stock)), mostStrips_(instance.mostStrips),
          setups_(std::move(setups)), parts_(std::move(parts)), stop_(stop)
    {
    }

    std::vector<Setup> run()
    {
        while (!stopped_ && (pairs() || triples() || changes())) {
        }
        return std::move(setups_);
    }

private:
    using Wanted = std::vector<std::int64_t>;

    [[nodiscard]] Wanted wanted(const std::vector<std::size_t>& picked) const
    {
        Wanted sum(frame_.widths.size(), 0);
        for (const std::size_t index : picked)
            for (std::size_t width = 0; width < sum.size(); ++width)
                sum[width] += setups_[index].strips[width] * setups_[index].count;
        return sum;
    }

    [[nodiscard]] bool fits(const Counts& strips) const
    {
        int across = 0, count = 0;
        for (std::size_t width = 0; width < strips.size(); ++width) {
            across += strips[width] * frame_.widths[width];
            count += strips[width];
        }
        return across <= row_.across && count <= mostStrips_ && count > 0;
    }

    /// The strips each of `count` sheets needs for what is wanted; none where they do not fit.
    [[nodiscard]] std::optional<Counts> share(const Wanted& wanted, std::int64_t count) const
    {
        Counts strips(wanted.size(), 0);
        std::int64_t across = 0, sum = 0;
        for (std::size_t width = 0; width < wanted.size(); ++width) {
            if (wanted[width] <= 0)
                continue;
            const std::int64_t each = (wanted[width] - 1) / count + 1;
            across += each * frame_.widths[width];
            sum += each;
            if (across > row_.across || sum > mostStrips_)
                return std::nullopt;
            strips[width] = static_cast<int>(each);
        }
        return sum > 0 ? std::optional(std::move(strips)) : std::nullopt;
    }

    /// How often the setup may be used within what is wanted and what parting strips could add.
    [[nodiscard]] std::int64_t within(const Setup& setup, const Wanted& wanted) const
    {
        std::int64_t times = std::numeric_limits<std::int64_t>::max();
        for (std::size_t width = 0; width < wanted.size(); ++width)
            if (setup.strips[width] > 0)
                times = std::min(times, wanted[width] / setup.strips[width]);
        return times;
    }

    /// Replaces the picked setups where the slots left over can be filled by parting strips.
    bool replace(std::vector<std::size_t> picked, const std::vector<Setup>& with)
    {
        Wanted left = wanted(picked);
        for (const Setup& setup : with)
            for (std::size_t width = 0; width < left.size(); ++width)
                left[width] -= setup.strips[width] * setup.count;
        for (std::size_t width = 0; width < left.size(); ++width)
            if (left[width] > 0 || -left[width] > parts_[width])
                return false;
        for (std::size_t width = 0; width < left.size(); ++width)
            parts_[width] += left[width];
        std::ranges::sort(picked, std::greater<>());
        for (const std::size_t index : picked)
            setups_.erase(setups_.begin() + static_cast<std::ptrdiff_t>(index));
        for (const Setup& setup : with) {
            const auto known = std::ranges::find(setups_, setup.strips, &Setup::strips);
            if (known != setups_.end())
                known->count += setup.count;
            else
                setups_.push_back(setup);
        }
        std::ranges::sort(setups_, [](const Setup& one, const Setup& other) {
            return std::tie(one.count, one.strips) < std::tie(other.count, other.strips);
        });
        return true;
    }

    bool asked(std::int64_t ticks)
    {
        stopped_ = stopped_ || stop_(ticks);
        return stopped_;
    }

    /// Two into one, or into one that is there already and another.
    bool pairs()
    {
        for (std::size_t second = 1; second < setups_.size(); ++second) {
            for (std::size_t first = 0; first < second; ++first) {
                if (asked(3))
                    return false;
                const Wanted both = wanted({first, second});
                const std::int64_t count = setups_[first].count + setups_[second].count;
                if (const auto one = share(both, count); one && replace({first, second}, {{*one, count}}))
                    return true;
                if (withKnown(first, second, both, count))
                    return true;
            }
        }
        return false;
    }

    bool withKnown(std::size_t first, std::size_t second, const Wanted& both, std::int64_t count)
    {
        for (std::size_t known = 0; known < setups_.size(); ++known) {
            if (known == first || known == second)
                continue;
            const std::int64_t most = std::min(count - 1, within(setups_[known], both));
            Wanted left = both;
            for (std::int64_t copies = 1; copies <= most; ++copies) {
                for (std::size_t width = 0; width < left.size(); ++width)
                    left[width] -= setups_[known].strips[width];
                const auto other = share(left, count - copies);
                if (other &&
                    replace({first, second}, {{setups_[known].strips, copies}, {*other, count - copies}}))
                    return true;
            }
        }
        return false;
    }

    /// Three into two.
    bool triples()
    {
        for (std::size_t third = 2; third < setups_.size(); ++third)
            for (std::size_t second = 1; second < third; ++second)
                for (std::size_t first = 0; first < second; ++first)
                    if (intoTwo({first, second, third}))
                        return true;
                    else if (stopped_)
                        return false;
        return false;
    }

    bool intoTwo(const std::vector<std::size_t>& picked)
    {
        std::int64_t count = 0;
        std::vector<std::int64_t> splits;
        for (const std::size_t index : picked)
            count += setups_[index].count;
        constexpr std::int64_t few = 12;
        for (std::int64_t split = 1; split <= std::min(few, count / 2); ++split)
            splits.push_back(split);
        for (const std::size_t index : picked)
            for (const std::int64_t split : {setups_[index].count, count - setups_[index].count})
                if (split > few && split <= count / 2)
                    splits.push_back(split);
        return divideAny(picked, wanted(picked), count, splits, {});
    }

    /// Divides what is wanted in one of these ways; `besides` are sheets of a known setup that already left
    /// it.
    bool divideAny(const std::vector<std::size_t>& picked, const Wanted& all, std::int64_t count,
                   const std::vector<std::int64_t>& splits, const std::vector<Setup>& besides)
    {
        for (const std::int64_t split : splits) {
            if (asked(2 + row_.across / 50))
                return false;
            const auto two = divide(all, split, count - split);
            if (!two)
                continue;
            std::vector<Setup> with = besides;
            with.push_back({two->first, split});
            with.push_back({two->second, count - split});
            if (replace(picked, with))
                return true;
        }
        return false;
    }

    /// Random changes in search of a smaller number: two divided another way, the rarer the better, and three
    /// into two and some more of one that is there already.
    bool changes()
    {
        constexpr int draws = 20'000;
        const std::size_t before = setups_.size();
        for (int draw = 0; draw < draws && setups_.size() > 3 && !stopped_; ++draw) {
            if (draw % 2 == 0)
                shift();
            else
                triplesWithKnown();
            if (setups_.size() < before)
                return true;
        }
        return false;
    }

    std::size_t rare() { return std::min(random_() % setups_.size(), random_() % setups_.size()); }

    void shift()
    {
        const std::size_t first = rare(), second = random_() % setups_.size();
        const std::int64_t less = std::min(setups_[first].count, setups_[second].count);
        if (first == second || less < 2)
            return;
        const std::int64_t count = setups_[first].count + setups_[second].count;
        const auto split = 1 + static_cast<std::int64_t>(random_()) % less;
        if (split == less && random_() % 4 != 0)
            return;
        divideAny({first, second}, wanted({first, second}), count, {split}, {});
    }

    void triplesWithKnown()
    {
        std::vector<std::size_t> picked{rare(), rare(), rare()};
        const std::size_t known = random_() % setups_.size();
        std::ranges::sort(picked);
        if (std::ranges::adjacent_find(picked) != picked.end() ||
            std::ranges::find(picked, known) != picked.end())
            return;
        Wanted all = wanted(picked);
        std::int64_t count = 0;
        for (const std::size_t index : picked)
            count += setups_[index].count;
        const std::int64_t most = std::min(count - 2, within(setups_[known], all));
        if (most < 1)
            return;
        const std::int64_t copies = 1 + static_cast<std::int64_t>(random_()) % most;
        for (std::size_t width = 0; width < all.size(); ++width)
            all[width] -= setups_[known].strips[width] * copies;
        count -= copies;
        std::vector<std::int64_t> splits;
        for (int split = 0; split < 3; ++split)
            splits.push_back(1 + static_cast<std::int64_t>(random_()) % (count - 1));
        divideAny(picked, all, count, splits, {{setups_[known].strips, copies}});
    }

    /// What each of `often` sheets needs of one width where the other setup's sheets bring `brought` in all.
    static int rest(std::int64_t wanted, std::int64_t brought, std::int64_t often)
    {
        return static_cast<int>(wanted <= brought ? 0 : (wanted - brought - 1) / often + 1);
    }

    /// Strips of two setups, so often each, that together hold all that is wanted: for each span the first
    /// takes, the least the second needs.
    [[nodiscard]] std::optional<std::pair<Counts, Counts>> divide(const Wanted& all, std::int64_t once,
                                                                  std::int64_t often) const
    {
        constexpr int never = std::numeric_limits<int>::max() / 4;
        const auto cells = static_cast<std::size_t>(row_.across) + 1;
        std::vector<std::size_t> widths;
        std::vector<std::vector<int>> least{std::vector<int>(cells, never)};
        least.front().front() = 0;
        for (std::size_t width = 0; width < all.size(); ++width) {
            if (all[width] <= 0)
                continue;
            widths.push_back(width);
            const int size = frame_.widths[width];
            const std::vector<int>& before = least.back();
            std::vector<int> next(cells, never);
            const auto most = (all[width] - 1) / once + 1;
            for (std::int64_t first = 0; first <= most && first * size <= row_.across; ++first) {
                const int add = rest(all[width], first * once, often) * size;
                const auto step = static_cast<std::size_t>(first * size);
                for (std::size_t at = step; at < cells; ++at)
                    next[at] = std::min(next[at], before[at - step] + add);
            }
            least.push_back(std::move(next));
        }
        const auto found =
            std::ranges::find_if(least.back(), [this](int need) { return need <= row_.across; });
        if (found == least.back().end())
            return std::nullopt;
        auto at = static_cast<std::size_t>(found - least.back().begin());
        std::pair<Counts, Counts> two{Counts(all.size(), 0), Counts(all.size(), 0)};
        for (std::size_t entry = widths.size(); entry-- > 0;) {
            const std::size_t width = widths[entry];
            const int size = frame_.widths[width];
            for (int first = 0;; ++first) {
                const int second = rest(all[width], first * once, often);
                const auto step = static_cast<std::size_t>(first * size);
                if (least[entry][at - step] + second * size != least[entry + 1][at])
                    continue;
                two.first[width] = first;
                two.second[width] = second;
                at -= step;
                break;
            }
        }
        if (!fits(two.first) || !fits(two.second))
            return std::nullopt;
        return two;
    }

    const StockClass& row_;
    const Frame& frame_;
    int mostStrips_;
    std::vector<Setup> setups_; ///< rarest first
    std::vector<std::int64_t> parts_;
    const std::function<bool(std::int64_t)>& stop_;
    std::mt19937 random_{1};
    bool stopped_ = false;
};

/// The fewest setups found from this beginning and from other plans of as many sheets for the same strips.
std::vector<Setup> fewest(const Instance& instance, int stock, const std::vector<Setup>& begin,
                          const std::vector<std::int64_t>& parts,
                          const std::function<bool(std::int64_t)>& stop)
{
    const Frame& frame = instance.frameAt(stock);
    BarProblem bars{instance.stockAt(stock).across, frame.widths,
                    std::vector<std::int64_t>(frame.widths.size(), 0),
                    std::max(1, std::min(instance.mostStrips, instance.stockAt(stock).across))};
    std::int64_t sheets = 0, ticks = 0;
    for (const Setup& setup : begin) {
        sheets += setup.count;
        for (std::size_t width = 0; width < frame.widths.size(); ++width)
            bars.demands[width] += setup.count * setup.strips[width];
    }
    bool stopped = false;
    const std::function<bool(std::int64_t)> counted = [&](std::int64_t more) {
        ticks += more;
        stopped = stopped || stop(more);
        return stopped;
    };
    std::vector<Setup> best = Combiner(instance, stock, begin, parts, counted).run();
    constexpr std::uint64_t starts = 24;
    constexpr std::int64_t mostTicks = 400'000;
    for (std::uint64_t seed = 1; seed <= starts && !stopped && ticks < mostTicks && best.size() > 2; ++seed) {
        BarSearch search;
        search.seed = seed;
        search.noise = 1.0;
        search.stop = [&counted] { return counted(0); };
        const BarPlan other = cutBars(bars, search);
        counted(other.work);
        if (other.bars != sheets)
            continue;
        std::map<Counts, std::int64_t> counts;
        for (const BarPattern& pattern : other.patterns) {
            Counts strips(frame.widths.size(), 0);
            for (const auto& [width, count] : pattern.pieces)
                strips[static_cast<std::size_t>(width)] = count;
            counts[strips] += pattern.count;
        }
        std::vector<Setup> setups;
        for (const auto& [strips, count] : counts)
            setups.push_back({strips, count});
        std::ranges::stable_sort(setups, {}, &Setup::count);
        setups = Combiner(instance, stock, std::move(setups), parts, counted).run();
        if (setups.size() < best.size())
            best = std::move(setups);
    }
    return best;
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
        std::vector<Setup> setups;
        for (const auto& [strips, count] : counts)
            setups.push_back({strips, count});
        std::ranges::stable_sort(setups, {}, &Setup::count);
        setups = fewest(instance, stock, setups, supply.parts, stop);
        handOut(stock, instance.stockAt(stock).along, frame, setups, std::move(supply), result);
    }
    return result;
}

} // namespace lapwright::cutting
