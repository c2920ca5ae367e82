#include "manual.h"

#include "command.h"

namespace lapwright::command {

namespace {

const char* const purpose =
    "Turns a measured house into folded, delivered and checked trim: the headless face of Lapwright.\n"
    "Results go to standard output, messages to standard error.\n";
const char* const ending = "Codes differ: the local code and a licensed professional decide.";

/// Text as the man macros take it: what they would read as commands is not.
QString plain(QString text)
{
    text.replace("\\", "\\e").replace("-", "\\-");
    if (text.startsWith('.') || text.startsWith('\''))
        text.prepend("\\&");
    return text;
}

QString optionOf(const QCommandLineOption& option)
{
    QString page;
    const QString value =
        option.valueName().isEmpty() ? QString() : " \\fI" + plain(option.valueName()) + "\\fR";
    page += ".TP\n\\fB" + plain("--" + option.names().constLast()) + "\\fR" + value + "\n";
    return page + plain(option.description()) + "\n";
}

} // namespace

QList<QCommandLineOption> commonOptions()
{
    return {{"json", "Write the result as JSON."},
            {"angles", "Show a bend as its fold angle (how far it turns from flat, the default) or included.",
             "ANGLE", "fold"},
            {"units", "Show lengths as ft (feet and inches, the default), in or mm.", "UNIT", "ft"}};
}

std::string overview()
{
    constexpr qsizetype column = 24;
    QString text = QString("Usage: lapwright SUBCOMMAND [OPTIONS] ...\n\n") + purpose + "\n";
    for (const Subcommand& one : subcommands()) {
        const QString call = "  " + one.name + " " + one.arguments;
        text += call.size() < column ? call.leftJustified(column) : call + "\n" + QString(column, u' ');
        text += one.summary + "\n";
    }
    return (text +
            "\n`lapwright SUBCOMMAND --help` says more. Exit status: 0 done, 1 done with findings that block,\n"
            "2 bad input or usage, 3 could not (disk, database).\n\n" +
            ending)
        .toStdString();
}

std::string manualPage()
{
    QString page =
        QString(".TH LAPWRIGHT 1 \"\" \"Lapwright %1\" \"User Commands\"\n").arg(LAPWRIGHT_VERSION);
    page += ".SH NAME\nlapwright \\- measured house to folded, delivered and checked trim\n"
            ".SH SYNOPSIS\n.B lapwright\n\\fISUBCOMMAND\\fR [\\fIOPTIONS\\fR] ...\n.SH DESCRIPTION\n";
    page += plain(purpose) + ".SH OPTIONS OF EVERY SUBCOMMAND\n";
    for (const QCommandLineOption& option : commonOptions())
        page += optionOf(option);
    page += ".SH SUBCOMMANDS\n";
    for (const Subcommand& one : subcommands()) {
        page += ".SS " + plain(one.name + " " + one.arguments) + "\n" + plain(one.help) + "\n";
        for (const QCommandLineOption& option : one.options)
            page += optionOf(option);
    }
    page +=
        QString(
            ".SH EXIT STATUS\n0 done; 1 done, with findings that block; 2 bad input or usage; 3 could not "
            "(disk, database).\n.SH NOTES\n") +
        ending + "\n.SH SEE ALSO\n\\fBlapwright\\-field\\fR(1), \\fBlapwright\\-shop\\fR(1)";
    return page.toStdString();
}

} // namespace lapwright::command
