#pragma once

#include "cutting/plan.h"

namespace lapwright::cutting {

/// Scrap that lies beside or behind the blanks of one girth, in square metres; strip ends, trims to girth,
/// and its share by width of what is left beside the strips.
struct GirthLoss {
    Length girth;
    double squareMetres = 0.0;
};

/// How many more of a blank the plan's own waste would hold: they would cost nothing.
struct FreePieces {
    std::size_t blank = 0;
    std::int64_t count = 0;
};

struct Explanation {
    std::vector<Phrase> sentences; ///< value and proof, waste split, dearest girths, free pieces
    std::vector<GirthLoss> losses; ///< most loss first
    std::vector<FreePieces> free;  ///< most first; each counted alone, not together with the others
};

/// Why the plan costs what it costs. Precondition: the plan passed the checker.
[[nodiscard]] Explanation explain(const Problem& problem, const Plan& plan);

} // namespace lapwright::cutting
