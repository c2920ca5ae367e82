#pragma once

#include "model/field_app.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>

namespace lapwright::field {

/// The window with all screens over `app`, shown; null, with the reason on the engine's way of warning, if a
/// screen does not load. The engine owns it.
[[nodiscard]] QQuickWindow* openWindow(QQmlApplicationEngine& engine, FieldApp& app);

} // namespace lapwright::field
