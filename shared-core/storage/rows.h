#pragma once

#include "storage/orders.h"
#include "storage/result_rows.h"

#include <QString>

#include <optional>
#include <string>
#include <string_view>

/// How core values stand in database rows; for the files of this folder only.
namespace lapwright::storage {

[[nodiscard]] inline QString text(std::string_view value)
{
    return QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size()));
}

/// What table settings has under `key`; nothing where there is none.
[[nodiscard]] std::optional<std::string> setting(const Database& database, const char* key);
void saveSetting(const Database& database, const char* key, const std::string& value);

/// The columns of table pieces (as p) that pieceAt() reads, in its order.
[[nodiscard]] QString pieceColumns();
/// The piece in the current row of `rows`, whose column `first` is the first of pieceColumns().
[[nodiscard]] OrderedPiece pieceAt(const Rows& rows, int first);

/// The columns of table current_orders (as o) that summaryAt() reads, in its order; ten of them.
[[nodiscard]] QString summaryColumns();
[[nodiscard]] OrderSummary summaryAt(const Rows& rows, int first);

} // namespace lapwright::storage
