#pragma once

#include "measure/writing.h"
#include "rules/finding.h"
#include "site/job.h"

#include <cstdint>
#include <string>

/// Words that the command, the screens and the papers share.
namespace lapwright::acts {

/// "BLOCKS  chain House eave, run E3: …", with what would help and the clause.
[[nodiscard]] std::string describe(const rules::Finding& finding, const Style& style);
/// "24 ga galvanised-steel, Slate".
[[nodiscard]] std::string describe(const site::Material& material);
/// Pounds beside feet and inches, kilograms beside millimetres: "52 lb", "23.6 kg".
[[nodiscard]] std::string massInWords(double kilograms, const Style& style);
/// "1 piece", "3 pieces".
[[nodiscard]] std::string counted(std::int64_t count, const std::string& what);

} // namespace lapwright::acts
