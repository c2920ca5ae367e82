#pragma once

#include "rules/finding.h"
#include "trim/profile.h"

#include <string>

/// Checks that a trim from a template and a free profile share.
namespace lapwright::trim {

/// A blocking finding without a clause.
[[nodiscard]] rules::Finding blocking(std::string code, std::string place, Phrase statement, Phrase remedy);

/// A turn under this is no bend: nobody could fold it or see it.
inline constexpr Angle leastTurn = Angle::degrees(1.0);

/// trim.leg.unfoldable for every leg or hem without a flat between its bends (and whatever else keeps the
/// profile from being unfolded), or else trim.section.crossing if the folded sheet runs into itself.
[[nodiscard]] rules::Findings checkFoldable(const Profile& profile, Length thickness);

} // namespace lapwright::trim
