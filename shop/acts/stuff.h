#pragma once

#include "measure/result.h"
#include "metal/metal.h"
#include "site/job.h"

#include <map>
#include <string>

namespace lapwright::acts {

/// A metal with one of its sheets.
struct Stuff {
    metal::Metal metal;
    metal::Sheet sheet;
};

/// The metal and sheet that `material` names. Error, placed as in an object that has a "material", if there
/// is no such metal, or it is not sold in that gauge; what there is instead is named.
[[nodiscard]] Result<Stuff> stuffOf(const site::Material& material,
                                    const std::map<std::string, metal::Metal>& metals);

} // namespace lapwright::acts
