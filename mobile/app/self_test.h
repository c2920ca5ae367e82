#pragma once

#include "model/field_app.h"

#include <QQuickWindow>
#include <QString>

namespace lapwright::field {

/// Shows every screen with the sample house in every size and theme, and keeps a picture of each in `folder`
/// if one is given. What went wrong, a line each; empty if nothing.
[[nodiscard]] QStringList selfTest(FieldApp& app, QQuickWindow& window, const QString& folder);

} // namespace lapwright::field
