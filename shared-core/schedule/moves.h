#pragma once

#include "schedule/timing.h"

#include <cstdint>
#include <random>
#include <vector>

namespace lapwright::schedule {

/// Makes random changes to sequences. The same seed makes the same changes to the same sequences.
class Moves {
public:
    Moves(const Timing& timing, std::uint64_t seed);

    /// Changes `sequences` and returns the machines whose order changed; none if nothing came of it.
    [[nodiscard]] std::vector<std::size_t> change(Sequences& sequences, const Times& times);

private:
    struct Place {
        std::size_t machine = 0;
        std::size_t at = 0;
    };

    [[nodiscard]] std::size_t below(std::size_t count) { return static_cast<std::size_t>(random_() % count); }
    [[nodiscard]] Place placeOf(const Sequences& sequences, std::size_t task, const Times& times) const;
    [[nodiscard]] std::size_t anyTask(const Times& times);
    std::vector<std::size_t> relocate(Sequences& sequences, const Times& times, std::size_t task);
    std::vector<std::size_t> exchange(Sequences& sequences, const Times& times, std::size_t task);
    std::vector<std::size_t> moveRun(Sequences& sequences, const Times& times, std::size_t task);
    std::vector<std::size_t> pullForward(Sequences& sequences, const Times& times, std::size_t task);
    std::vector<std::size_t> joinAlike(Sequences& sequences, const Times& times, std::size_t task);

    const Timing& timing_;
    std::mt19937_64 random_;
    std::vector<std::size_t> lots_;
    std::vector<std::size_t> all_;
    std::vector<std::vector<std::size_t>> groups_; ///< tasks of one setting
    std::vector<std::size_t> groupOf_;             ///< by task
};

} // namespace lapwright::schedule
