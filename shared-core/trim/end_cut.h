#pragma once

#include "measure/derivation.h"
#include "measure/result.h"
#include "site/run.h"
#include "trim/profile.h"

#include <vector>

namespace lapwright::trim {

/// How one mitred end of the blank is cut.
struct EndCut {
    /// How far each mould line of the blank reaches beyond the end of the measured line, positive is longer:
    /// the start edge (a hem's free edge if there is a start hem), each of FlatPattern::lines in order, the
    /// end edge. Straight between neighbours.
    std::vector<Length> reach;
    Derivation derivation;

    /// The longest and the shortest of `reach`.
    [[nodiscard]] Length longPoint() const;
    [[nodiscard]] Length shortPoint() const;
};

/// The cut where a level run is mitred at a corner of its chain that turns by `planTurn` = 180° − interior
/// angle (outside corner +, inside corner −): a mould line that lies x outside the measured line reaches x ×
/// tan(planTurn / 2) beyond it. Both ends of a run, and both runs at a corner, are cut alike for the same
/// turn. Apexes are those of the ideal mould line. Errors: |planTurn| over 170° or no number, a profile
/// without one bend between each two legs.
[[nodiscard]] Result<EndCut> mitreCut(const Profile& profile, Angle planTurn);

/// Whether runs of this kind lie level in chains, so that their trim is mitred at corners. A vertical corner
/// or a sloped run is not.
[[nodiscard]] bool mitresAtCorners(site::RunKind kind);

} // namespace lapwright::trim
