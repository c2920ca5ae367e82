#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// First fit by descending width of strip, then by descending length: an exact (2e) pattern filled from what
/// `residual` (one count for each kind) still asks for. Empty strips where nothing fits.
[[nodiscard]] RawPattern firstFitPattern(const Instance& instance, int stock,
                                         const std::vector<std::int64_t>& residual);

/// A legal plan at once: dear-to-waste stock first (remnants that pay), then sheet by sheet whichever stock
/// carries most for its cost. `used` is what is already taken of each stock; what the stock cannot hold stays
/// in `residual`.
[[nodiscard]] RawPlan firstFitPlan(const Instance& instance, std::vector<std::int64_t>& residual,
                                   std::vector<std::int64_t>& used);

} // namespace lapwright::cutting
