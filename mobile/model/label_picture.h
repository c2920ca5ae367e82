#pragma once

#include "measure/result.h"

#include <QImage>
#include <QString>

#include <optional>

namespace lapwright::field {

/// What the QR code on a photo of a label says, however the photo lies. Errors: no picture, or no code in it
/// that can be read.
[[nodiscard]] Result<QString> labelOn(const QString& path);

/// The same of what the camera sees; nothing while it sees no code.
[[nodiscard]] std::optional<QString> labelOn(const QImage& seen);

} // namespace lapwright::field
