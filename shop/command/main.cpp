#include "application.h"
#include "command.h"
#include "manual.h"
#include "storage/database.h"

#include <algorithm>
#include <cstdio>

using namespace lapwright::command;

namespace {

int fail(const QString& message)
{
    tell("lapwright: " + message.toStdString());
    return static_cast<int>(Exit::BadInput);
}

int runSubcommand(const Subcommand& subcommand, QStringList arguments)
{
    QCommandLineParser parser;
    parser.setApplicationDescription("lapwright " + subcommand.name + " " + subcommand.arguments + "\n\n" +
                                     subcommand.help);
    for (const QCommandLineOption& option : subcommand.options)
        parser.addOption(option);
    parser.addOptions(commonOptions());
    parser.addHelpOption();
    arguments.removeAt(1);
    if (!parser.parse(arguments))
        return fail(parser.errorText());
    if (parser.isSet("help")) {
        std::string help = parser.helpText().toStdString();
        const std::size_t firstLine = help.find('\n');
        print("Usage: lapwright " + subcommand.name.toStdString() + " [OPTIONS] " +
              subcommand.arguments.toStdString() + "\n\n" + subcommand.help.toStdString() +
              help.substr(help.find("\n\nOptions:", firstLine)));
        return 0;
    }
    const auto given = parser.positionalArguments().size();
    if (given < subcommand.leastArguments ||
        (subcommand.mostArguments >= 0 && given > subcommand.mostArguments))
        return fail(QString("%1 takes %2; see lapwright %1 --help")
                        .arg(subcommand.name,
                             subcommand.arguments.isEmpty() ? "no arguments" : subcommand.arguments));
    const QString angles = parser.value("angles");
    if (angles != "fold" && angles != "included")
        return fail("--angles is " + angles + ", expected fold or included");
    const QString units = parser.value("units");
    if (units != "ft" && units != "in" && units != "mm")
        return fail("--units is " + units + ", expected ft, in or mm");
    return static_cast<int>(subcommand.run(parser));
}

/// The exit status once all results have left the program: a full disk behind standard output is no success.
int delivered(int status)
{
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0)
        return status;
    tell("standard output: found no room to write, expected a place that takes the result");
    return static_cast<int>(Exit::CouldNot);
}

} // namespace

int main(int argc, char** argv)
{
    const auto application = applicationFor(argc, argv);
    QCoreApplication::setApplicationName("lapwright");
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 2 || arguments[1] == "--help" || arguments[1] == "-h" || arguments[1] == "help") {
        print(overview());
        return delivered(arguments.size() < 2 ? static_cast<int>(Exit::BadInput) : 0);
    }
    if (arguments[1] == "--version") {
        print("lapwright " LAPWRIGHT_VERSION);
        return delivered(0);
    }
    if (arguments[1] == "--manual") {
        print(manualPage());
        return delivered(0);
    }
    const auto& all = subcommands();
    const auto chosen =
        std::find_if(all.begin(), all.end(), [&](const Subcommand& one) { return one.name == arguments[1]; });
    if (chosen == all.end())
        return fail("no subcommand " + arguments[1] + "; see lapwright --help");
    try {
        return delivered(runSubcommand(*chosen, arguments));
    } catch (const lapwright::storage::StorageFailure& failure) {
        tell(std::string("lapwright: this could not be done: ") + failure.what());
        return static_cast<int>(Exit::CouldNot);
    }
}
