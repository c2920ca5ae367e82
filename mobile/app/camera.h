#pragma once

#include <QQmlEngine>
#include <QUrl>

namespace lapwright::field {

/// The QML file that shows what this machine's camera sees. Empty where QtMultimedia is not installed, or
/// where the system has no camera. It is loaded when a photo or a label is wanted, and not before:
/// QtMultimedia costs memory and time that measuring a house does not need.
[[nodiscard]] QUrl cameraView(const QQmlEngine& engine);

} // namespace lapwright::field
