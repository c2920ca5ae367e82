#include "cutting/fill_up.h"

#include "cutting/part.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

class Filler {
public:
    Filler(const Instance& instance, RawPlan& plan, std::vector<std::int64_t>& residual)
        : instance_(instance), plan_(plan), residual_(residual)
    {
        for (const Frame& frame : instance.frames) {
            largestFirst_.emplace_back();
            for (int at = static_cast<int>(frame.placements.size()) - 1; at >= 0; --at)
                if (residual[static_cast<std::size_t>(frame.placements[static_cast<std::size_t>(at)].kind)] >
                    0)
                    largestFirst_.back().push_back(at);
        }
    }

    void run()
    {
        // Patterns parted off are appended and visited in their turn.
        for (std::size_t index = 0; index < plan_.size(); ++index) {
            while (intoStrips(index) || besideStrips(index)) {
            }
        }
    }

private:
    [[nodiscard]] const Frame& frame(std::size_t index) const
    {
        return instance_.frameAt(plan_[index].stock);
    }
    [[nodiscard]] std::int64_t& wanted(std::size_t index, int placement)
    {
        return residual_[static_cast<std::size_t>(
            frame(index).placements[static_cast<std::size_t>(placement)].kind)];
    }
    [[nodiscard]] int span(std::size_t index) const
    {
        return std::min(plan_[index].along, instance_.stockAt(plan_[index].stock).along);
    }

    [[nodiscard]] const std::vector<int>& largestFirst(std::size_t index) const
    {
        return largestFirst_[static_cast<std::size_t>(instance_.stockAt(plan_[index].stock).frame)];
    }

    /// How many of a placement each copy takes; copies beyond what is wanted are parted off first.
    int share(std::size_t index, int placement, int room)
    {
        const std::int64_t want = wanted(index, placement);
        if (want < plan_[index].count) {
            RawPattern rest = plan_[index];
            rest.count -= want;
            plan_[index].count = want;
            plan_.push_back(std::move(rest));
        }
        const int each = static_cast<int>(std::min<std::int64_t>(room, want / plan_[index].count));
        wanted(index, placement) -= each * plan_[index].count;
        return each;
    }

    bool intoStrips(std::size_t index)
    {
        for (std::size_t at = 0; at < plan_[index].strips.size(); ++at) {
            const RawStrip& strip = plan_[index].strips[at];
            const int left = span(index) - takenBy(frame(index), strip);
            const auto width = static_cast<std::size_t>(strip.width);
            const int first =
                instance_.patterns == PatternClass::Exact ? frame(index).firstOfWidth[width] : 0;
            for (const int placement : largestFirst(index)) {
                if (placement >= frame(index).firstOfWidth[width + 1] || placement < first)
                    continue;
                const int along = frame(index).placements[static_cast<std::size_t>(placement)].along;
                if (wanted(index, placement) <= 0 || along > left)
                    continue;
                const int each = share(index, placement, left / along);
                add(plan_[index].strips[at], placement, each);
                return true;
            }
        }
        return false;
    }

    static void add(RawStrip& strip, int placement, int count)
    {
        const auto at = std::ranges::find_if(
            strip.pieces, [placement](const auto& piece) { return piece.first <= placement; });
        if (at != strip.pieces.end() && at->first == placement)
            at->second += count;
        else
            strip.pieces.insert(at, {placement, count});
    }

    bool besideStrips(std::size_t index)
    {
        int across = instance_.stockAt(plan_[index].stock).across;
        for (const RawStrip& strip : plan_[index].strips)
            across -= frame(index).widths[static_cast<std::size_t>(strip.width)];
        if (std::cmp_greater_equal(plan_[index].strips.size(), instance_.mostStrips))
            return false;
        for (const int placement : largestFirst(index)) {
            const Placement& entry = frame(index).placements[static_cast<std::size_t>(placement)];
            if (wanted(index, placement) <= 0 || entry.across > across || entry.along > span(index))
                continue;
            const int each = share(index, placement, span(index) / entry.along);
            plan_[index].strips.push_back(
                {frame(index).widthOfPlacement[static_cast<std::size_t>(placement)], {{placement, each}}});
            return true;
        }
        return false;
    }

    const Instance& instance_;
    RawPlan& plan_;
    std::vector<std::int64_t>& residual_;
    std::vector<std::vector<int>> largestFirst_; ///< for each frame, of the placements wanted at the start
};

} // namespace

void fillUp(const Instance& instance, RawPlan& plan, std::vector<std::int64_t>& residual)
{
    Filler(instance, plan, residual).run();
}

RawPlan withoutIdleRemnants(const Instance& instance, RawPlan plan)
{
    std::vector<std::pair<std::int64_t, int>> dearestFirst;
    for (const RawPattern& pattern : plan)
        if (const StockClass& row = instance.stockAt(pattern.stock); row.single)
            dearestFirst.emplace_back(-row.cost, pattern.stock);
    std::ranges::sort(dearestFirst);
    for (const auto& [cost, stock] : dearestFirst) {
        RawPlan fewer = plan;
        const auto idle = std::ranges::find(fewer, stock, &RawPattern::stock);
        std::vector<std::int64_t> residual = contentOf(instance, {*idle}).kinds;
        fewer.erase(idle);
        fillUp(instance, fewer, residual);
        if (std::ranges::all_of(residual, [](std::int64_t left) { return left == 0; }))
            plan = std::move(fewer);
    }
    return plan;
}

} // namespace lapwright::cutting
