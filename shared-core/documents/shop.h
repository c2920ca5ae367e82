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

/// One item of a stock by itself, as a person fills it in: an entry of lapwright/stock, without what a
/// document begins with. Errors also: a width or length of nothing, more than one coil or remnant of a name,
/// a cost of nothing, a longest crosscut of what is no coil.
[[nodiscard]] Result<Document<schedule::StockItem>> readStockItem(std::string_view text);
/// Members in the order in which a person goes through them.
[[nodiscard]] std::string writeStockItem(const Document<schedule::StockItem>& item);

/// lapwright/load. Errors also: a bundle's label used twice.
[[nodiscard]] Result<Document<schedule::Load>> readLoad(std::string_view text);
[[nodiscard]] std::string writeLoad(const Document<schedule::Load>& load, Layout layout = Layout::Readable);

/// lapwright/receipt. Errors also: an event id used twice.
[[nodiscard]] Result<Document<schedule::Receipt>> readReceipt(std::string_view text);
[[nodiscard]] std::string writeReceipt(const Document<schedule::Receipt>& receipt,
                                       Layout layout = Layout::Readable);

} // namespace lapwright::documents
