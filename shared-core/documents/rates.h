#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "schedule/cost_rates.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

/// lapwright/rates. Errors: those of openDocument, with a JSON pointer as place; a metal, gauge and colour
/// given twice; a material with two rates or none.
[[nodiscard]] Result<Document<schedule::CostRates>> readRates(std::string_view text);
[[nodiscard]] std::string writeRates(const Document<schedule::CostRates>& rates,
                                     Layout layout = Layout::Readable);

} // namespace lapwright::documents
