#pragma once

#include <QString>

class QSaveFile;

/// Files that are made for their owner alone, and files that are put in place whole: copies of whole
/// databases, documents, photos.
namespace lapwright::storage {

/// An empty file that nobody but its owner may read, in place of what stood there. False if there can be
/// none.
[[nodiscard]] bool makeForOwner(const QString& path);

/// Puts the file in the place of what stands at `target`, in one step, once it is on the disk. False, and the
/// file is gone, if that cannot be.
[[nodiscard]] bool putInPlace(const QString& path, const QString& target);

/// The same for what was written to `file`. False, and what stood there stays, if any of it did not go.
[[nodiscard]] bool putInPlace(QSaveFile& file);

} // namespace lapwright::storage
