#pragma once

#include "cutting/pricing.h"

#include <functional>
#include <limits>
#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// Plans built pattern by pattern, each time the one whose blanks are worth most for its cost. What a blank
/// is worth starts at its area and is corrected by what the metal around it cost in the plans made, so that
/// blanks which are hard to place go first in the next plan.
class ValueCorrection {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    ValueCorrection(const Instance& instance, std::uint64_t seed, Stop stop);

    /// The next plan, where it costs less than `limit`. None where it does not, where the stock does not
    /// suffice, or where it was stopped.
    [[nodiscard]] std::optional<RawPlan> next(std::int64_t limit);

private:
    struct Choice {
        int stock = -1, along = 0;
        double ratio = 0.0; ///< of worth to cost
    };

    [[nodiscard]] std::vector<Choice> choices() const;
    [[nodiscard]] RawPattern choose();
    [[nodiscard]] RawPattern fill(const Choice& choice);
    [[nodiscard]] RawStrip bestStrip(int stock, int along, int across, int room,
                                     const std::vector<std::int64_t>& wanted);
    [[nodiscard]] double ratioOf(const RawPattern& pattern) const;
    [[nodiscard]] std::int64_t repeats(const RawPattern& pattern) const;
    bool take(RawPattern pattern, RawPlan& plan);
    void takeRivals(RawPlan& plan);
    void correct(const RawPattern& pattern);
    /// Exponents of a blank's sides in what it is worth at the start.
    struct Shape {
        double across = 0.04, along = 0.25;
    };

    void startAnew();
    [[nodiscard]] Shape nextShape();

    const Instance& instance_;
    std::mt19937 random_;
    Stop stop_;
    Pricing pricing_;
    std::vector<StripTable> tables_; ///< of each frame, for what is still wanted while a pattern is filled
    std::int64_t ticks_ = 0;
    double price_ = 0.0; ///< of a unit of area in the cheapest metal
    std::vector<double> areas_, worths_;
    Shape shape_, bestShape_;
    /// Of the plans made from one start together.
    double costOfShape_ = 0.0, leastCost_ = std::numeric_limits<double>::infinity();
    int plansOfShape_ = 0;
    std::vector<double> shapes_; ///< by how much more than its area a blank is worth at the start
    std::vector<std::pair<double, double>> sides_;
    int plans_ = 0;
    std::vector<std::int64_t> residual_, used_;
};

} // namespace lapwright::cutting
