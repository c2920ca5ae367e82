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

void LevelTable::fill(const StripTable& strips)
{
    std::ranges::fill(best_, 0.0);
    lengths_.clear();
    if (across_.sizes.empty())
        return;
    chooseLengths(strips);
    if (which_ == Lengths::Few)
        leaveFewLengths(strips);
    if (limited_)
        fillLengthByLength(strips);
    else
        fillSumBySum(strips);
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

void LevelTable::fillSumBySum(const StripTable& strips)
{
    const std::size_t cells = lengths_.size();
    strip_.resize(across_.sizes.size() * cells);
    for (std::size_t width = 0; width < across_.sizes.size(); ++width)
        for (std::size_t cell = 0; cell < cells; ++cell)
            strip_[width * cells + cell] = strips.best(static_cast<int>(width), lengths_[cell]);
    table_.assign(sums_.size() * cells, 0.0);
    for (std::size_t sum = 1; sum < sums_.size(); ++sum) {
        double* to = table_.data() + sum * cells;
        std::copy(to - cells, to, to);
        for (std::size_t width = 0; width < across_.sizes.size() && across_.sizes[width] <= sums_[sum];
             ++width) {
            const int rest = sumBelow_[static_cast<std::size_t>(sums_[sum] - across_.sizes[width])];
            const double* from = table_.data() + static_cast<std::size_t>(rest) * cells;
            const double* strip = strip_.data() + width * cells;
            for (std::size_t cell = 0; cell < cells; ++cell) {
                const double with = from[cell] + strip[cell];
                to[cell] = with > to[cell] ? with : to[cell];
            }
        }
    }
    for (std::size_t cell = 0; cell < cells; ++cell)
        best_[static_cast<std::size_t>(lengths_[cell])] = table_[(sums_.size() - 1) * cells + cell];
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
    if (limited_) {
        Knapsack<double> knapsack(across_);
        knapsack.fill(worthAt(strips, along));
        return knapsack.pieces(across_.capacity, false);
    }
    const auto above = std::ranges::upper_bound(lengths_, along);
    if (above == lengths_.begin())
        return {};
    std::map<int, int> counts;
    const std::size_t cells = lengths_.size();
    const auto cell = static_cast<std::size_t>(above - lengths_.begin()) - 1;
    std::size_t sum = sums_.size() - 1;
    while (sum > 0) {
        const double value = table_[sum * cells + cell];
        if (value == table_[(sum - 1) * cells + cell]) {
            --sum;
            continue;
        }
        for (std::size_t width = 0; width < across_.sizes.size(); ++width) {
            if (across_.sizes[width] > sums_[sum])
                break;
            const auto rest = static_cast<std::size_t>(
                sumBelow_[static_cast<std::size_t>(sums_[sum] - across_.sizes[width])]);
            if (table_[rest * cells + cell] + strip_[width * cells + cell] == value) {
                ++counts[static_cast<int>(width)];
                sum = rest;
                break;
            }
        }
    }
    return {counts.begin(), counts.end()};
}

std::int64_t LevelTable::cellsFilled() const
{
    return static_cast<std::int64_t>(sums_.size() * lengths_.size() * across_.sizes.size());
}

} // namespace lapwright::cutting
