#pragma once

#include "cutting/settings.h"
#include "measure/result.h"

#include <QCommandLineParser>

/// How long to look for a cut plan.
namespace lapwright::command {

[[nodiscard]] QCommandLineOption timeOption();
/// Error if --time is not a number of seconds from 0 to a day.
[[nodiscard]] Result<cutting::Settings> searchSettings(const QCommandLineParser& options);

} // namespace lapwright::command
