#pragma once

#include "measure/result.h"
#include "measure/writing.h"
#include "rules/finding.h"
#include "storage/orders.h"

#include <QCommandLineParser>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// What every subcommand of `lapwright` shares: options, exit codes, and how it speaks.
namespace lapwright::command {

/// 0 done; 1 done, with findings that block; 2 bad input or usage; 3 could not (disk, database).
enum class Exit { Done = 0, Blocked = 1, BadInput = 2, CouldNot = 3 };

/// One subcommand: what it is called, what it takes, what it does.
struct Subcommand {
    QString name;
    QString arguments; ///< "JOB", "ORDER..."; empty for none
    QString summary;
    QString help;
    QList<QCommandLineOption> options;
    int leastArguments = 0;
    int mostArguments = 0; ///< -1: any number
    std::function<Exit(const QCommandLineParser&)> run;
};

[[nodiscard]] const std::vector<Subcommand>& subcommands();

[[nodiscard]] Subcommand takeoffCommand();
[[nodiscard]] Subcommand closureCommand();
[[nodiscard]] Subcommand mergeCommand();
[[nodiscard]] Subcommand gaugeCommand();
[[nodiscard]] Subcommand girthCommand();
[[nodiscard]] Subcommand cutCommand();
[[nodiscard]] Subcommand foldCommand();
[[nodiscard]] Subcommand receiveCommand();
[[nodiscard]] Subcommand planCommand();
[[nodiscard]] Subcommand printCommand();
[[nodiscard]] Subcommand madeCommand();
[[nodiscard]] Subcommand loadCommand();
[[nodiscard]] Subcommand receiptCommand();
[[nodiscard]] Subcommand remakeCommand();
[[nodiscard]] Subcommand statusCommand();
[[nodiscard]] Subcommand orderCommand();
[[nodiscard]] Subcommand stockCommand();
[[nodiscard]] Subcommand reportCommand();
[[nodiscard]] Subcommand tabletCommand();
[[nodiscard]] Subcommand checkCommand();

/// Options that several subcommands take.
[[nodiscard]] QCommandLineOption databaseOption();
[[nodiscard]] QCommandLineOption outputOption(const QString& what, const QString& value);

[[nodiscard]] QCommandLineOption libraryOption();
[[nodiscard]] QCommandLineOption stationOption();
[[nodiscard]] QCommandLineOption personOption();

/// The units the person asked for with --units.
[[nodiscard]] Style styleOf(const QCommandLineParser& options);
[[nodiscard]] std::string text(const QCommandLineParser& options, const QString& name);
/// First or only argument. Precondition: there is one.
[[nodiscard]] std::string argument(const QCommandLineParser& options, int index = 0);
/// Folders given with --library; the subcommand takes libraryOption().
[[nodiscard]] std::vector<std::string> libraryFolders(const QCommandLineParser& options);

/// Results go to standard output, everything else to standard error.
/// Lines for a person; control characters and marks that reorder text become spaces.
void print(const std::string& line);
/// The same of lines that each end already.
void printLines(const std::string& lines);
/// A document or table, as it is.
void printDocument(const std::string& text);
void tell(const std::string& line);
/// Each error on a line of its own, to standard error.
void tell(const std::vector<Error>& errors);
enum class Advice { None, Given };
/// Findings by weight, the heaviest first, as acts::describe() words them; with advice each is followed by
/// why it matters and what to do.
void tell(const rules::Findings& findings, const Style& style, Advice advice = Advice::None);
/// The same after a line that names the document they are about and counts them by weight; nothing if there
/// are none.
void tell(const rules::Findings& findings, const std::string& document, const Style& style,
          Advice advice = Advice::None);
/// Runs `work` on the database named with --db. None named is bad usage; one that cannot be opened is
/// CouldNot. Both are told.
[[nodiscard]] Exit inShop(const QCommandLineParser& options,
                          const std::function<Exit(const storage::Database&)>& work,
                          storage::WhenMissing whenMissing = storage::WhenMissing::Refuse);
/// When, where and by whom, from the clock and the options.
[[nodiscard]] storage::Stamp stampOf(const QCommandLineParser& options);

[[nodiscard]] std::string now(); ///< ISO 8601, UTC, to the second

} // namespace lapwright::command
