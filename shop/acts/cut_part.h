#pragma once

#include "documents/cut.h"
#include "storage/shop_state.h"

#include <cstddef>
#include <optional>
#include <set>
#include <vector>

/// What of a cut plan is cut, where that is not all of it.
namespace lapwright::acts {

struct CutPart {
    /// One sheet is cut, but one of its strips is spoilt.
    struct Spoilt {
        std::size_t pattern = 0;
        std::size_t strip = 0;
    };
    std::set<std::size_t> patterns; ///< every sheet of these is cut
    std::optional<Spoilt> spoilt;   ///< of none of these
};

/// What that comes to.
struct Portion {
    cutting::Plan plan;                     ///< the patterns and remnants of it alone; the rest is not set
    std::vector<storage::PlannedPiece> cut; ///< those of the spoilt strip too
    std::vector<storage::PlannedPiece> spoilt;
    /// Square metres, for reports of yield.
    double stockArea = 0.0;
    double blankArea = 0.0; ///< of good pieces
    double remnantArea = 0.0;
};

/// Precondition: the part's patterns and strips are the plan's.
[[nodiscard]] Portion portionOf(const documents::CutPlan& plan, const CutPart& part);

} // namespace lapwright::acts
