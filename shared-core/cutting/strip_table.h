#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// For values of the kinds, the most valuable strip of every width and length of one frame, by one pass over
/// its placements; a placement is used at most as often as its kind is wanted.
class StripTable {
public:
    StripTable(const Instance& instance, int frame, int longest);

    void fill(const std::vector<double>& values, const std::vector<std::int64_t>& wanted);

    [[nodiscard]] double best(int width, int along) const { return row(width)[along]; }
    /// The best values of one width for every length.
    [[nodiscard]] const double* row(int width) const
    {
        return best_.data() + static_cast<std::size_t>(width) * cells_;
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

    void addPasses(std::size_t placement, double value, std::int64_t wanted);
    void runPass(const Pass& pass, double value);
    [[nodiscard]] int lastTaken(std::size_t cell, int limit) const;

    const Instance& instance_;
    const Frame& frame_;
    std::size_t cells_;
    std::vector<double> best_;
    std::vector<double> row_, next_;
    std::vector<Pass> passes_;
    std::vector<int> passesUpTo_; ///< of each width: end of its passes
    std::vector<int> passesFrom_;
    static constexpr std::size_t passesOfWord = 64;
    std::vector<std::uint64_t> taken_; ///< for each 64 passes and each cell, which of them bettered it
};

} // namespace lapwright::cutting
