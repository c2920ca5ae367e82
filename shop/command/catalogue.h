#pragma once

#include "fold/machine.h"
#include "measure/result.h"
#include "pieces/takeoff.h"

#include <string>
#include <vector>

namespace lapwright::command {

/// Metals, trims and rule sets that ship with the program, and those of the shop's own folders.
[[nodiscard]] Result<pieces::Catalogue> loadCatalogue(const std::vector<std::string>& shopFolders);

/// The folding machines that ship with the program, and the shop's own.
[[nodiscard]] Result<std::vector<fold::Machine>> loadMachines(const std::vector<std::string>& shopFolders);

} // namespace lapwright::command
