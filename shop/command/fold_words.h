#pragma once

#include "fold/plan.h"
#include "measure/result.h"
#include "measure/writing.h"
#include "metal/metal.h"
#include "pieces/takeoff.h"
#include "site/job.h"

#include <string>
#include <vector>

namespace lapwright::command {

/// The steps as a person at the folder follows them, one line each, and the cautions; or why it cannot be
/// folded and what would help.
[[nodiscard]] std::vector<std::string> inWords(const fold::Outcome& outcome, const Style& style);

/// A metal with one of its sheets.
struct Stuff {
    metal::Metal metal;
    metal::Sheet sheet;
};

/// The metal and sheet that `material` names. Error if there is no such metal, or it is not sold in that
/// gauge; the gauges it is sold in are named.
[[nodiscard]] Result<Stuff> stuffOf(const site::Material& material, const pieces::Catalogue& catalogue);

} // namespace lapwright::command
