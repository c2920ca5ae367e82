#pragma once

#include <QPainterPath>
#include <QString>
#include <QStringList>

namespace lapwright::look {

/// Our own signs, drawn as bent sheet: straight legs, square ends. Each lies on a 24 by 24 grid and is
/// stroked two wide. An unknown name gives an empty path.
[[nodiscard]] QPainterPath iconPath(const QString& name);

/// All names, sorted.
[[nodiscard]] QStringList iconNames();

} // namespace lapwright::look
