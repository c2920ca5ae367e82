#pragma once

#include "measure/length.h"

#include <string>

namespace lapwright::print {

/// A PDF as Qt wrote it, put right in two things: its pages are `width` × `height` to a thousandth of a point
/// (Qt rounds to whole points, 0.35 mm), and it was made at `madeAt` (ISO 8601, UTC) instead of by the clock.
/// Precondition: all pages of the PDF have that size, rounded.
[[nodiscard]] std::string finishedPdf(std::string pdf, Length width, Length height,
                                      const std::string& madeAt);

} // namespace lapwright::print
