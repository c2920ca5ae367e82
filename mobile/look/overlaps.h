#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace lapwright::look {

/// What lies over something else that is to be read or hit, in a line each: words over words, over a button
/// they do not belong to, or buttons over each other. What an opaque sheet covers is not in the way of
/// anything.
[[nodiscard]] QStringList overlaps(const QQuickWindow& window);

} // namespace lapwright::look
