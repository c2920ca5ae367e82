#pragma once

#include "measure/result.h"
#include "metal/metal.h"
#include "pieces/takeoff.h"
#include "site/job.h"

namespace lapwright::acts {

/// A metal with one of its sheets.
struct Stuff {
    metal::Metal metal;
    metal::Sheet sheet;
};

/// The metal and sheet that `material` names. Error if there is no such metal, or it is not sold in that
/// gauge; the gauges it is sold in are named.
[[nodiscard]] Result<Stuff> stuffOf(const site::Material& material, const pieces::Catalogue& catalogue);

} // namespace lapwright::acts
