#pragma once

#include "measure/derivation.h"
#include "measure/length.h"
#include "rules/finding.h"
#include "site/job.h"

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

namespace lapwright::pieces {

/// A length to be covered by pieces that lap.
struct SplitProblem {
    /// Usable length: measured, with what the ends add or take away.
    Length length;
    /// Longest piece that can be folded, bought and carried.
    Length limit;
    /// How far each piece covers the one before; negative for an open joint of that width.
    Length lap;
    /// Shortest piece a split may leave. A length within the limit stays one piece however short it is.
    Length shortest;
    site::PiecePolicy policy = site::PiecePolicy::FullAndRemainder;
};

/// The most pieces one run is split into; a run that needs more is a slip of the pen.
inline constexpr std::int64_t mostPiecesOfRun = 10'000;

/// Lengths of equal pieces are rounded to this; the last piece takes what is left over. A folder's stop and a
/// tape are both set to it without thinking.
inline constexpr Length equalLengthStep = Length::sixtyFourths(4);

/// Lengths in installing order, or the finding (which blocks) that says why no split exists.
using SplitOutcome = std::variant<std::vector<Length>, rules::Finding>;

/// Least number n of pieces of at most M that cover L with laps o: 1 if L <= M, else ceil((L - o) / (M - o)).
/// Preconditions: L > 0, M > 0, and M > o if L > M.
[[nodiscard]] std::int64_t leastPieceCount(const SplitProblem& problem);

/// Divides a run into the least number of pieces. The lengths sum to length + (n - 1) lap exactly, each is in
/// [shortest, limit] and longer than the lap. Full and remainder: full lengths, the rest last; if the rest is
/// under the shortest piece, the last two (or as many as it takes) share. Equal lengths: alike to the last
/// piece, which takes what rounding leaves. Stock lengths: as full and remainder; which stock length each
/// piece is cut from is site_cuts.h. Findings: "pieces.split.length", "pieces.split.limit",
/// "pieces.split.lap", "pieces.split.shortest", "pieces.split.count"; their place is empty.
[[nodiscard]] SplitOutcome split(const SplitProblem& problem);

/// How the number and lengths of the pieces came about. Precondition: `lengths` is a split of `problem`.
[[nodiscard]] Derivation explainSplit(const SplitProblem& problem, const std::vector<Length>& lengths);

} // namespace lapwright::pieces
