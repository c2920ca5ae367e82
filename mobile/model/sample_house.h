#pragma once

#include "site/job.h"

namespace lapwright::field {

/// An invented house, measured: an L-shaped eave line that closes, a rake wing, hips, a valley, a ridge, a
/// door; some trim chosen, some left to choose. Without identity and names.
[[nodiscard]] site::Job sampleHouse();

} // namespace lapwright::field
