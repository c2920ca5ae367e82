#pragma once

#include "cutting/replan.h"

#include <QCommandLineOption>
#include <QList>

class QCommandLineParser;

namespace lapwright::command {

/// --done, --scrapped and --rush: what happened on the floor since a plan was made.
[[nodiscard]] QList<QCommandLineOption> floorOptions();
/// Whether any of them is given: then the document is a plan to be made anew.
[[nodiscard]] bool tellsOfFloor(const QCommandLineParser& options);
/// Errors: a pattern or blank the plan does not have, a count that is none, a rush problem that cannot be
/// read.
[[nodiscard]] Result<cutting::FloorReport>
floorReport(const QCommandLineParser& options, const cutting::Problem& problem, const cutting::Plan& plan);

} // namespace lapwright::command
