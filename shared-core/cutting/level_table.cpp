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

LevelTable::LevelTable(const Instance& instance, int stock)
    : across_(acrossProblem(instance, stock)),
      cells_(static_cast<std::size_t>(instance.stockAt(stock).along) + 1), best_(cells_, 0.0)
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
    if (!limited_)
        table_.assign(sums_.size() * cells_, 0.0);
}

void LevelTable::fill(const StripTable& strips)
{
    if (across_.sizes.empty())
        return;
    if (limited_) {
        fillLengthByLength(strips);
        return;
    }
    for (std::size_t sum = 1; sum < sums_.size(); ++sum) {
        double* to = table_.data() + sum * cells_;
        std::copy(to - cells_, to, to);
        for (std::size_t width = 0; width < across_.sizes.size() && across_.sizes[width] <= sums_[sum];
             ++width) {
            const int rest = sumBelow_[static_cast<std::size_t>(sums_[sum] - across_.sizes[width])];
            const double* from = table_.data() + static_cast<std::size_t>(rest) * cells_;
            const double* strip = strips.row(static_cast<int>(width));
            for (std::size_t along = 0; along < cells_; ++along) {
                const double with = from[along] + strip[along];
                to[along] = with > to[along] ? with : to[along];
            }
        }
    }
    best_.assign(table_.end() - static_cast<std::ptrdiff_t>(cells_), table_.end());
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
    std::vector<double> before;
    for (std::size_t along = 0; along < cells_; ++along) {
        std::vector<double> worth = worthAt(strips, static_cast<int>(along));
        if (worth != before)
            knapsack.fill(worth);
        best_[along] =
            worth == before && along > 0 ? best_[along - 1] : knapsack.best(across_.capacity, false);
        before = std::move(worth);
    }
}

Pieces LevelTable::widths(const StripTable& strips, int along) const
{
    if (limited_) {
        Knapsack<double> knapsack(across_);
        knapsack.fill(worthAt(strips, along));
        return knapsack.pieces(across_.capacity, false);
    }
    std::map<int, int> counts;
    const auto cell = static_cast<std::size_t>(along);
    std::size_t sum = sums_.empty() ? 0 : sums_.size() - 1;
    while (sum > 0) {
        const double value = table_[sum * cells_ + cell];
        if (value == table_[(sum - 1) * cells_ + cell]) {
            --sum;
            continue;
        }
        for (std::size_t width = 0; width < across_.sizes.size(); ++width) {
            if (across_.sizes[width] > sums_[sum])
                break;
            const auto rest = static_cast<std::size_t>(
                sumBelow_[static_cast<std::size_t>(sums_[sum] - across_.sizes[width])]);
            if (table_[rest * cells_ + cell] + strips.best(static_cast<int>(width), along) == value) {
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
    return static_cast<std::int64_t>(sums_.size() * cells_ * across_.sizes.size());
}

} // namespace lapwright::cutting
