#pragma once

#include "cutting/instance.h"
#include "cutting/knapsack.h"
#include "cutting/strip_table.h"

#include <vector>

namespace lapwright::cutting {

/// The most valuable level of a coil for every length at once, from the most valuable strips.
class LevelTable {
public:
    LevelTable(const Instance& instance, int stock);

    void fill(const StripTable& strips);

    [[nodiscard]] double best(int along) const { return best_[static_cast<std::size_t>(along)]; }
    /// Widths of the strips of the best level.
    [[nodiscard]] Pieces widths(const StripTable& strips, int along) const;
    /// Cells filled by the last pass, for counting work.
    [[nodiscard]] std::int64_t cellsFilled() const;

private:
    void fillLengthByLength(const StripTable& strips);
    [[nodiscard]] std::vector<double> worthAt(const StripTable& strips, int along) const;

    BarProblem across_;
    std::size_t cells_ = 0;
    bool limited_ = false;      ///< by the most strips of a setup
    std::vector<int> sums_;     ///< the sums of widths that can come about, ascending, 0 first
    std::vector<int> sumBelow_; ///< for each unit across the last of them not above it
    std::vector<double> table_; ///< for each sum and length
    std::vector<double> best_;
};

/// Widths across the stock with no limit but its span and the most strips.
[[nodiscard]] BarProblem acrossProblem(const Instance& instance, int stock);

} // namespace lapwright::cutting
