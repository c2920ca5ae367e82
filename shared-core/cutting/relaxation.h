#pragma once

#include "cutting/master_program.h"
#include "cutting/pricing.h"
#include "cutting/rounding.h"

#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// The linear relaxation of what a rounding still lacks, solved by column generation, and roundings of it.
class Relaxation {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    struct Way {
        double share = 0.25; ///< of the fractions fixed at once
        int rounds = 2;      ///< of pricing between
        double noise = 0.0;
    };

    Relaxation(const Instance& instance, MasterProgram::Columns columns, Rounding from, Stop stop);

    [[nodiscard]] MasterProgram& master() { return master_; }

    /// False where it was stopped or has no solution. `goal`: the search may end early once no plan can cost
    /// less than that.
    bool solve(double goal);
    /// The rounding it started from, completed; none where stopped, stuck, or dearer than `limit`.
    [[nodiscard]] std::optional<Rounding> round(const Way& way, double limit, std::mt19937& random);
    /// Whole parts of the solution only.
    [[nodiscard]] Rounding wholeParts();

    /// Of the whole plan, the fixed patterns included; sheets may be fractions.
    [[nodiscard]] double objective() const { return master_.objective() + from_.costOfWholes(); }
    /// What no plan of the instance can cost less than, and the worths of the kinds that show it; only where
    /// it started from nothing.
    [[nodiscard]] double bound() const { return bound_; }
    [[nodiscard]] const std::vector<double>& worths() const { return center_; }

private:
    [[nodiscard]] std::vector<double> worthsByArea() const;
    bool solveProgram();
    bool addColumns(double goal);
    bool price(const std::vector<double>& worths, double goal);
    [[nodiscard]] bool tight(double goal) const;
    bool stopped(std::int64_t ticks);

    const Instance& instance_;
    Rounding from_;
    Stop stop_;
    Pricing pricing_;
    MasterProgram master_;
    std::vector<double> center_;
    double bound_ = 0.0;
    bool done_ = false;
};

/// Costs are whole numbers: the least of them not below this one, rounding errors of the program forgiven.
[[nodiscard]] double wholeCost(double cost);

} // namespace lapwright::cutting
