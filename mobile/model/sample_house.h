#pragma once

#include "pieces/order.h"
#include "schedule/load.h"
#include "site/job.h"

namespace lapwright::field {

/// An invented house, measured: an L-shaped eave line that closes, a rake wing, hips, a valley, a ridge, a
/// door; some trim chosen, some left to choose. Without identity and names.
[[nodiscard]] site::Job sampleHouse();

/// The pieces of an order tied into bundles on an invented truck. Without identity and time.
[[nodiscard]] schedule::Load sampleLoad(const pieces::Order& order);

} // namespace lapwright::field
