#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "schedule/cost_rates.h"
#include "schedule/stock.h"
#include "storage/database.h"

#include <optional>
#include <string>

/// What the shop asks for metal and work.
namespace lapwright::acts {

using RatesDocument = documents::Document<schedule::CostRates>;

/// The rates kept in the shop's database; nothing before they were given. Error: a document there that does
/// not hold.
[[nodiscard]] Result<std::optional<RatesDocument>> standingRates(const storage::Database& database);

/// A document to begin with: every metal and gauge of the stock, at no price yet.
[[nodiscard]] RatesDocument ratesToFillIn(const schedule::ShopStock& stock);

/// "4.10 USD a kilogram", "28.90 USD a square metre".
[[nodiscard]] std::string priceInWords(const schedule::MaterialRate& rate, const std::string& currency);
/// Waste, labour and tax, one thing a line; without what the shop notes itself.
[[nodiscard]] std::string chargesInWords(const schedule::CostRates& rates);

} // namespace lapwright::acts
