#pragma once

#include "cutting/instance.h"
#include "cutting/knapsack.h"
#include "cutting/strip_table.h"

#include <vector>

namespace lapwright::cutting {

/// The most valuable level of a coil for every length at once, from the most valuable strips.
class LevelTable {
public:
    /// Every length at which a strip can be worth more than a unit shorter; or a few of them, whose strips
    /// are worth most for the metal they take, where a good level is wanted sooner than the best.
    enum class Lengths { All, Few };

    LevelTable(const Instance& instance, int stock, Lengths lengths);

    /// `strips`: at most so many of each width.
    void fill(const StripTable& strips, const std::vector<std::int64_t>& most);

    /// Of a level of this length, or of the longest that was looked at below it.
    [[nodiscard]] double best(int along) const { return best_[static_cast<std::size_t>(along)]; }
    /// Widths of the strips of the best level.
    [[nodiscard]] Pieces widths(const StripTable& strips, int along) const;
    /// Cells filled by the last pass, for counting work.
    [[nodiscard]] std::int64_t cellsFilled() const { return cellsFilled_; }

private:
    void chooseLengths(const StripTable& strips);
    void leaveFewLengths(const StripTable& strips);
    void fillLengthByLength(const StripTable& strips);
    void fillWidthByWidth(const StripTable& strips);
    void addStrips(std::size_t width, int bundle, bool repeats);
    [[nodiscard]] std::vector<double> worthAt(const StripTable& strips, int along) const;

    BarProblem across_;
    Lengths which_;
    bool limited_ = false;      ///< by the most strips of a setup
    std::vector<int> sums_;     ///< the sums of widths that can come about, ascending, 0 first
    std::vector<int> sumBelow_; ///< for each unit across the last of them not above it
    std::vector<int> lengths_;  ///< that are looked at, ascending
    std::vector<double> strip_; ///< what the strips of one width are worth at these lengths
    std::vector<double> table_; ///< for each sum and length
    std::vector<double> best_;  ///< for each unit along
    std::int64_t cellsFilled_ = 0;
};

/// Widths across the stock with no limit but its span and the most strips.
[[nodiscard]] BarProblem acrossProblem(const Instance& instance, int stock);

/// The most strips of each width that can be cut if so much is wanted of each kind: a blank of the width
/// holds each.
[[nodiscard]] std::vector<std::int64_t> mostStripsOfWidths(const Instance& instance, int stock,
                                                           const std::vector<std::int64_t>& wanted);

} // namespace lapwright::cutting
