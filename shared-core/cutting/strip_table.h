#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// For values of the kinds, the most valuable strip of every width and length of one frame, by one pass over
/// its placements; a placement is used at most as often as its kind is demanded.
class StripTable {
public:
    StripTable(const Instance& instance, int frame, int longest);

    void fill(const std::vector<double>& values);

    [[nodiscard]] double best(int width, int along) const
    {
        return best_[static_cast<std::size_t>(width) * cells_ + static_cast<std::size_t>(along)];
    }
    [[nodiscard]] RawStrip strip(int width, int along) const;
    /// Cells filled by the last pass, for counting work.
    [[nodiscard]] std::int64_t cellsFilled() const
    {
        return static_cast<std::int64_t>(passes_.size() * cells_);
    }

private:
    struct Pass {
        int placement, bundle;
        bool repeats;
    };

    void addPasses(std::size_t placement, double value, std::vector<double>& row);
    void runPass(const Pass& pass, double value, std::vector<double>& row);

    const Instance& instance_;
    const Frame& frame_;
    std::size_t cells_;
    std::vector<double> best_;
    std::vector<Pass> passes_;
    std::vector<std::size_t> passesUpTo_; ///< of each width: end of its passes
    std::vector<std::size_t> passesFrom_;
    std::vector<char> taken_;
};

} // namespace lapwright::cutting
