#include "command.h"

#include "acts/words.h"
#include "drawing/text.h"
#include "storage/finding_help.h"

#include <QDateTime>

#include <cstdio>

namespace lapwright::command {

const std::vector<Subcommand>& subcommands()
{
    static const std::vector<Subcommand> all = {
        takeoffCommand(), closureCommand(), mergeCommand(),   gaugeCommand(),  girthCommand(),
        cutCommand(),     foldCommand(),    receiveCommand(), planCommand(),   printCommand(),
        madeCommand(),    loadCommand(),    receiptCommand(), remakeCommand(), orderCommand(),
        stockCommand(),   statusCommand(),  reportCommand(),  tabletCommand(), checkCommand()};
    return all;
}

QCommandLineOption databaseOption()
{
    return {"db",
            "The shop's database: a file, or for many stations a PostgreSQL address, "
            "postgresql://user@host:port/database (password from PGPASSWORD or the password file).",
            "DB"};
}

QCommandLineOption libraryOption()
{
    return {
        "library",
        "A folder with the shop's own metal-library, trim-library, rule-sets or machines; may be given more than once.",
        "DIR"};
}

QCommandLineOption stationOption()
{
    return {"station", "Name of the machine or desk this happens at.", "NAME"};
}

QCommandLineOption personOption()
{
    return {"person", "Who does it.", "NAME"};
}

Exit inShop(const QCommandLineParser& options, const std::function<Exit(const storage::Database&)>& work,
            storage::WhenMissing whenMissing)
{
    if (text(options, "db").empty()) {
        tell("lapwright: found no --db, expected --db with the shop's database");
        return Exit::BadInput;
    }
    const auto database = storage::Database::open(text(options, "db"), whenMissing, storage::WhenLost::Wait);
    if (!database.ok()) {
        tell(database.errors());
        return Exit::CouldNot;
    }
    return work(*database);
}

storage::Stamp stampOf(const QCommandLineParser& options)
{
    return {now(), text(options, "station"), text(options, "person")};
}

QCommandLineOption outputOption(const QString& what, const QString& value)
{
    return {{"o", "output"}, what, value};
}

Style styleOf(const QCommandLineParser& options)
{
    Style style;
    const QString units = options.value("units");
    if (units == "mm")
        style.unit = LengthUnit::Millimetres;
    else if (units == "in")
        style.unit = LengthUnit::Inches;
    return style;
}

std::string text(const QCommandLineParser& options, const QString& name)
{
    return options.value(name).toStdString();
}

std::string argument(const QCommandLineParser& options, int index)
{
    return options.positionalArguments().at(index).toStdString();
}

std::vector<std::string> libraryFolders(const QCommandLineParser& options)
{
    std::vector<std::string> folders;
    for (const QString& folder : options.values("library"))
        folders.push_back(folder.toStdString());
    return folders;
}

void print(const std::string& line)
{
    std::fprintf(stdout, "%s\n", drawing::harmlessLines(line).c_str());
}

void printLines(const std::string& lines)
{
    std::fputs(drawing::harmlessLines(lines).c_str(), stdout);
}

void printDocument(const std::string& text)
{
    std::fprintf(stdout, "%s\n", text.c_str());
}

void tell(const std::string& line)
{
    // What was said on standard output comes before it where both go to one place.
    std::fflush(stdout);
    std::fprintf(stderr, "%s\n", drawing::harmlessLines(line).c_str());
}

void tell(const std::vector<Error>& errors)
{
    for (const Error& error : errors)
        tell(error.sentence());
}

void tell(const rules::Findings& findings, const Style& style, Advice advice)
{
    for (const rules::Weight weight : {rules::Weight::Blocks, rules::Weight::Warns, rules::Weight::Informs})
        for (const rules::Finding& finding : findings)
            if (finding.weight == weight) {
                tell(acts::describe(finding, style));
                const auto help = advice == Advice::Given ? storage::helpFor(finding.code) : std::nullopt;
                if (help)
                    tell("        why: " + help->reason + "\n        do:  " + help->remedy);
            }
}

void tell(const rules::Findings& findings, const std::string& document, const Style& style, Advice advice)
{
    if (findings.empty())
        return;
    const auto count = [&findings](rules::Weight weight) {
        return std::to_string(
            std::count_if(findings.begin(), findings.end(),
                          [weight](const rules::Finding& finding) { return finding.weight == weight; }));
    };
    tell(document + ": findings: " + count(rules::Weight::Blocks) + " that block, " +
         count(rules::Weight::Warns) + " that warn, " + count(rules::Weight::Informs) + " to know");
    tell(findings, style, advice);
}

std::string now()
{
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
}

} // namespace lapwright::command
