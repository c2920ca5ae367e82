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
/// "2026-12-10 09:30" by this machine's clock, of a time that is kept as ISO 8601 in UTC; as it is kept where
/// it is no time.
[[nodiscard]] std::string onTheWall(const std::string& utc);

} // namespace lapwright::acts
