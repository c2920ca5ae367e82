#pragma once

#include "cutting/solve.h"

namespace lapwright::cutting {

/// What happened on the floor since a plan was made.
struct FloorReport {
    struct Cut {
        std::size_t pattern = 0; ///< index into Plan::patterns
        std::int64_t count = 0;  ///< of its sheets or levels that are cut
    };
    struct Scrapped {
        std::size_t blank = 0;  ///< index into Problem::blanks()
        std::int64_t count = 0; ///< of those cut, spoiled: to be cut again
    };
    std::vector<Cut> cut;
    std::vector<Scrapped> scrapped;
    std::vector<Blank> rush;     ///< new blanks, with their own due class
    std::vector<Stock> newStock; ///< arrived since
};

/// The rest of the work: cut sheets stay as they are, everything else is planned anew.
struct Replan {
    std::optional<Problem>
        problem; ///< of what is left, remnants made so far among its stock; missing: nothing is left
    std::optional<Plan> plan;
    std::vector<Refusal> refusals; ///< rush blanks or stock that cannot be right
    std::vector<Phrase> changes;   ///< against the rest of the old plan
};

/// Errors: a report that names what the plan does not have, or more of it.
[[nodiscard]] Result<Replan> replan(const Problem& problem, const Plan& plan, const FloorReport& report,
                                    const Settings& settings = {}, const Control& control = {});

} // namespace lapwright::cutting
