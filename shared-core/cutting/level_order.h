#pragma once

#include "cutting/instance.h"

#include <functional>
#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// For small batches of one coil: an order of the blanks makes a plan, each blank going into the first strip
/// or level that takes it or else opening a level of its length. The order is bettered by small changes.
class LevelOrder {
public:
    /// True ends the search; told of the ticks of work since.
    using Stop = std::function<bool(std::int64_t ticks)>;

    /// Whether the instance is of that sort: one coil, few enough blanks.
    [[nodiscard]] static bool takes(const Instance& instance);

    LevelOrder(const Instance& instance, std::uint64_t seed, Stop stop);

    /// Tries this many changes; the best plan so far where it costs less than `limit`.
    [[nodiscard]] std::optional<RawPlan> search(int changes, std::int64_t limit);

private:
    struct Strip {
        int width, left;
        std::vector<int> placements;
    };
    struct Level {
        int length, left;
        std::vector<Strip> strips;
    };

    void startAnew();
    /// Lays the blanks in their order; returns what the levels take, with a small share that prefers waste in
    /// one place to the same waste in many.
    double lay();
    bool layInto(Level& level, int placement) const;
    void change();
    [[nodiscard]] RawPlan plan() const;

    const Instance& instance_;
    const Frame& frame_;
    std::mt19937 random_;
    Stop stop_;
    std::vector<std::vector<int>> waysOfKind_; ///< placements
    std::vector<int> order_;                   ///< placements, one for each blank
    std::vector<Level> levels_;
    std::size_t used_ = 0; ///< of the levels, whose memory is kept
};

} // namespace lapwright::cutting
