#pragma once

#include <QString>

#include <functional>

class QSaveFile;

/// Files that are made for their owner alone, and files that are put in place whole: copies of whole
/// databases, documents, photos.
namespace lapwright::storage {

/// Lets `fill` write to an empty file beside `target` that nobody but its owner may read, and puts it in the
/// place of what stands there, in one step, once it is on the disk. False if that cannot be; whatever `fill`
/// throws goes on to the caller. Either way what stood there stays, and no rest of the new file.
[[nodiscard]] bool fillInPlace(const QString& target, const std::function<void(const QString&)>& fill);

/// Puts what was written to `file` in its place in the same way. False, and what stood there stays, if any of
/// it did not go.
[[nodiscard]] bool putInPlace(QSaveFile& file);

} // namespace lapwright::storage
