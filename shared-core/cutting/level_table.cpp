#include "cutting/level_table.h"

#include <algorithm>

namespace lapwright::cutting {

BarProblem acrossProblem(const Instance& instance, int stock)
{
    const StockClass& row = instance.stockAt(stock);
    BarProblem across{row.across, instance.frameAt(stock).widths, {}, 0};
    while (!across.sizes.empty() && across.sizes.back() > row.across)
        across.sizes.pop_back();
    across.demands.assign(across.sizes.size(), row.across);
    across.mostPieces = std::max(1, std::min(instance.mostStrips, row.across));
    return across;
}

std::vector<std::int64_t> mostStripsOfWidths(const Instance& instance, int stock,
                                             const std::vector<std::int64_t>& wanted)
{
    const StockClass& row = instance.stockAt(stock);
    const Frame& frame = instance.frameAt(stock);
    std::vector<std::int64_t> most;
    for (std::size_t width = 0; width < frame.widths.size() && frame.widths[width] <= row.across; ++width) {
        most.push_back(0);
        for (int at = frame.firstOfWidth[width]; at < frame.firstOfWidth[width + 1]; ++at) {
            const Placement& placement = frame.placements[static_cast<std::size_t>(at)];
            if (placement.along <= row.along)
                most.back() += wanted[static_cast<std::size_t>(placement.kind)];
        }
    }
    return most;
}

LevelTable::LevelTable(const Instance& instance, int stock, Lengths lengths)
    : across_(acrossProblem(instance, stock)), which_(lengths),
      best_(static_cast<std::size_t>(instance.stockAt(stock).along) + 1, 0.0)
{
    if (across_.sizes.empty())
        return;
    limited_ = across_.mostPieces < across_.capacity / across_.sizes.front();
    std::vector<bool> reached(static_cast<std::size_t>(across_.capacity) + 1, false);
    reached[0] = true;
    for (std::size_t at = 0; at < reached.size(); ++at) {
        for (const int size : across_.sizes)
            if (reached[at] && at + static_cast<std::size_t>(size) < reached.size())
                reached[at + static_cast<std::size_t>(size)] = true;
        if (reached[at])
            sums_.push_back(static_cast<int>(at));
        sumBelow_.push_back(static_cast<int>(sums_.size()) - 1);
    }
}

void LevelTable::fill(const StripTable& strips, const std::vector<std::int64_t>& most)
{
    cellsFilled_ = 0;
    std::ranges::fill(best_, 0.0);
    lengths_.clear();
    if (across_.sizes.empty())
        return;
    across_.demands = most;
    chooseLengths(strips);
    if (which_ == Lengths::Few)
        leaveFewLengths(strips);
    if (limited_)
        fillLengthByLength(strips);
    else
        fillWidthByWidth(strips);
    for (std::size_t along = 1; along < best_.size(); ++along)
        best_[along] = std::max(best_[along], best_[along - 1]);
}

void LevelTable::chooseLengths(const StripTable& strips)
{
    std::vector<char> moves(best_.size(), 0);
    for (std::size_t width = 0; width < across_.sizes.size(); ++width) {
        const double* row = strips.row(static_cast<int>(width));
        for (std::size_t along = 1; along < moves.size(); ++along)
            moves[along] = static_cast<char>(moves[along] | (row[along] > row[along - 1] ? 1 : 0));
    }
    for (std::size_t along = 1; along < moves.size(); ++along)
        if (moves[along] != 0)
            lengths_.push_back(static_cast<int>(along));
}

/// No level is worth more for its metal than its best strip alone.
void LevelTable::leaveFewLengths(const StripTable& strips)
{
    constexpr std::size_t most = 48;
    if (lengths_.size() <= most)
        return;
    std::vector<std::pair<double, int>> ranked;
    for (const int along : lengths_) {
        double worth = 0.0;
        for (std::size_t width = 0; width < across_.sizes.size(); ++width)
            worth = std::max(worth, strips.best(static_cast<int>(width), along) / across_.sizes[width]);
        ranked.emplace_back(-worth / along, along);
    }
    std::ranges::nth_element(ranked, ranked.begin() + most);
    ranked.resize(most);
    lengths_.clear();
    for (const auto& [worth, along] : ranked)
        lengths_.push_back(along);
    std::ranges::sort(lengths_);
}

void LevelTable::fillWidthByWidth(const StripTable& strips)
{
    const std::size_t cells = lengths_.size();
    table_.assign(sums_.size() * cells, 0.0);
    strip_.resize(cells);
    for (std::size_t width = 0; width < across_.sizes.size(); ++width) {
        for (std::size_t cell = 0; cell < cells; ++cell)
            strip_[cell] = strips.best(static_cast<int>(width), lengths_[cell]);
        std::int64_t left = across_.demands[width];
        if (left >= across_.capacity / across_.sizes[width]) {
            addStrips(width, 1, true);
            continue;
        }
        for (std::int64_t part = 1; left > 0; part *= 2) {
            addStrips(width, static_cast<int>(std::min(part, left)), false);
            left -= std::min(part, left);
        }
    }
    for (std::size_t cell = 0; cell < cells; ++cell)
        best_[static_cast<std::size_t>(lengths_[cell])] = table_[(sums_.size() - 1) * cells + cell];
}

/// A bundle of strips of one width beside what is there, once or as often as there is room.
void LevelTable::addStrips(std::size_t width, int bundle, bool repeats)
{
    const std::size_t cells = lengths_.size();
    const int size = bundle * across_.sizes[width];
    const auto add = [&](std::size_t sum) {
        const int rest = sumBelow_[static_cast<std::size_t>(sums_[sum] - size)];
        const double* from = table_.data() + static_cast<std::size_t>(rest) * cells;
        double* to = table_.data() + sum * cells;
        const double* strip = strip_.data();
        for (std::size_t cell = 0; cell < cells; ++cell) {
            const double with = from[cell] + bundle * strip[cell];
            to[cell] = with > to[cell] ? with : to[cell];
        }
        cellsFilled_ += static_cast<std::int64_t>(cells);
    };
    const auto first = static_cast<std::size_t>(std::ranges::lower_bound(sums_, size) - sums_.begin());
    if (repeats)
        for (std::size_t sum = first; sum < sums_.size(); ++sum)
            add(sum);
    else
        for (std::size_t sum = sums_.size(); sum-- > first;)
            add(sum);
}

std::vector<double> LevelTable::worthAt(const StripTable& strips, int along) const
{
    std::vector<double> worth;
    for (std::size_t width = 0; width < across_.sizes.size(); ++width)
        worth.push_back(strips.best(static_cast<int>(width), along));
    return worth;
}

void LevelTable::fillLengthByLength(const StripTable& strips)
{
    Knapsack<double> knapsack(across_);
    for (const int along : lengths_) {
        knapsack.fill(worthAt(strips, along));
        best_[static_cast<std::size_t>(along)] = knapsack.best(across_.capacity, false);
    }
}

Pieces LevelTable::widths(const StripTable& strips, int along) const
{
    Knapsack<double> knapsack(across_);
    knapsack.fill(worthAt(strips, along));
    return knapsack.pieces(across_.capacity, false);
}

} // namespace lapwright::cutting
