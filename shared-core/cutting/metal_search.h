#pragma once

#include "cutting/nested_patterns.h"
#include "cutting/settings.h"
#include "cutting/watch.h"

#include <functional>
#include <optional>

namespace lapwright::cutting {

/// Looks for the plan of least metal: strips then sheets, nested patterns, whole plans by value correction or
/// order, ruin and recreate, until the plan is proven least or a limit is reached.
class MetalSearch {
public:
    struct Listener {
        /// Takes a cheaper plan, says whether it was taken; `proven` whether none can be cheaper.
        std::function<bool(const RawPlan&)> plan;
        std::function<void(const Certificate&)> certificate;
        std::function<bool()> proven;
        std::function<void()> everyPlanTried; ///< none can be cheaper than the best; may be empty
    };

    MetalSearch(const Instance& instance, const Settings& settings, Watch& watch, Listener listener);

    /// `plan` covers all demand. Returns the best one found.
    RawPlan run(RawPlan plan);
    /// The certificate alone, no plans.
    void bound(const RawPlan& plan);

private:
    [[nodiscard]] std::optional<int> stockForAll() const;
    [[nodiscard]] bool over(std::int64_t ticks) { return watch_.over(ticks); }
    void take(const RawPlan& plan);
    [[nodiscard]] bool gathers() const;
    [[nodiscard]] RawPlan withGatheredOffcuts(const RawPlan& plan);
    void byStrips();
    void byEveryPlan();
    void byPatterns();
    void byCorrection(int plans);
    void byOrder();
    void byLevelCounts();
    bool byRuin(const std::vector<double>& worths);
    [[nodiscard]] NestedPatterns::Listener listener();

    const Instance& instance_;
    const Settings& settings_;
    Watch& watch_;
    Listener listener_;
    RawPlan best_;
    std::uint64_t ruins_ = 0;
    std::optional<WarmStart> start_;
};

} // namespace lapwright::cutting
