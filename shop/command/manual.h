#pragma once

#include <QCommandLineOption>
#include <QList>

#include <string>

/// What the program says of itself, all out of the table of its subcommands.
namespace lapwright::command {

/// Options that every subcommand takes, --help aside.
[[nodiscard]] QList<QCommandLineOption> commonOptions();

/// `lapwright --help`.
[[nodiscard]] std::string overview();

/// The page of the manual, lapwright(1), in the man macros.
[[nodiscard]] std::string manualPage();

} // namespace lapwright::command
