#pragma once

#include "schedule/batch.h"

#include <string>

namespace lapwright::acts {

/// "Larkfield House, E1.2": what a person calls a blank of the batch.
[[nodiscard]] std::string blankInWords(const schedule::Batch& batch, const std::string& blankKey);

} // namespace lapwright::acts
