#include "cutting/rounding.h"

#include <algorithm>

/// The last step of a rounding: sheets for the strips it chose.
namespace lapwright::cutting {

std::optional<RawPlan> Rounding::finishAsChosen(const BarSearch& search) const
{
    RawPlan plan = wholes_;
    for (std::size_t index = 0; index < instance_->stocks.size(); ++index)
        if (!strips_[index].empty() && !finishStock(static_cast<int>(index), search, plan))
            return std::nullopt;
    return plan;
}

/// Each kind of sheet ends with one that is not full: the strips of several may share one.
std::optional<RawPlan> Rounding::finish(const BarSearch& search) const
{
    constexpr std::int64_t mostSheets = 2;
    std::optional<RawPlan> best = finishAsChosen(search);
    if (!best)
        return best;
    Rounding now = *this;
    const int stocks = static_cast<int>(instance_->stocks.size());
    for (int from = 0; from < stocks; ++from)
        for (int to = 0; to < stocks; ++to)
            for (std::int64_t sheets = 1; mayPassOn(from, to) && sheets <= mostSheets; ++sheets) {
                Rounding next = now;
                next.passOn(*best, from, to, sheets);
                std::optional<RawPlan> found = next.finishAsChosen(search);
                if (!found || costOf(*instance_, *found) >= costOf(*instance_, *best))
                    continue;
                best = std::move(found);
                now = std::move(next);
            }
    return best;
}

bool Rounding::mayPassOn(int from, int to) const
{
    const StockClass &one = instance_->stockAt(from), &other = instance_->stockAt(to);
    return from != to && !one.coil && !other.coil && !one.single && !other.single &&
           one.frame == other.frame && other.along >= one.along && other.across >= one.across &&
           !strips_[static_cast<std::size_t>(from)].empty();
}

/// The strips of the emptiest sheets of the plan.
void Rounding::passOn(const RawPlan& plan, int from, int to, std::int64_t sheets)
{
    const Frame& frame = instance_->frameAt(from);
    std::vector<std::pair<int, const RawPattern*>> byWidth;
    for (const RawPattern& pattern : plan) {
        if (pattern.stock != from)
            continue;
        int taken = 0;
        for (const RawStrip& strip : pattern.strips)
            taken += frame.widths[static_cast<std::size_t>(strip.width)];
        byWidth.emplace_back(taken, &pattern);
    }
    std::ranges::stable_sort(byWidth, {}, [](const auto& entry) { return entry.first; });
    auto& giving = strips_[static_cast<std::size_t>(from)];
    for (const auto& [taken, pattern] : byWidth) {
        const std::int64_t copies = std::min(sheets, pattern->count);
        sheets -= copies;
        for (const RawStrip& strip : pattern->strips) {
            auto& strips = giving[strip.width];
            std::int64_t left = copies;
            for (auto& [same, count] : strips)
                if (same == strip) {
                    const std::int64_t moved = std::min(left, count);
                    count -= moved;
                    left -= moved;
                }
            std::erase_if(strips, [](const auto& entry) { return entry.second == 0; });
            strips_[static_cast<std::size_t>(to)][strip.width].emplace_back(strip, copies);
        }
    }
    std::erase_if(giving, [](const auto& entry) { return entry.second.empty(); });
}

bool Rounding::finishStock(int stock, const BarSearch& search, RawPlan& plan) const
{
    const Frame& frame = instance_->frameAt(stock);
    const StockClass& row = instance_->stockAt(stock);
    BarProblem bars{row.across, {}, {}, std::max(1, std::min(instance_->mostStrips, row.across))};
    std::vector<std::vector<std::pair<RawStrip, std::int64_t>>> supply;
    for (const auto& [width, strips] : strips_[static_cast<std::size_t>(stock)]) {
        bars.sizes.push_back(frame.widths[static_cast<std::size_t>(width)]);
        bars.demands.push_back(0);
        supply.push_back(strips);
        for (const auto& [strip, count] : strips)
            bars.demands.back() += count;
        // The longest are handed out first, so that what is left over at strip ends lies together.
        std::ranges::stable_sort(supply.back(), [&frame](const auto& left, const auto& right) {
            return takenBy(frame, left.first) < takenBy(frame, right.first);
        });
    }
    const BarPlan sheets = cutBars(bars, search);
    if (row.available >= 0 && !row.coil && sheets.bars > row.available)
        return false;
    std::int64_t used = used_[static_cast<std::size_t>(stock)];
    for (const BarPattern& pattern : sheets.patterns) {
        for (std::int64_t left = pattern.count; left > 0;) {
            std::int64_t alike = left;
            for (const auto& [width, count] : pattern.pieces)
                alike = std::min(alike, supply[static_cast<std::size_t>(width)].back().second / count);
            RawPattern next{stock, row.along, std::max<std::int64_t>(1, alike), {}};
            int longest = 0;
            for (auto entry = pattern.pieces.rbegin(); entry != pattern.pieces.rend(); ++entry) {
                auto& source = supply[static_cast<std::size_t>(entry->first)];
                for (int copy = 0; copy < entry->second; ++copy) {
                    next.strips.push_back(source.back().first);
                    longest = std::max(longest, takenBy(frame, source.back().first));
                    source.back().second -= next.count;
                    if (source.back().second == 0)
                        source.pop_back();
                }
            }
            if (row.coil)
                next.along = longest;
            used += next.count * next.along;
            left -= next.count;
            plan.push_back(std::move(next));
        }
    }
    return !row.coil || row.available < 0 || used <= row.available;
}

} // namespace lapwright::cutting
