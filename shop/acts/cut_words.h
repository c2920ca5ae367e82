#pragma once

#include "cutting/settings.h"
#include "documents/cut.h"
#include "measure/writing.h"

#include <string>
#include <vector>

/// Cut plans in words.
namespace lapwright::acts {

/// What the blanks of a problem are called there.
[[nodiscard]] std::vector<std::string> keysOf(const documents::CutProblem& problem);
/// "12 of sheet A, remnant R3, proven least, 4.1 % waste, 3 slitter setups".
[[nodiscard]] std::string summaryInWords(const documents::CutPlan& plan, const Style& style);
/// What a search is at, and how far its best plan can still be from the least: "filling sheets, at most 4.1 %
/// could be saved".
[[nodiscard]] std::string progressInWords(const cutting::Progress& progress);
/// One line for each pattern and each of its strips, in cutting order. `names` is what each blank of the
/// problem is called.
[[nodiscard]] std::vector<std::string>
patternsInWords(const documents::CutPlan& plan, const std::vector<std::string>& names, const Style& style);

} // namespace lapwright::acts
