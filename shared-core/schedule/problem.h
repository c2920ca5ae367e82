#pragma once

#include "rules/finding.h"
#include "schedule/calendar.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What has to be scheduled: tasks of two stages on the machines of a floor. A ProblemBuilder takes
/// everything in, names what cannot be right, and yields a const Problem that every other function may trust.
namespace lapwright::schedule {

/// Metal is cut first and folded then.
enum class Stage { Cut, Fold };

/// What a machine must be made ready with: something fitted (a coil hung, a rack of sheets at hand, a beam
/// face) and something set (the knives of a slitter, the program of a folder). Empty: no such thing.
struct Readiness {
    std::string fitting;
    std::string setting;

    friend bool operator==(const Readiness&, const Readiness&) = default;
};

struct Machine {
    std::string key;
    std::string name;
    Stage stage = Stage::Cut;
    Hours hours;
    Readiness
        standing;    ///< how it stands when the schedule begins; empty: not known, so it is made ready anew
    Moment freeFrom; ///< not before this; earlier than the schedule's begin: at once

    friend bool operator==(const Machine&, const Machine&) = default;
};

/// How a task is done on one machine. Making ready takes `fit` where the fitting differs from that of the
/// task before on the machine, and `set` where the setting does; it may be done before the task's metal is
/// there.
struct Way {
    std::size_t machine = 0;
    std::int64_t millisecondsEach = 0; ///< of one unit
    Readiness ready;
    Duration fit;
    Duration set;

    friend bool operator==(const Way&, const Way&) = default;
};

/// A cut task cuts `units` sheets or coil levels alike; a fold task, a lot, folds `units` pieces of one
/// program. A task is never parted or interrupted but by the end of a shift.
struct Task {
    std::string key;  ///< unique; names the task in pins and documents
    std::string name; ///< for people
    Stage stage = Stage::Cut;
    std::int64_t units = 1;
    std::vector<Way> ways;               ///< at most one a machine
    std::optional<std::size_t> delivery; ///< of a lot; missing: nobody waits for it
    Moment release;                      ///< not begun before

    friend bool operator==(const Task&, const Task&) = default;
};

/// `pieces` of a lot come out of a cut task, evenly over its units: when `u` of them are cut, so are
/// floor(pieces × u / units).
struct Supply {
    std::size_t cut = 0;
    std::size_t lot = 0;
    std::int64_t pieces = 0;

    friend bool operator==(const Supply&, const Supply&) = default;
};

/// What leaves on one truck for one order. It is as late as the last of its lots.
struct Delivery {
    std::string key;
    std::string name;
    std::optional<Moment> due;
    std::int64_t weight = 1; ///< what a second late counts

    friend bool operator==(const Delivery&, const Delivery&) = default;
};

/// A person's word: this task on this machine, beginning its work at this moment, or at any time after that
/// other task on the same machine.
struct Pin {
    std::size_t task = 0;
    std::optional<std::size_t> machine;
    std::optional<Moment> start;
    std::optional<std::size_t> after;

    friend bool operator==(const Pin&, const Pin&) = default;
};

/// `arrived` pieces of the supply are at the folder when its cut task has worked for `offset`.
struct Transfer {
    std::int64_t arrived = 0;
    Duration offset;
};

class ProblemBuilder;

/// A validated scheduling problem.
class Problem {
public:
    [[nodiscard]] Moment begin() const { return begin_; }
    [[nodiscard]] const std::vector<Machine>& machines() const { return machines_; }
    [[nodiscard]] const std::vector<Task>& tasks() const { return tasks_; }
    [[nodiscard]] const std::vector<Supply>& supplies() const { return supplies_; }
    [[nodiscard]] const std::vector<Delivery>& deliveries() const { return deliveries_; }
    /// Those that can be kept each for itself; ways that a pin rules out are gone from its task.
    [[nodiscard]] const std::vector<Pin>& pins() const { return pins_; }
    /// Pins that nothing can keep, and why; they are left out.
    [[nodiscard]] const rules::Findings& refusedPins() const { return refusedPins_; }
    /// Pieces moved from cutting to folding together; none: only when the cut task is done.
    [[nodiscard]] std::optional<std::int64_t> transferPieces() const { return transferPieces_; }

    /// A machine's hours from the begin, long enough for any schedule without needless waiting.
    [[nodiscard]] const Calendar& calendar(std::size_t machine) const { return calendars_[machine]; }
    /// Indices into supplies().
    [[nodiscard]] const std::vector<std::size_t>& suppliesOf(std::size_t task) const
    {
        return suppliesOf_[task];
    }
    /// Index into pins().
    [[nodiscard]] std::optional<std::size_t> pinOf(std::size_t task) const { return pinOf_[task]; }

private:
    friend class ProblemBuilder;
    Problem() = default;

    Moment begin_;
    std::vector<Machine> machines_;
    std::vector<Task> tasks_;
    std::vector<Supply> supplies_;
    std::vector<Delivery> deliveries_;
    std::vector<Pin> pins_;
    rules::Findings refusedPins_;
    std::optional<std::int64_t> transferPieces_;
    std::vector<Calendar> calendars_;
    std::vector<std::vector<std::size_t>> suppliesOf_;
    std::vector<std::optional<std::size_t>> pinOf_;
};

/// Work of the whole task done this way.
[[nodiscard]] Duration workOf(const Task& task, const Way& way);
/// The least of it over its ways.
[[nodiscard]] Duration leastWork(const Task& task);
[[nodiscard]] const Way* wayOn(const Task& task, std::size_t machine);

/// The moves of one supply from the saw to the folder when its task is cut by `way`: after every
/// `transferPieces` pieces, or after so many more that there are at most `mostTransfers` moves, and at the
/// end. `arrived` counts up.
inline constexpr std::int64_t mostTransfers = 24;
[[nodiscard]] std::vector<Transfer> transfersOf(const Problem& problem, const Supply& supply, const Way& way);

class ProblemBuilder {
public:
    static constexpr std::size_t mostTasks = 20'000;
    static constexpr std::int64_t mostUnits = 5'000'000;
    static constexpr std::int64_t longestUnit = 86'400'000; ///< milliseconds
    static constexpr std::int64_t highestWeight = 1'000;

    explicit ProblemBuilder(Moment begin) : begin_(begin) {}

    ProblemBuilder& transferPieces(std::optional<std::int64_t> pieces);
    /// Each returns the index its part is referred to by.
    std::size_t machine(Machine machine);
    std::size_t task(Task task);
    std::size_t delivery(Delivery delivery);
    ProblemBuilder& supply(const Supply& supply);
    ProblemBuilder& pin(const Pin& pin);

    /// All or nothing but for pins: one error for each part that cannot be right. Errors: hours that cannot
    /// be right or do not suffice in twenty years; a key twice; a task without a way; an index that leads
    /// nowhere or to the wrong stage; numbers beyond the limits above; more pieces supplied than a lot has.
    [[nodiscard]] Result<Problem> build() const;

private:
    Moment begin_;
    std::optional<std::int64_t> transferPieces_;
    std::vector<Machine> machines_;
    std::vector<Task> tasks_;
    std::vector<Supply> supplies_;
    std::vector<Delivery> deliveries_;
    std::vector<Pin> pins_;
};

} // namespace lapwright::schedule
