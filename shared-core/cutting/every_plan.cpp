#include "cutting/every_plan.h"

#include <algorithm>
#include <map>

namespace lapwright::cutting {

bool EveryPlan::takes(const Instance& instance)
{
    constexpr std::int64_t most = 9;
    std::int64_t blanks = 0;
    for (const Kind& kind : instance.kinds)
        blanks += kind.demand;
    return blanks <= most;
}

EveryPlan::EveryPlan(const Instance& instance, Stop stop)
    : instance_(instance), stop_(std::move(stop)), used_(instance.stocks.size(), 0)
{
    for (std::size_t kind = 0; kind < instance.kinds.size(); ++kind)
        blanks_.insert(blanks_.end(), static_cast<std::size_t>(instance.kinds[kind].demand),
                       static_cast<int>(kind));
    std::ranges::stable_sort(blanks_, [&instance](int one, int other) {
        return instance.kinds[static_cast<std::size_t>(one)].area >
               instance.kinds[static_cast<std::size_t>(other)].area;
    });
    for (const Frame& frame : instance.frames)
        for (std::size_t kind = 0; kind < instance.kinds.size(); ++kind) {
            placements_.emplace_back();
            for (std::size_t at = 0; at < frame.placements.size(); ++at)
                if (std::cmp_equal(frame.placements[at].kind, kind))
                    placements_.back().push_back(static_cast<int>(at));
        }
}

std::optional<RawPlan> EveryPlan::search(std::int64_t limit)
{
    limit_ = limit;
    mostCost_ = instance_.mostCost(limit);
    place(0);
    return std::move(best_);
}

int EveryPlan::longest(const Sheet& sheet) const
{
    int used = 0;
    for (const Strip& strip : sheet.strips)
        used = std::max(used, strip.used);
    return used;
}

/// The sheet's cost as it is now, and the stock it takes, counted in or (negative sign) out.
void EveryPlan::recost(Sheet& sheet, std::int64_t& cost, int sign)
{
    const StockClass& row = instance_.stockAt(sheet.stock);
    const int along = row.coil ? longest(sheet) : row.along;
    used_[static_cast<std::size_t>(sheet.stock)] += std::int64_t{sign} * (row.coil ? along : 1);
    sheet.cost = instance_.costOf(row, along);
    cost += sign * sheet.cost;
}

void EveryPlan::place(std::size_t blank)
{
    constexpr std::int64_t mostSteps = 400'000, between = 1'024;
    if (++steps_ % between == 0)
        done_ = done_ || steps_ > mostSteps || stop_(between / 10);
    if (done_ || static_cast<double>(cost_) >= mostCost_)
        return;
    for (std::size_t stock = 0; stock < used_.size(); ++stock) {
        const std::int64_t available = instance_.stocks[stock].available;
        if (available >= 0 && used_[stock] > available)
            return;
    }
    if (blank == blanks_.size()) {
        RawPlan found = plan();
        if (const std::int64_t cost = costOf(instance_, found); cost < limit_) {
            limit_ = cost;
            mostCost_ = instance_.mostCost(cost);
            best_ = std::move(found);
        }
        return;
    }
    const auto kinds = instance_.kinds.size();
    const auto ways = [&](int stock) -> const std::vector<int>& {
        return placements_[static_cast<std::size_t>(instance_.stockAt(stock).frame) * kinds +
                           static_cast<std::size_t>(blanks_[blank])];
    };
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
        for (const int placement : ways(sheets_[sheet].stock)) {
            intoStrips(blank, placement, sheet);
            intoNewStrip(blank, placement, sheet);
        }
    for (std::size_t stock = 0; stock < instance_.stocks.size(); ++stock)
        for (const int placement : ways(static_cast<int>(stock)))
            intoNewSheet(blank, static_cast<int>(stock), placement);
}

void EveryPlan::intoStrips(std::size_t blank, int placement, std::size_t sheet)
{
    const int stock = sheets_[sheet].stock;
    const Placement entry = placementOf(stock, placement);
    const Frame& frame = instance_.frameAt(stock);
    for (std::size_t at = 0; at < sheets_[sheet].strips.size(); ++at) {
        Strip& strip = sheets_[sheet].strips[at];
        const int width = std::max(strip.across, entry.across), wider = width - strip.across;
        const bool exact = instance_.patterns == PatternClass::Exact &&
                           frame.widthOfPlacement[static_cast<std::size_t>(placement)] !=
                               frame.widthOfPlacement[static_cast<std::size_t>(strip.placements.front())];
        if (exact || strip.used + entry.along > instance_.stockAt(stock).along ||
            sheets_[sheet].across + wider > instance_.stockAt(stock).across)
            continue;
        recost(sheets_[sheet], cost_, -1);
        strip.used += entry.along;
        strip.across += wider;
        strip.placements.push_back(placement);
        sheets_[sheet].across += wider;
        recost(sheets_[sheet], cost_, 1);
        place(blank + 1);
        recost(sheets_[sheet], cost_, -1);
        Strip& back = sheets_[sheet].strips[at];
        back.used -= entry.along;
        back.across -= wider;
        back.placements.pop_back();
        sheets_[sheet].across -= wider;
        recost(sheets_[sheet], cost_, 1);
    }
}

void EveryPlan::intoNewStrip(std::size_t blank, int placement, std::size_t sheet)
{
    const int stock = sheets_[sheet].stock;
    const Placement entry = placementOf(stock, placement);
    if (entry.along > instance_.stockAt(stock).along ||
        sheets_[sheet].across + entry.across > instance_.stockAt(stock).across ||
        std::cmp_greater_equal(sheets_[sheet].strips.size(), instance_.mostStrips))
        return;
    recost(sheets_[sheet], cost_, -1);
    sheets_[sheet].strips.push_back({entry.across, entry.along, {placement}});
    sheets_[sheet].across += entry.across;
    recost(sheets_[sheet], cost_, 1);
    place(blank + 1);
    recost(sheets_[sheet], cost_, -1);
    sheets_[sheet].strips.pop_back();
    sheets_[sheet].across -= entry.across;
    recost(sheets_[sheet], cost_, 1);
}

void EveryPlan::intoNewSheet(std::size_t blank, int stock, int placement)
{
    const Placement entry = placementOf(stock, placement);
    const StockClass& row = instance_.stockAt(stock);
    if (entry.along > row.along || entry.across > row.across)
        return;
    sheets_.push_back({stock, entry.across, 0, {{entry.across, entry.along, {placement}}}});
    recost(sheets_.back(), cost_, 1);
    place(blank + 1);
    recost(sheets_.back(), cost_, -1);
    sheets_.pop_back();
}

RawPlan EveryPlan::plan() const
{
    RawPlan plan;
    for (const Sheet& sheet : sheets_) {
        RawPattern pattern{sheet.stock, 0, 1, {}};
        pattern.along =
            instance_.stockAt(sheet.stock).coil ? longest(sheet) : instance_.stockAt(sheet.stock).along;
        for (const Strip& strip : sheet.strips) {
            std::map<int, int, std::greater<>> counts;
            for (const int placement : strip.placements)
                ++counts[placement];
            RawStrip raw{instance_.frameAt(sheet.stock)
                             .widthOfPlacement[static_cast<std::size_t>(counts.begin()->first)],
                         {}};
            raw.pieces.assign(counts.begin(), counts.end());
            pattern.strips.push_back(std::move(raw));
        }
        plan.push_back(std::move(pattern));
    }
    return plan;
}

} // namespace lapwright::cutting
