#pragma once

#include "measure/result.h"
#include "storage/library.h"

#include <string>
#include <vector>

/// The shop's own data files: what a person adds to what ships with the program, or puts in its place.
namespace lapwright::acts {

/// The document of this id as it counts now. Errors: a library that cannot be read, no document of that id.
[[nodiscard]] Result<std::string> libraryDocument(storage::LibraryKind kind, const std::string& id,
                                                  const std::vector<std::string>& shopFolders);

/// Puts a document into the shop's own folder, which is the last of `shopFolders`: in place of the one of the
/// same id, or beside those there are. Its id. Errors: a document that does not hold, or that does not go
/// with the rest of the library; an id that is no plain name (a-z, 0-9, -); no folder; a file that cannot be
/// written.
[[nodiscard]] Result<std::string> addToLibrary(storage::LibraryKind kind, const std::string& text,
                                               const std::vector<std::string>& shopFolders);

} // namespace lapwright::acts
