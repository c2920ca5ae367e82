#pragma once

#include "schedule/floor.h"

#include <string>

/// The floor in words.
namespace lapwright::acts {

/// "monday to friday 07:00-12:00, 12:30-15:30; saturday 08:00-12:00".
[[nodiscard]] std::string hoursInWords(const schedule::Hours& hours);
/// How long the machine takes for what it does, one thing a line; what the shop did not measure is marked as
/// usual.
[[nodiscard]] std::string ratesInWords(const schedule::Floor& floor, const schedule::FloorMachine& machine);

} // namespace lapwright::acts
