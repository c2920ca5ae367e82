#include "application.h"

#include <QGuiApplication>
#include <QTemporaryDir>

#include <string_view>

namespace lapwright::command {

std::unique_ptr<QCoreApplication> applicationFor(int& argc, char** argv)
{
    const std::string_view command = argc < 2 ? "" : argv[1];
    if (command != "print" && command != "check")
        return std::make_unique<QCoreApplication>(argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    // Without a session, as from a script, Qt would complain that it has no place for what only a session
    // needs.
    static const QTemporaryDir runtime;
    if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR"))
        qputenv("XDG_RUNTIME_DIR", runtime.path().toLocal8Bit());
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace lapwright::command
