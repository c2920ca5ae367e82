#pragma once

#include "measure/phrase.h"
#include "site/plan.h"

#include <cstddef>
#include <optional>
#include <vector>

/// Which measure would explain that a closed chain does not close.
namespace lapwright::site {

/// A run's length, and what it would be.
struct LengthChange {
    std::size_t run = 0;
    Length measured;
    Length wouldBe;

    friend bool operator==(const LengthChange&, const LengthChange&) = default;
};
/// A corner's interior angle, and what it would be.
struct CornerChange {
    std::size_t corner = 0;
    Angle given;
    Angle wouldBe;

    friend bool operator==(const CornerChange&, const CornerChange&) = default;
};

/// One explanation: change this length, or this corner, or both together, and the chain closes to `residual`.
struct Blame {
    std::optional<LengthChange> length;
    std::optional<CornerChange> corner;
    Length residual;
    /// A common slip that leads from what would be to what was entered; empty if none is known.
    Phrase slip;
    /// The slip is of this very number's digits, or the corner would be a square one.
    bool telling = false;
};

/// Chains with more runs than this are not searched for two errors at once (that search is quadratic).
inline constexpr std::size_t mostRunsForTwoErrors = 2'000;
/// How many explanations by two errors are kept.
inline constexpr std::size_t mostPairs = 12;

/// Single lengths that bring the end to within `tolerance` of the start: the misclosure runs along them. Best
/// first: by residual to a sixteenth of an inch, then those with a telling slip, then in order of the walk.
/// Runs parallel to one another explain equally well. `plan` is of `chain`, angles balanced. Linear.
[[nodiscard]] std::vector<Blame> blameLengths(const Chain& chain, const Plan& plan, Length tolerance);

/// Single corners that, corrected by the whole angular misclosure, swing the end to within `tolerance` of the
/// start. `interior` and `plan` as given, not balanced. Ranked as above. Linear.
[[nodiscard]] std::vector<Blame> blameCorners(const std::vector<Angle>& interior, const Plan& plan,
                                              Length tolerance);

/// One corner and one length together, for when no single one explains it; at most `mostPairs`, those with a
/// corner that would be square first. Quadratic; empty for chains of more than mostRunsForTwoErrors runs.
[[nodiscard]] std::vector<Blame> blamePairs(const Chain& chain, const std::vector<Angle>& interior,
                                            const Plan& plan, Length tolerance);

} // namespace lapwright::site
