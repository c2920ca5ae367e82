#pragma once

#include "measure/writing.h"
#include "rules/finding.h"
#include "site/job.h"

#include <string>

/// Words that the command, the screens and the papers share.
namespace lapwright::acts {

/// "BLOCKS  chain House eave, run E3: …", with what would help and the clause.
[[nodiscard]] std::string describe(const rules::Finding& finding, const Style& style);
/// "24 ga galvanised-steel, Slate".
[[nodiscard]] std::string describe(const site::Material& material);

} // namespace lapwright::acts
