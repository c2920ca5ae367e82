#pragma once

#include "cutting/knapsack.h"
#include "cutting/linear_program.h"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::cutting {

/// The linear relaxation of a problem of bars, for demands that change: bars found once stay at hand.
class BarRelaxation {
public:
    BarRelaxation(const BarProblem& problem, std::function<bool()> stop);

    void add(const Pieces& bar);
    void setDemands(const std::vector<std::int64_t>& demands);
    /// Solves for the bars found so far. False where the program failed or was stopped.
    [[nodiscard]] bool solve();
    /// Adds the bars most worth more than one by the duals of the last solve. False where there are none.
    bool price();
    /// The fewest bars for these demands where bars may be fractions; none where that is more than `most`.
    /// May find new bars on the way.
    [[nodiscard]] std::optional<double> fewest(const std::vector<std::int64_t>& demands, double most);

    [[nodiscard]] double objective() const { return program_->objective(); }
    [[nodiscard]] const std::vector<double>& duals() const { return duals_; }
    /// The most any bar is worth by them.
    [[nodiscard]] double mostWorth() const { return knapsack_.best(problem_.capacity, false); }
    [[nodiscard]] std::vector<double> values() const { return program_->values(); }
    [[nodiscard]] const std::vector<Pieces>& bars() const { return bars_; }
    [[nodiscard]] LinearProgram::Basis basis() const { return program_->basis(); }
    /// Ticks of work since it was last asked.
    [[nodiscard]] std::int64_t ticks() { return std::exchange(ticks_, 0); }

private:
    void addSingles();
    void keepBasisOnly(const std::vector<std::int64_t>& demands);

    const BarProblem& problem_;
    std::function<bool()> stop_;
    Knapsack<double> knapsack_;
    std::unique_ptr<LinearProgram> program_;
    std::vector<int> bySize_;
    std::vector<Pieces> bars_;
    std::map<Pieces, int> known_;
    std::vector<double> duals_;
    std::int64_t ticks_ = 0;
};

} // namespace lapwright::cutting
