#pragma once

#include <string>

namespace lapwright::acts {

/// A new UUID of version 4 from the system's randomness.
[[nodiscard]] std::string newUuid();

} // namespace lapwright::acts
