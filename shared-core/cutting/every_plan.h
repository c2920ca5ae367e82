#pragma once

#include "cutting/instance.h"

#include <functional>
#include <optional>
#include <vector>

namespace lapwright::cutting {

/// For a handful of blanks: every plan there is, until one is cheaper than all others or the steps are used
/// up.
class EveryPlan {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    [[nodiscard]] static bool takes(const Instance& instance);

    EveryPlan(const Instance& instance, Stop stop);

    /// The cheapest plan, where it costs less than `limit`.
    [[nodiscard]] std::optional<RawPlan> search(std::int64_t limit);
    /// Whether it came to its end: then there is no cheaper plan.
    [[nodiscard]] bool exhausted() const { return !done_; }

private:
    struct Strip {
        int across, used;
        std::vector<int> placements;
    };
    struct Sheet {
        int stock, across; ///< what the strips take
        std::int64_t cost;
        std::vector<Strip> strips;
    };

    void place(std::size_t blank);
    void intoStrips(std::size_t blank, int placement, std::size_t sheet);
    void intoNewStrip(std::size_t blank, int placement, std::size_t sheet);
    void intoNewSheet(std::size_t blank, int stock, int placement);
    [[nodiscard]] const Placement& placementOf(int stock, int placement) const
    {
        return instance_.frameAt(stock).placements[static_cast<std::size_t>(placement)];
    }
    [[nodiscard]] int longest(const Sheet& sheet) const;
    void recost(Sheet& sheet, std::int64_t& cost, int sign);
    [[nodiscard]] RawPlan plan() const;

    const Instance& instance_;
    Stop stop_;
    std::vector<int> blanks_;                  ///< kinds, dearest first
    std::vector<std::vector<int>> placements_; ///< for each frame, for each kind
    std::vector<Sheet> sheets_;
    std::vector<std::int64_t> used_;
    std::int64_t cost_ = 0, limit_ = 0, steps_ = 0;
    double mostCost_ = 0.0; ///< of a plan that may yet be worth less than the limit
    bool done_ = false;
    std::optional<RawPlan> best_;
};

} // namespace lapwright::cutting
