#pragma once

#include "fold/machine.h"
#include "measure/result.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::acts {

/// The folding machines that ship with the program, and the shop's own.
[[nodiscard]] Result<std::vector<fold::Machine>> loadMachines(const std::vector<std::string>& shopFolders);

/// Index of the machine of this id. Error, placed at `place`, if there is none; it names those there are.
[[nodiscard]] Result<std::size_t> machineNamed(const std::vector<fold::Machine>& machines,
                                               const std::string& id, const std::string& place);

} // namespace lapwright::acts
