#pragma once

#include <QCoreApplication>

#include <memory>

namespace lapwright::command {

/// The application of a program called so. Printing sets type, for which Qt wants its GUI but no screen: it
/// gets the offscreen platform unless the environment names another. Everything else does without.
[[nodiscard]] std::unique_ptr<QCoreApplication> applicationFor(int& argc, char** argv);

} // namespace lapwright::command
