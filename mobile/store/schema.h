#pragma once

#include <QStringList>

namespace lapwright::store {

/// The statements that bring a tablet's schema from version `from` to `from + 1`; one transaction each. A
/// released migration is never changed: a new one is added.
[[nodiscard]] QStringList schemaAfter(int from);

/// The version that this program reads and writes.
inline constexpr int newestSchema = 2;

} // namespace lapwright::store
