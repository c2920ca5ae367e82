#pragma once

#include "fold/plan.h"
#include "measure/writing.h"

#include <QString>

/// One fold step as the operator reads it.
namespace lapwright::model {

/// What is set: an angle, the gap of an open hem, or "flat".
[[nodiscard]] QString angleInWords(const fold::FoldStep& step, const Style& style);
/// What is done with the sheet before the step; the first one lays it in.
[[nodiscard]] QString handlingInWords(const fold::FoldStep& step, bool first);
/// The icon of that.
[[nodiscard]] QString signOfHandling(const fold::FoldStep& step);
[[nodiscard]] QString cautionsInWords(const fold::FoldStep& step, const Style& style);

} // namespace lapwright::model
