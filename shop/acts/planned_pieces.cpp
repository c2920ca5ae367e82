#include "acts/planned_pieces.h"

#include "schedule/batch.h"

namespace lapwright::acts {

std::vector<storage::PlannedPiece> plannedPieces(const documents::CutProblem& problem,
                                                 const std::vector<std::int64_t>& counts)
{
    std::vector<storage::PlannedPiece> pieces;
    for (std::size_t blank = 0; blank < counts.size(); ++blank)
        if (const std::string& key = problem.blanks[blank].key; counts[blank] > 0)
            pieces.push_back({schedule::orderOfBlank(key), schedule::markOfBlank(key), counts[blank]});
    return pieces;
}

std::vector<storage::PlannedPiece> piecesCutBy(const documents::CutPlan& plan)
{
    std::vector<std::int64_t> counts;
    for (const cutting::Blank& blank : plan.problem.blanks)
        counts.push_back(blank.count);
    for (const cutting::Shortfall& missing : plan.plan.notCut)
        counts[missing.blank] -= missing.count;
    return plannedPieces(plan.problem, counts);
}

} // namespace lapwright::acts
