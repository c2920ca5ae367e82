#pragma once

#include "schedule/schedule.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// From an order of tasks on each machine to times: every task begins as early as its place in the order,
/// its metal, its release and its pin allow. For this score nothing is gained by waiting longer.
namespace lapwright::schedule {

/// Tasks of each machine in their order, by machine.
using Sequences = std::vector<std::vector<std::uint32_t>>;

/// Where each task stands. Seconds of work on its machine's calendar.
struct Times {
    std::vector<std::uint32_t> machine; ///< by task
    std::vector<std::int64_t> begin;    ///< by task
    std::vector<std::int64_t> end;
    std::vector<std::int64_t> wallEnd; ///< by task, seconds since the epoch
    std::vector<std::int64_t> ready;   ///< by machine of the floor: seconds of making ready
    std::vector<std::int64_t> missed;  ///< by machine: pins missed
    std::vector<std::vector<std::int64_t>>
        metal; ///< by lot and way: its work may begin then, as to its blanks
    Score score;
};

/// Times sequences; knows the problem by number. Not for several threads at once.
class Timing {
public:
    explicit Timing(const Problem& problem);

    /// Everything timed. Precondition: every task stands once, on a machine it has a way on.
    [[nodiscard]] Times time(const Sequences& sequences);
    /// The same after the orders of `changed` machines changed; what did not is not timed again.
    void retime(const Sequences& sequences, const std::vector<std::size_t>& changed, Times& times);

    /// Tasks placed so far: the unit of work.
    [[nodiscard]] std::int64_t placed() const { return placed_; }

    struct WayNumbers {
        std::uint32_t machine = 0;
        std::int64_t work = 0; ///< seconds of the whole task
        std::int64_t millisecondsEach = 0;
        std::uint32_t fitting = 0, setting = 0; ///< 0: none needed
        std::int64_t fit = 0, set = 0;
        std::int64_t earliest = 0; ///< on its calendar: release, machine free, pinned start
        std::int64_t pinned = -1;  ///< on its calendar; -1: not pinned there
    };
    struct Standing {
        std::uint32_t fitting = 0, setting = 0;
    };
    [[nodiscard]] const std::vector<WayNumbers>& ways(std::size_t task) const { return ways_[task]; }
    [[nodiscard]] std::size_t wayIndex(std::size_t task, std::size_t machine) const;
    [[nodiscard]] const WayNumbers& way(std::size_t task, std::size_t machine) const
    {
        return ways_[task][wayIndex(task, machine)];
    }
    [[nodiscard]] Standing standing(std::size_t machine) const { return standing_[machine]; }
    /// Seconds of making ready, and how the machine stands afterwards.
    [[nodiscard]] static std::int64_t makeReady(Standing& standing, const WayNumbers& way);
    [[nodiscard]] const Problem& problem() const { return problem_; }

private:
    struct Link {
        std::uint32_t cut = 0;
        std::vector<std::vector<Transfer>> transfers; ///< by way of the cut task
    };
    struct Arrival {
        std::int64_t wall = 0;
        std::int64_t pieces = 0;
    };

    std::uint32_t number(const std::string& readiness);
    void numberTask(std::size_t task);
    void timeMachine(std::size_t machine, const std::vector<std::uint32_t>& sequence, Times& times);
    void timeLots(const std::vector<std::uint32_t>& lots, Times& times);
    void arrivalsAt(std::size_t lot, const Times& times);
    [[nodiscard]] std::int64_t metalFor(std::size_t lot, const WayNumbers& way) const;
    void scoreOf(Times& times);

    const Problem& problem_;
    std::map<std::string, std::uint32_t> readiness_;
    std::vector<std::vector<WayNumbers>> ways_;
    std::vector<std::vector<Link>> links_;          ///< by lot
    std::vector<std::vector<std::uint32_t>> feeds_; ///< by cut task: lots
    std::vector<Standing> standing_;
    std::vector<std::optional<std::size_t>> after_;
    // Kept between calls so that timing asks for no memory.
    std::vector<Arrival> arrivals_;
    std::vector<std::uint8_t> touched_;
    std::vector<std::int64_t> latest_;
    std::int64_t placed_ = 0;
};

} // namespace lapwright::schedule
