#pragma once

#include "store/connection.h"

#include <optional>

/// What a person set on this tablet, by key.
namespace lapwright::store {

[[nodiscard]] std::optional<QString> setting(const Connection& connection, const QString& key);
void setSetting(const Connection& connection, const QString& key, const QString& value);

} // namespace lapwright::store
