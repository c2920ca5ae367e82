#pragma once

#include <QStringList>

class QQuickWindow;

namespace lapwright::shop_app {

/// The words of a window that a person cannot read whole: those that are cut off or shortened, and those that
/// reach beyond the window. Lines of lists may be shortened: what they stand for is shown whole beside them.
[[nodiscard]] QStringList clippedWords(QQuickWindow& window);

} // namespace lapwright::shop_app
