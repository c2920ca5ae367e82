#pragma once

#include "rules/finding.h"
#include "site/blame.h"
#include "site/crossing.h"
#include "site/job.h"
#include "site/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Does a chain, as measured, come back to where it began?
namespace lapwright::site {

/// Sums of the runs of a chain all of whose corners are square, by the four ways they go, seen along the
/// first run. In a house that closes, forward equals back and left equals right.
struct SideSums {
    Length forward;
    Length left;
    Length back;
    Length right;
};

struct ClosureReport {
    enum class Verdict {
        Open,          ///< an open chain: nothing to close
        NotComputable, ///< a length, slope or corner is missing or cannot be; checkChain says which
        Closes,
        AnglesOff,  ///< the interior angles do not add up: the figure cannot be closed by any lengths
        LengthsOff, ///< the angles add up within tolerance, the end misses the start
        Crosses     ///< it closes, and crosses itself: no house
    } verdict = Verdict::NotComputable;

    /// Of closed chains: sum of the interior angles as given, what it must be, the difference, and how much
    /// of it is allowed: per corner, times the square root of the number of corners (allowable misclosure
    /// k√n; source: archive.nptel.ac.in (Surveying), module 8, closed traverses).
    Angle angleSum;
    Angle expectedAngleSum;
    Angle angularMisclosure;
    Angle angularTolerance;

    /// From the start to where the last run ends, its length, and how much is allowed. While the angles are
    /// within tolerance they are balanced first (plan.h); otherwise the angles stand as given.
    PlanVector misclosure;
    Length linearMisclosure;
    Length tolerance;
    Length perimeter;
    /// One part in so many: perimeter / misclosure, whole. Nothing where the misclosure is zero.
    std::optional<std::int64_t> oneIn;

    /// What would explain the misclosure, best first: single lengths and corners; pairs only if no single one
    /// does.
    std::vector<Blame> blames;
    std::optional<SideSums> sides;
    std::optional<SelfCrossing> crossing;
    /// For drawing: adjusted by the compass rule where the chain closes, as measured otherwise. Nothing where
    /// it could not be computed.
    std::optional<Plan> plan;
    std::vector<PlanVector> drawnPoints;

    /// Codes site.closure.*; runs and corners by their ids.
    rules::Findings findings;
};

/// Closure of one chain. Never changes what was measured. n log n in the number of runs (quadratic only for a
/// closed chain of up to mostRunsForTwoErrors runs with two errors or more).
[[nodiscard]] ClosureReport closureReport(const Chain& chain, const Tolerance& tolerance);

/// What the person is told about a report on `chain`; closureReport has put them in its findings already.
[[nodiscard]] rules::Findings closureFindings(const Chain& chain, const ClosureReport& report);

} // namespace lapwright::site
