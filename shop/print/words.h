#pragma once

#include "measure/length.h"
#include "measure/writing.h"
#include "site/job.h"

#include <string>

/// How papers say what several of them say, in the language that is spoken.
namespace lapwright::print {

/// "27 lb (12.3 kg)" for those who measure in feet or inches, "12.3 kg" for the others; to the whole pound
/// and the tenth of a kilogram.
[[nodiscard]] std::string writeBothMasses(double kilograms, const Style& style);
/// "24 ga galvanised steel"; the metal by its id, as stock and orders name it.
[[nodiscard]] std::string metalInWords(const site::Material& material);
/// The same with the colour's name first.
[[nodiscard]] std::string materialInWords(const site::Material& material);

/// Too heavy or too long for one person to carry, by schedule::BundleLimits.
[[nodiscard]] bool isForTwo(double kilograms, Length length);

/// What every paper for a machine, and every paper for those who carry and fit the pieces, says at its end.
[[nodiscard]] std::string cautionAtTheMachine();
/// What a fold plan does not say itself.
[[nodiscard]] std::string cautionOnFoldTickets();
[[nodiscard]] std::string cautionForCarriers();
[[nodiscard]] std::string cautionAboutCodes();

} // namespace lapwright::print
