#include "cutting/setup_combiner.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <random>
#include <tuple>

namespace lapwright::cutting {

namespace {

using Counts = std::vector<int>; ///< of strips, by width

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

    /// As often as the known setup can be used within both, and a little less often, or only a few times.
    bool withKnown(std::size_t first, std::size_t second, const Wanted& both, std::int64_t count)
    {
        constexpr std::int64_t few = 6;
        for (std::size_t known = 0; known < setups_.size(); ++known) {
            if (known == first || known == second)
                continue;
            const std::int64_t most = std::min(count - 1, within(setups_[known], both));
            for (std::int64_t copies = 1; copies <= most; ++copies) {
                if (copies == few)
                    copies = std::max(copies, most - few);
                if (asked(1))
                    return false;
                Wanted left = both;
                for (std::size_t width = 0; width < left.size(); ++width)
                    left[width] -= setups_[known].strips[width] * copies;
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
                const auto step = static_cast<std::size_t>(first) * static_cast<std::size_t>(size);
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
                const auto step = static_cast<std::size_t>(first) * static_cast<std::size_t>(size);
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

} // namespace

std::vector<Setup> combineSetups(const Instance& instance, int stock, std::vector<Setup> setups,
                                 std::vector<std::int64_t> parts,
                                 const std::function<bool(std::int64_t ticks)>& stop)
{
    return Combiner(instance, stock, std::move(setups), std::move(parts), stop).run();
}

} // namespace lapwright::cutting
