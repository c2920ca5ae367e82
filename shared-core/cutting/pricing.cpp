#include "cutting/pricing.h"

#include <algorithm>
#include <numeric>

namespace lapwright::cutting {

namespace {

constexpr double tolerance = 1e-7;

} // namespace

Pricing::Pricing(const Instance& instance, LevelTable::Lengths lengths)
    : instance_(instance), bestWidths_(instance.stocks.size()), bestValues_(instance.stocks.size(), 0.0)
{
    for (const Kind& kind : instance.kinds)
        demands_.push_back(kind.demand);
    std::vector<int> longest(instance.frames.size(), 0);
    for (std::size_t index = 0; index < instance.stocks.size(); ++index) {
        const StockClass& row = instance.stocks[index];
        int& span = longest[static_cast<std::size_t>(row.frame)];
        span = std::max(span, row.along);
        across_.push_back(acrossProblem(instance, static_cast<int>(index)));
        levels_.emplace_back();
        if (row.coil)
            levels_.back().emplace(instance, static_cast<int>(index), lengths);
    }
    for (std::size_t index = 0; index < instance.frames.size(); ++index)
        tables_.emplace_back(instance, static_cast<int>(index), longest[index]);
}

void Pricing::fill(const std::vector<double>& worths)
{
    fill(worths, demands_);
    findBound(worths);
}

void Pricing::fill(const std::vector<double>& worths, const std::vector<std::int64_t>& wanted)
{
    ticks_ = 0;
    for (StripTable& table : tables_) {
        table.fill(worths, wanted);
        ticks_ += table.cellsFilled() / 500;
    }
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        across_[index].demands = mostStripsOfWidths(instance_, stock, wanted);
        if (levels_[index]) {
            levels_[index]->fill(strips(stock), across_[index].demands);
            ticks_ += levels_[index]->cellsFilled() / 2'000;
        }
        if (across_[index].sizes.empty())
            continue;
        Knapsack<double> knapsack(across_[index]);
        knapsack.fill(worthOfWidths(stock));
        ticks_ += static_cast<std::int64_t>(across_[index].sizes.size()) * across_[index].capacity / 500;
        bestValues_[index] = knapsack.best(across_[index].capacity, false);
        bestWidths_[index] = knapsack.pieces(across_[index].capacity, false);
    }
}

std::vector<double> Pricing::worthOfWidths(int stock) const
{
    std::vector<double> worth;
    for (std::size_t width = 0; width < across_[static_cast<std::size_t>(stock)].sizes.size(); ++width)
        worth.push_back(strips(stock).best(static_cast<int>(width), instance_.stockAt(stock).along));
    return worth;
}

void Pricing::findBound(const std::vector<double>& worths)
{
    double dearest = 0.0;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        if (!row.coil && row.available < 0)
            dearest = std::max(dearest, bestValues_[index] / static_cast<double>(row.cost));
        const auto begins = [this](int along) {
            return std::ranges::find(instance_.discounts, along, &LevelDiscount::along) !=
                   instance_.discounts.end();
        };
        for (int along = 1; row.coil && along <= row.along; ++along)
            if (const double value = levels_[index]->best(along);
                value > levels_[index]->best(along - 1) || begins(along))
                dearest = std::max(dearest, value / static_cast<double>(instance_.costOf(row, along)));
    }
    double total = 0.0;
    for (std::size_t kind = 0; kind < worths.size(); ++kind)
        total += worths[kind] * static_cast<double>(instance_.kinds[kind].demand);
    // Where everything is limited a scale of 1 is what the duals themselves mean.
    if (dearest <= 0.0)
        dearest = 1.0;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        if (!row.coil && row.available >= 0)
            total -= std::max(0.0, bestValues_[index] - dearest * static_cast<double>(row.cost)) *
                     static_cast<double>(row.available);
    }
    bound_ = total / dearest;
    excess_ = dearest;
}

bool Pricing::addColumns(MasterProgram& master) const
{
    bool any = false;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        const StockClass& row = instance_.stocks[index];
        if (across_[index].sizes.empty())
            continue;
        if (master.cutWhole(stock) && !row.coil) {
            const double cost = static_cast<double>(row.cost) + master.scarcity(stock);
            RawPattern pattern = patternOf(stock, row.along);
            if (master.worthOf(pattern) > cost * (1.0 + tolerance))
                any = master.addWhole(std::move(pattern)) || any;
            continue;
        }
        any = (!master.cutWhole(stock) && addSheets(master, stock)) || any;
        if (row.coil)
            any = addLevels(master, stock) || any;
    }
    return any;
}

bool Pricing::addSheets(MasterProgram& master, int stock) const
{
    const auto index = static_cast<std::size_t>(stock);
    const StockClass& row = instance_.stockAt(stock);
    const double cost = static_cast<double>(instance_.costOf(row, row.along)) +
                        master.scarcity(stock) * (row.coil ? row.along : 1.0);
    const double needed = cost * (1.0 + tolerance);
    bool any = bestValues_[index] > needed && master.addSheet(stock, bestWidths_[index]);
    std::vector<double> slots;
    for (std::size_t width = 0; width < across_[index].sizes.size(); ++width)
        slots.push_back(master.slot(stock, static_cast<int>(width)));
    Knapsack<double> knapsack(across_[index]);
    knapsack.fill(slots);
    if (knapsack.best(row.across, false) > needed)
        any = master.addSheet(stock, knapsack.pieces(row.across, false)) || any;
    return addStrips(master, stock, slots) || any;
}

