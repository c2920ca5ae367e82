#pragma once

#include "store/connection.h"

#include <QString>

/// One-touch backup of everything the tablet keeps, and the way back.
namespace lapwright::store {

/// Writes all jobs, journals, orders, loads, receipts and settings into one file in `folder`, whole by itself
/// and checked after it is written; the photos into a folder beside it, named like it (pictures.h). Its path.
/// `stamp` (digits and dashes) goes into its name. Throws StoreFailure.
[[nodiscard]] QString backUp(const Connection& connection, const QString& folder, const QString& stamp);

/// Puts everything back as the backup has it, photos first, the rest in one transaction, after a copy of what
/// is here was made: "lapwright-before-restore-STAMP.db" beside the backup, or beside the database where that
/// folder does not take it. Its path. The photos of before stay where they are. Backups of older programs
/// are migrated on the way; the backup itself is not touched. Throws StoreFailure if it is damaged, no
/// backup, or of a newer program: then nothing changes.
QString restore(const Connection& connection, const QString& backup, const QString& stamp);

} // namespace lapwright::store
