#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "schedule/load.h"
#include "schedule/receipt.h"
#include "schedule/stock.h"

#include <string>
#include <string_view>

/// What the shop and the crew exchange: stock, loads, receipts. All reading errors are those of openDocument,
/// with a JSON pointer as place, and what is said beside each.
namespace lapwright::documents {

/// lapwright/stock. Errors also: a key used twice.
[[nodiscard]] Result<Document<schedule::ShopStock>> readStock(std::string_view text);
[[nodiscard]] std::string writeStock(const Document<schedule::ShopStock>& stock,
                                     Layout layout = Layout::Readable);

/// lapwright/load. Errors also: a bundle's label used twice.
[[nodiscard]] Result<Document<schedule::Load>> readLoad(std::string_view text);
[[nodiscard]] std::string writeLoad(const Document<schedule::Load>& load, Layout layout = Layout::Readable);

/// lapwright/receipt. Errors also: an event id used twice.
[[nodiscard]] Result<Document<schedule::Receipt>> readReceipt(std::string_view text);
[[nodiscard]] std::string writeReceipt(const Document<schedule::Receipt>& receipt,
                                       Layout layout = Layout::Readable);

} // namespace lapwright::documents
