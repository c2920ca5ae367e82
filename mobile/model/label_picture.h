#pragma once

#include "measure/result.h"

#include <QString>

namespace lapwright::field {

/// What the QR code on a photo of a label says, however the photo lies. Errors: no picture, or no code in it
/// that can be read.
[[nodiscard]] Result<QString> labelOn(const QString& path);

} // namespace lapwright::field
