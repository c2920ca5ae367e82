#pragma once

#include "cutting/nested_patterns.h"
#include "cutting/part.h"

#include <random>
#include <vector>

namespace lapwright::cutting {

/// Ruin and recreate: some patterns are taken out of a plan, wasteful ones sooner, and their blanks planned
/// anew as a small instance of their own.
class Ruin {
public:
    /// `worths` of each kind say which patterns waste; areas where empty.
    Ruin(const Instance& instance, RawPlan plan, std::vector<double> worths, std::uint64_t seed,
         NestedPatterns::Listener listener);

    /// One ruin; a cheaper plan is handed to the listener. False once nothing more is wanted.
    bool step();
    [[nodiscard]] const RawPlan& plan() const { return plan_; }

private:
    [[nodiscard]] double wasteOf(const RawPattern& pattern) const;
    /// Patterns, one entry for each copy, ascending.
    std::vector<std::size_t> pick();
    [[nodiscard]] std::size_t draw();
    bool recreate(const std::vector<std::size_t>& picked);
    RawPlan byCorrection(const Part& part, std::int64_t limit);
    RawPlan byOrder(const Part& part, std::int64_t limit);
    RawPlan byRelaxation(const Part& part, const RawPlan& old);
    bool stopped(std::int64_t ticks);
    void exchange(const std::vector<std::size_t>& picked, const RawPlan& better);

    const Instance& instance_;
    RawPlan plan_;
    std::vector<double> worths_;
    std::vector<double> waste_;          ///< of one copy of each pattern
    std::vector<std::int64_t> copiesTo_; ///< sums of the patterns' counts
    std::int64_t cost_ = 0;
    std::mt19937 random_;
    NestedPatterns::Listener listener_;
    bool done_ = false;
};

} // namespace lapwright::cutting
