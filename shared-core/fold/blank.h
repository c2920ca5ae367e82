#pragma once

#include "fold/section.h"

namespace lapwright::fold {

/// The blank as the planner sees it, with springback and pre-bend angles for `machine`. Errors: lines that do
/// not fit the profile, a fold angle under 0.01°, a thickness or metal value that is not positive, a metal
/// that springs back flat.
[[nodiscard]] Result<Blank> makeBlank(const trim::Profile& profile, const trim::FlatPattern& flat,
                                      const metal::Metal& metal, const metal::Sheet& sheet,
                                      const Machine& machine, const Settings& settings);

} // namespace lapwright::fold
