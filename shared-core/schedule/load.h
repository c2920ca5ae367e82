#pragma once

#include "measure/length.h"
#include "site/job.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// One mark on a load: so many pieces of it.
struct LoadedPiece {
    std::string mark;
    std::int64_t count = 1;
    std::string run; ///< where it goes
    std::string profile;
    Length length;

    friend bool operator==(const LoadedPiece&, const LoadedPiece&) = default;
};

/// Pieces tied together: one order, one area of the house, one material, one profile, so that they nest.
struct Bundle {
    std::string label; ///< "B3", unique on the load
    std::string order; ///< UUID
    std::string job;
    site::Material material;
    std::vector<LoadedPiece> pieces;
    double kilograms = 0.0;
    bool twoPeople = false; ///< long or heavy
    std::string area = {};  ///< the chain its runs belong to: where on the house it is carried

    friend bool operator==(const Bundle&, const Bundle&) = default;
};

/// What goes on one truck.
struct Load {
    std::string id; ///< UUID
    std::string truck;
    std::string madeAt; ///< ISO 8601, UTC
    std::vector<Bundle> bundles;

    friend bool operator==(const Load&, const Load&) = default;
};

/// What a load comes to.
struct LoadTotals {
    std::int64_t bundles = 0;
    std::int64_t forTwo = 0; ///< bundles that two people carry
    std::int64_t pieces = 0;
    double kilograms = 0.0;
    Length longest; ///< piece
};
[[nodiscard]] LoadTotals totalsOf(const Load& load);
[[nodiscard]] std::int64_t piecesIn(const Bundle& bundle);
[[nodiscard]] Length longestIn(const Bundle& bundle);

/// Pieces of a bundle whose marks follow one another on a run, as many of each: E1.1 to E1.4. Of one mark
/// `last` is the same as `first`.
struct MarkRange {
    std::string first;
    std::string last;
    std::int64_t each = 1;

    friend bool operator==(const MarkRange&, const MarkRange&) = default;
};
/// In the order of the pieces.
[[nodiscard]] std::vector<MarkRange> markRanges(const Bundle& bundle);

/// How heavy and long a bundle may be before two people carry it; defaults are common practice, no source: 23
/// kg (about 51 lb) and 10 ft.
struct BundleLimits {
    double mostKilograms = 60.0;
    double onePersonKilograms = 23.0;
    Length onePersonLength = Length::feet(10);
};

/// A piece ready to be loaded.
struct ReadyPiece {
    std::string order;
    std::string job;
    site::Material material;
    LoadedPiece piece;
    double kilogramsEach = 0.0;
    std::string area = {}; ///< as in Bundle
};

/// Bundles of `ready`, in its order: pieces of one order, area, material and profile together, until the next
/// would be too heavy. A single piece over the limit is a bundle of its own. Labels B1, B2…
[[nodiscard]] std::vector<Bundle> bundle(const std::vector<ReadyPiece>& ready, const BundleLimits& limits);

} // namespace lapwright::schedule
