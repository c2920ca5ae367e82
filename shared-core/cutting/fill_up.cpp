#include "cutting/fill_up.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

class Filler {
public:
    Filler(const Instance& instance, RawPlan& plan, std::vector<std::int64_t>& residual)
        : instance_(instance), plan_(plan), residual_(residual)
    {
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
            for (int placement = frame(index).firstOfWidth[width + 1] - 1; placement >= first; --placement) {
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
        for (int placement = static_cast<int>(frame(index).placements.size()) - 1; placement >= 0;
             --placement) {
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
};

} // namespace

void fillUp(const Instance& instance, RawPlan& plan, std::vector<std::int64_t>& residual)
{
    Filler(instance, plan, residual).run();
}

} // namespace lapwright::cutting
