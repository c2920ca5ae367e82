#pragma once

#include "acts/shop_stock.h"
#include "draft.h"

#include <QString>

#include <functional>
#include <optional>
#include <string>

namespace lapwright::model {

/// An item of stock to be changed, or a new one where `before` is missing.
struct StockDraft {
    QString title;
    std::optional<schedule::StockItem> before; ///< as it is when its draft opens
    /// Whether something else on the racks has that key.
    std::function<bool(const std::string& key)> isTaken;
    /// It is kept under that key.
    std::function<void(const std::string& key)> kept;
};

[[nodiscard]] DraftSubject stockSubject(Shop& shop, StockDraft draft);

/// One to fill in: of the same material and size as `like`, or 4 by 10 ft of the first metal in the library.
[[nodiscard]] schedule::StockItem itemToFillIn(const Shop& shop, const schedule::StockItem* like);

} // namespace lapwright::model
