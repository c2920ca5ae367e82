#pragma once

#include "schedule/problem.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a schedule says.
namespace lapwright::schedule {

/// What makes one schedule better than another, the first that differs deciding.
struct Score {
    Duration pinsMissed; ///< work by which pinned starts are missed, a day for each broken order
    std::int64_t weightedLateness = 0; ///< seconds late on the wall clock × weight, over the deliveries
    Duration makespan;                 ///< on the wall clock, from the schedule's begin to the last end
    Duration makingReady;              ///< time the setups take

    friend auto operator<=>(const Score&, const Score&) = default;
};

/// One task on its machine's timeline. Making ready comes right before the work, in the machine's hours.
struct Block {
    std::size_t task = 0;
    std::size_t machine = 0;
    bool fits = false; ///< the fitting is changed before it
    bool sets = false; ///< the setting is changed before it
    Moment setupFrom;  ///< equal to start where nothing is changed
    Moment start;
    Moment end;

    friend bool operator==(const Block&, const Block&) = default;
};

/// How often machines are made ready, and how long that takes.
struct Setups {
    std::int64_t fittings = 0; ///< coils and racks changed, beam faces changed
    std::int64_t settings = 0; ///< knives set, programs changed
    Duration time;

    friend bool operator==(const Setups&, const Setups&) = default;
};

/// No schedule that keeps the problem's rules has less; each number is a bound by itself.
struct Bound {
    std::int64_t weightedLateness = 0;
    Duration makespan;
    Duration makingReady;

    friend bool operator==(const Bound&, const Bound&) = default;
};

/// A simple way to run the shop, to compare with.
struct Reference {
    Score score;
    Setups setups;
    std::int64_t lateDeliveries = 0;

    friend bool operator==(const Reference&, const Reference&) = default;
};

/// Why a lot ends after its delivery is due.
struct LateReason {
    enum class Kind {
        NotEnoughHours,   ///< even alone in the shop it would be late
        WaitedForMachine, ///< its folder did other lots first
        WaitedForBlanks,  ///< its blanks were cut late, the cutter being busy with others
        Pinned,           ///< a person's pin holds it, or its blanks, there
        BehindPinned      ///< its machine waits for a pinned task
    };
    std::size_t lot = 0;
    Kind kind = Kind::NotEnoughHours;
    Duration late;                      ///< on the wall clock
    std::optional<std::size_t> machine; ///< what it waited for
    Duration waited;                    ///< hours of that machine worked on others meanwhile
    std::vector<std::size_t> before;    ///< tasks that went before it there, the nearest last
    Phrase statement;

    friend bool operator==(const LateReason&, const LateReason&) = default;
};

/// One flag for each rule; true where it is kept.
struct Feasibility {
    bool everyTaskOnce = true;
    bool machinesAble = true;
    bool oneAtATime = true;
    bool inHours = true;
    bool madeReady = true;
    bool blanksThere = true;
    bool releasesKept = true;
    bool pinsKept = true;
    bool scoreRight = true;
    bool boundHolds = true;

    /// Every rule but the pins: the shop can work by it.
    [[nodiscard]] bool workable() const
    {
        return everyTaskOnce && machinesAble && oneAtATime && inHours && madeReady && blanksThere &&
               releasesKept && scoreRight && boundHolds;
    }
    [[nodiscard]] bool all() const { return workable() && pinsKept; }

    friend bool operator==(const Feasibility&, const Feasibility&) = default;
};

enum class Proof { ProvenBest, Gap };
enum class Ending { Proven, NothingBetterFound, WorkLimit, Cancelled };

struct Schedule {
    std::vector<Block> blocks; ///< machine after machine, each by time
    Score score;
    Setups setups;
    std::int64_t lateDeliveries = 0;
    Bound bound;
    Proof proof = Proof::Gap;
    Ending ending = Ending::NothingBetterFound;
    std::string method;  ///< "Johnson's rule", "every order tried", "search"
    Reference firstCome; ///< in the order of arrival, each task as soon as its machine is free
    Reference shortest;  ///< shortest processing time first
    std::vector<LateReason> late;
    rules::Findings findings; ///< pins refused, and pins that could not be kept together
    Feasibility feasibility;  ///< as the independent checker found it
    std::int64_t work = 0;    ///< counted in the unit of Settings::workLimit
};

} // namespace lapwright::schedule