/// The best strip of each width, and for the most attractive blanks the best strip that holds one.
bool Pricing::addStrips(MasterProgram& master, int stock, const std::vector<double>& slots) const
{
    const StockClass& row = instance_.stockAt(stock);
    const Frame& frame = instance_.frameAt(stock);
    const double small = tolerance * static_cast<double>(instance_.costOf(row, row.along));
    bool any = false;
    for (std::size_t width = 0; width < slots.size(); ++width) {
        const int w = static_cast<int>(width);
        const auto add = [&](RawStrip strip) {
            if (master.worthOf(stock, strip) > slots[width] + small)
                any = master.addStrip(stock, std::move(strip)) || any;
        };
        add(strips(stock).strip(w, row.along));
        std::vector<std::pair<double, int>> offers;
        const int first = frame.firstOfWidth[width], end = frame.firstOfWidth[width + 1];
        for (int at = first; at < end; ++at) {
            const Placement& placement = frame.placements[static_cast<std::size_t>(at)];
            if (placement.along > row.along)
                continue;
            const auto kind = static_cast<std::size_t>(placement.kind);
            const double value = master.worths()[kind] + strips(stock).best(w, row.along - placement.along);
            if (value > slots[width] + small)
                offers.emplace_back(-value, at);
        }
        std::ranges::sort(offers);
        const std::size_t most = 4 + static_cast<std::size_t>(end - first) / 8;
        for (std::size_t offer = 0; offer < std::min(most, offers.size()); ++offer)
            if (auto strip = stripWith(stock, w, offers[offer].second))
                add(std::move(*strip));
    }
    return any;
}

std::optional<RawStrip> Pricing::stripWith(int stock, int width, int placement) const
{
    const Placement& extra = instance_.frameAt(stock).placements[static_cast<std::size_t>(placement)];
    RawStrip strip = strips(stock).strip(width, instance_.stockAt(stock).along - extra.along);
    const auto at =
        std::ranges::find_if(strip.pieces, [placement](const auto& e) { return e.first <= placement; });
    if (at == strip.pieces.end() || at->first != placement) {
        strip.pieces.insert(at, {placement, 1});
        return strip;
    }
    if (++at->second > instance_.kinds[static_cast<std::size_t>(extra.kind)].demand)
        return std::nullopt;
    return strip;
}

/// Levels of every length that is worth more than it costs; the most attractive join.
bool Pricing::addLevels(MasterProgram& master, int stock) const
{
    const StockClass& row = instance_.stockAt(stock);
    const LevelTable& levels = *levels_[static_cast<std::size_t>(stock)];
    std::vector<std::pair<double, int>> offers;
    for (int along = 1; along <= row.along; ++along)
        if (levels.best(along) > levels.best(along - 1))
            offers.emplace_back(-levels.best(along) / (static_cast<double>(instance_.costOf(row, along)) +
                                                       master.scarcity(stock) * along),
                                along);
    std::ranges::sort(offers);
    bool any = false;
    constexpr std::size_t most = 24;
    for (std::size_t offer = 0; offer < std::min(most, offers.size()); ++offer) {
        RawPattern pattern = patternOf(stock, offers[offer].second);
        const double cost = static_cast<double>(instance_.costOf(row, pattern.along)) +
                            master.scarcity(stock) * pattern.along;
        if (master.worthOf(pattern) > cost * (1.0 + tolerance))
            any = master.addWhole(std::move(pattern)) || any;
    }
    return any;
}

double Pricing::valueOf(int stock, int along) const
{
    const auto index = static_cast<std::size_t>(stock);
    return levels_[index] ? levels_[index]->best(along) : bestValues_[index];
}

RawPattern Pricing::patternOf(int stock, int along) const
{
    const auto index = static_cast<std::size_t>(stock);
    const Pieces widths = levels_[index] ? levels_[index]->widths(strips(stock), along) : bestWidths_[index];
    RawPattern pattern{stock, along, 1, {}};
    for (auto entry = widths.rbegin(); entry != widths.rend(); ++entry) {
        for (int copy = 0; copy < entry->second; ++copy) {
            RawStrip strip = strips(stock).strip(entry->first, along);
            if (strip.pieces.empty())
                continue;
            const auto widest = static_cast<std::size_t>(strip.pieces.front().first);
            strip.width = instance_.frameAt(stock).widthOfPlacement[widest];
            pattern.strips.push_back(std::move(strip));
        }
    }
    if (instance_.stockAt(stock).coil) {
        pattern.along = 0;
        for (const RawStrip& strip : pattern.strips)
            pattern.along = std::max(pattern.along, takenBy(instance_.frameAt(stock), strip));
    }
    return pattern;
}

} // namespace lapwright::cutting
