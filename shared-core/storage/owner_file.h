#pragma once

#include <QString>

/// Files that hold names, addresses or a key: copies of whole databases.
namespace lapwright::storage {

/// An empty file that nobody but its owner may read, in place of what stood there. False if there can be
/// none.
[[nodiscard]] bool makeForOwner(const QString& path);

/// Puts the file in the place of what stands at `target`, in one step, once it is on the disk. False, and the
/// file is gone, if that cannot be.
[[nodiscard]] bool putInPlace(const QString& path, const QString& target);

} // namespace lapwright::storage
