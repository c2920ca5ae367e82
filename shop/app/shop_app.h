#pragma once

class QGuiApplication;

namespace lapwright::shop_app {

/// The whole program but the application object: reads the command line, opens the shop's database, shows the
/// window. Returns the exit status: 0 done, 1 the self-test found something, 2 bad usage, 3 the database or
/// library could not be opened.
[[nodiscard]] int run(QGuiApplication& application);

} // namespace lapwright::shop_app
