#pragma once

#include "measure/derivation.h"
#include "pieces/piece.h"
#include "rules/finding.h"
#include "site/job.h"
#include "trim/profile.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// A profile that pieces of the order share, with what the shop needs to cut and fold it.
struct OrderedProfile {
    /// Unique in the order: "P1".
    std::string id;
    trim::Profile profile;
    site::Material material;
    Length thickness;
    Length girth;
    double kilogramsPerMetre = 0.0;
    /// Where girth, legs and angles come from.
    std::vector<Derivation> derivations;

    friend bool operator==(const OrderedProfile&, const OrderedProfile&) = default;
};

/// Things that go along with the pieces, by run: fasteners, sealant, end caps, corner tabs, backup plates.
struct Accessory {
    std::string name; ///< "fastener", "sealant", "end cap", "corner tab"
    std::string run;
    std::string trim;
    std::int64_t count = 0;
    /// Sealant bead: its total length.
    Length length;
    Derivation derivation;

    friend bool operator==(const Accessory&, const Accessory&) = default;
};

/// How the pieces of one trim on one run came about: usable length, limit, lap, count.
struct RunTakeoff {
    std::string run;
    std::string trim;
    /// What the marks of its pieces begin with, before the point and the ordinal: "E3", "S1b".
    std::string mark;
    std::size_t profile = 0;
    /// Measured length with what the ends add or take away, a mitre to its longest point.
    Length usableLength;
    /// Longest piece allowed on this run: the least of folding, stock, transport and movement.
    Length pieceLimit;
    /// Indices in Order::pieces: [first, first + count). None where the run is cut from stock lengths on
    /// site: then its pieces are lines of Order::siteCuts, whose marks begin with `mark`.
    std::size_t firstPiece = 0;
    std::size_t pieceCount = 0;
    /// Usable length, then count. What is the same for the whole job (its piece limits, where laying begins)
    /// is added when it is asked for (why.h).
    std::vector<Derivation> derivations;

    friend bool operator==(const RunTakeoff&, const RunTakeoff&) = default;
};

/// One line of the guide for cutting stock lengths on site: cut `length` for `mark` from stock length
/// `stock`, in this order; what is left of a stock length serves the next line with its number. Stock lengths
/// are numbered through the order: number 7 is the piece "stock.7".
struct SiteCut {
    std::int64_t stock = 0;
    std::string mark;
    Length length;
    Length left;

    friend bool operator==(const SiteCut&, const SiteCut&) = default;
};

/// What the installer sends: the job as measured, and everything derived from it.
struct Order {
    std::string id;            ///< UUID, the same through all revisions
    std::int64_t revision = 1; ///< counts up
    std::string previousHash;  ///< hash of the revision before; empty for the first
    bool cancelled = false;    ///< by this revision: nothing of it is to be made
    site::Job job;
    std::vector<OrderedProfile> profiles;
    std::vector<RunTakeoff> runs;
    /// What the shop makes: the pieces of each run in installing order, run after run; then stock lengths
    /// ("stock.1"…) and spare pieces ("spare.1"…), which belong to no run.
    std::vector<Piece> pieces;
    std::vector<Accessory> accessories;
    std::vector<SiteCut> siteCuts;
    rules::Findings findings;

    friend bool operator==(const Order&, const Order&) = default;
};

} // namespace lapwright::pieces
