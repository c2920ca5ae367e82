#pragma once

#include "cutting/instance.h"

#include <optional>

namespace lapwright::cutting {

/// Worths of the kinds by which no pattern is worth more than it costs, in whole numbers for the checker.
/// Missing where all are worth nothing. `dearest`: the most that anything else in it will be worth.
[[nodiscard]] std::optional<Certificate>
patternCertificate(const Instance& instance, const std::vector<double>& worths, double dearest = 0.0);

/// A little less than a worth, so that rounding makes no pattern worth more than it costs.
[[nodiscard]] std::int64_t wholeWorth(double worth, double scale);

} // namespace lapwright::cutting
