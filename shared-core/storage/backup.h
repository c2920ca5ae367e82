#pragma once

#include "measure/result.h"
#include "storage/database.h"

#include <string>

/// Everything the shop's database keeps, as one file to put away.
namespace lapwright::storage {

/// Writes a copy of the whole database, as it is at one moment, to `path`; stations may go on working. What
/// stands at `path` is replaced in one step, once the copy is whole and on the disk; nobody but the owner may
/// read it. Errors: a database on a server, which its own tools back up; a damaged database; the file that
/// the database itself is; a place that cannot be written.
[[nodiscard]] Result<bool> backUp(const Database& database, const std::string& path);

/// Puts everything a copy keeps in place of everything `database` keeps, in one transaction that every
/// station sees. The copy itself is left as it is; one that an older program made is brought up to date on
/// its way. Errors: a database on a server; a file that is not there, empty, damaged, or no database of this
/// program.
[[nodiscard]] Result<bool> restore(const Database& database, const std::string& path);

} // namespace lapwright::storage
