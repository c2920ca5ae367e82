#pragma once

#include <QString>

namespace lapwright::look {

/// Makes the interface's face known and the application's own. Call it once, after the application object and
/// before any QML: items take the application's font as they are made.
void prepareFaces();

/// The family of the interface: Clear Sans, whose letters and figures are not mistaken for each other, or the
/// pictures' face where it is missing.
[[nodiscard]] QString interfaceFamily();

} // namespace lapwright::look
