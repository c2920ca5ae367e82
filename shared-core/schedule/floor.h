#pragma once

#include "measure/length.h"
#include "schedule/hours.h"
#include "schedule/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// The shop floor as its people know it: which machines stand there, when somebody works them, how long
/// things take.
namespace lapwright::schedule {

/// How long a machine takes. Missing: not measured there.
struct Rates {
    std::optional<Duration> sheet;    ///< a sheet or coil level laid in, its blanks taken away and marked
    std::optional<Duration> slit;     ///< one slit along it
    std::optional<Duration> crosscut; ///< one cut across
    std::optional<std::int64_t> foldPercent; ///< of the handling time of the fold plan
    std::optional<Duration> piece;           ///< a blank taken up and the folded piece laid aside

    friend bool operator==(const Rates&, const Rates&) = default;
};

/// Common practice, no source: a shop measures its own.
[[nodiscard]] Rates usualRates();

/// How long machines take to be made ready. Common practice, no source.
struct SetupTimes {
    Duration coilChange = Duration::minutes(15);
    Duration rackChange = Duration::minutes(3); ///< sheets of another rack, or remnants, brought up
    Duration slitterSetup = Duration::minutes(10);
    Duration programChange = Duration::minutes(2);
    Duration beamFaceChange = Duration::minutes(5);

    friend bool operator==(const SetupTimes&, const SetupTimes&) = default;
};

struct FloorMachine {
    std::string id;
    std::string name;
    Stage stage = Stage::Cut;
    std::string model;             ///< of a folding machine: its id in the machine library
    std::optional<Length> longest; ///< cutting: the longest sheet or level it takes
    std::optional<Length> widest;
    bool sheets = true; ///< cutting: takes sheets and remnants
    bool coils = true;
    std::optional<Hours> hours; ///< its own, where they are not those of the floor
    Rates measured;             ///< what the shop measured on it wins over the floor's rates

    friend bool operator==(const FloorMachine&, const FloorMachine&) = default;
};

struct Floor {
    std::string name;
    Hours hours;
    std::vector<FloorMachine> machines;
    SetupTimes setups;
    Rates rates; ///< of every machine that has no own; what is missing here is usual (usualRates)
    /// What a late second counts, by the priority of the order: 0, 1, 2…; the last for all above.
    std::vector<std::int64_t> latenessWeights = {1, 5};
    Duration truckLeaves =
        Duration::hours(7); ///< time of day at which what is wanted that day must be folded
    std::optional<std::int64_t> transferPieces = 10; ///< see Problem::transferPieces
    /// Blanks of a metal that only stands in coils are batched by the narrowest coil that takes them, so that
    /// each coil is hung once; otherwise the cut plan chooses among all coils together.
    bool coilWidthsApart = false;

    friend bool operator==(const Floor&, const Floor&) = default;
};

/// Everything about the floor that cannot be right; places are member names of the document.
[[nodiscard]] std::vector<Error> faultsOf(const Floor& floor);

/// A floor for a shop that gave none: one cutting line for sheets and coils, the folding machines given (id
/// and name in the machine library), Monday to Friday 07:00-12:00 and 12:30-15:30.
[[nodiscard]] Floor usualFloor(const std::vector<std::pair<std::string, std::string>>& folders);

/// Every rate, the machine's own before the floor's before the usual.
[[nodiscard]] Rates ratesOf(const Floor& floor, const FloorMachine& machine);

/// What a second late counts for an order of this priority.
[[nodiscard]] std::int64_t latenessWeight(const Floor& floor, int priority);

} // namespace lapwright::schedule
