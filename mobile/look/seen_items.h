#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

#include <vector>

/// What a person sees and hears of a window, for the self-tests of both apps and the tests.
namespace lapwright::look {

/// Smallest side of what is to be hit with a glove: 9 mm at 160 dpi, in device-independent pixels.
inline constexpr double leastTouch = 48.0;

/// Everything in the window that is visible, parents before children.
[[nodiscard]] std::vector<QQuickItem*> visibleItems(const QQuickWindow& window);

/// The name a screen reader says; empty if it has none.
[[nodiscard]] QString spokenName(QQuickItem* item);

/// Whether it is a button, a picker or a field to type in.
[[nodiscard]] bool isPressable(const QQuickItem* item);

/// The list of that name that is in sight; nullptr if there is none.
[[nodiscard]] QQuickItem* listNamed(const QQuickWindow& window, const QString& name);

/// Everything pressable of the window that is smaller than `leastTouch`, has no name, or reaches beyond the
/// window where nothing scrolls, in a line each.
[[nodiscard]] QStringList hardToHit(const QQuickWindow& window);

/// The words of the window that a person cannot read whole, in a line each: shortened, higher or wider than
/// the room they have, or beyond the sides of the window where nothing scrolls sideways.
[[nodiscard]] QStringList cutOff(const QQuickWindow& window);

} // namespace lapwright::look
