#pragma once

#include "cutting/settings.h"

namespace lapwright::acts {

/// Stops a search for a cut plan by the clock of this machine.
[[nodiscard]] cutting::Control searchControl();

} // namespace lapwright::acts
