#pragma once

#include "measure/result.h"

#include <QString>

#include <string>
#include <vector>

namespace lapwright::storage {

/// One data file: its name for messages, and its text.
struct LibraryFile {
    std::string name;
    std::string text;
};

enum class LibraryKind { Metals, Trims, RuleSets, Machines };

/// What the folder of a kind is called.
[[nodiscard]] QString libraryFolder(LibraryKind kind);

/// The data files of one kind: those inside the program, then those of each folder in `shopFolders` that has
/// a subfolder of the kind (metal-library, trim-library, rule-sets, machines). A shop's file of the same name
/// replaces the program's own. Errors: a named folder or file that cannot be read, a folder with other things
/// in it but none of the kinds.
[[nodiscard]] Result<std::vector<LibraryFile>> libraryFiles(LibraryKind kind,
                                                            const std::vector<std::string>& shopFolders);

} // namespace lapwright::storage
