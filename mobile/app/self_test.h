#pragma once

#include "model/field_app.h"

#include <QQuickWindow>
#include <QString>

namespace lapwright::field {

/// Shows every screen with the sample house, its order on a truck and a photo, in every size and theme, and
/// keeps a picture of each in `folder` if one is given. What went wrong, a line each: a screen that shows
/// nothing, something too small to be hit or without a name, words cut off, any warning. Empty if nothing.
/// With a language chosen, only the smallest sizes.
[[nodiscard]] QStringList selfTest(FieldApp& app, const Tablet& tablet, QQuickWindow& window,
                                   const QString& folder);

} // namespace lapwright::field
