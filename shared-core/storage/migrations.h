#pragma once

#include <QStringList>

namespace lapwright::storage {

/// In SQLite's words (Connection::inItsWords() has PostgreSQL's): the statements that bring the schema from
/// version `from` to `from + 1`; one migration is one transaction. A released migration is never changed: a
/// new one is added.
[[nodiscard]] QStringList migration(int from);

/// The version that this program reads and writes.
inline constexpr int schemaVersion = 5;

} // namespace lapwright::storage
