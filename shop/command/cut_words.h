#pragma once

#include "cutting/settings.h"
#include "documents/cut.h"
#include "measure/result.h"
#include "measure/writing.h"

#include <QCommandLineParser>

#include <string>
#include <vector>

/// Cut plans in words, and how long to look for them.
namespace lapwright::command {

[[nodiscard]] QCommandLineOption timeOption();
/// Error if --time is not a number of seconds from 0 to a day.
[[nodiscard]] Result<cutting::Settings> searchSettings(const QCommandLineParser& options);
[[nodiscard]] cutting::Control searchControl();

/// What the blanks of a problem are called there.
[[nodiscard]] std::vector<std::string> keysOf(const documents::CutProblem& problem);
/// "12 of sheet A, remnant R3, proven least, 4.1 % waste, 3 slitter setups".
[[nodiscard]] std::string summaryInWords(const documents::CutPlan& plan, const Style& style);
/// One line for each pattern and each of its strips, in cutting order. `names` is what each blank of the
/// problem is called.
[[nodiscard]] std::vector<std::string>
patternsInWords(const documents::CutPlan& plan, const std::vector<std::string>& names, const Style& style);

} // namespace lapwright::command
