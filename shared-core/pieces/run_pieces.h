#pragma once

#include "pieces/ends.h"
#include "pieces/laying.h"
#include "pieces/order.h"
#include "pieces/site_cuts.h"
#include "site/job.h"
#include "trim/template.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// The longest piece allowed, and what allows no more.
struct PieceLimit {
    Length length;
    Derivation derivation;
    /// A rule for this run sets it, not the limits of the job.
    bool ofRunAlone = false;
};

/// The least of the shop's bending length, stock length and transport length, as far as they are given.
[[nodiscard]] PieceLimit pieceLimitOf(const site::PieceLimits& limits);

/// All that the pieces of one trim on one run are made from.
struct RunWork {
    const site::Run* run = nullptr;
    const trim::Template* trim = nullptr;
    Length lap;
    std::string mark; ///< what the marks begin with
    std::size_t profile = 0;
    Length measured;
    /// How the measured length came about (site::RunGeometry::derivation).
    Derivation measuredDerivation;
    RunEnd start;
    RunEnd end;
    Laying laying;
    PieceLimit limit;
    Length shortest;
    site::PiecePolicy policy = site::PiecePolicy::FullAndRemainder;
};

/// The pieces, or, where stock lengths are cut on site, the cuts. `takeoff.firstPiece` counts from the first
/// of `pieces`. Findings block and come without pieces; their places are empty: "pieces.split.…" (split.h),
/// "pieces.course.exposure"; "pieces.split.short_run" only warns.
struct RunPieces {
    RunTakeoff takeoff;
    std::vector<Piece> pieces;
    std::vector<WantedCut> cuts;
    rules::Findings findings;

    /// Pieces or cuts on the run.
    [[nodiscard]] std::int64_t count() const
    {
        return pieces.size() == 1 ? pieces.front().count
                                  : static_cast<std::int64_t>(pieces.size() + cuts.size());
    }
};

/// Splits, ends and marks. Trims by course (step flashing) become one piece with a count: exposure + head lap
/// long, one per course.
[[nodiscard]] RunPieces piecesOf(const RunWork& work);

} // namespace lapwright::pieces
