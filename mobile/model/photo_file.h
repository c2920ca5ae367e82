#pragma once

#include "measure/result.h"

#include <QByteArray>
#include <QImage>
#include <QString>

namespace lapwright::field {

/// Longest side of a photo as it is kept, in pixels: enough to see a nail, little enough to send.
inline constexpr int longestPhotoSide = 1600;

/// The picture of a file as a JPEG of at most that side, upright, without anything else the camera wrote into
/// it (where it was taken, by whom). The same file gives the same bytes. Errors: no file, no picture, or one
/// too large for this machine.
[[nodiscard]] Result<QByteArray> photoFrom(const QString& path);

/// The same of what the camera sees. Errors: it sees nothing.
[[nodiscard]] Result<QByteArray> photoFrom(const QImage& seen);

} // namespace lapwright::field
