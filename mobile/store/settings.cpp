#include "store/settings.h"

namespace lapwright::store {

std::optional<QString> setting(const Connection& connection, const QString& key)
{
    Rows query = connection.query("SELECT value FROM settings WHERE key = ?", {key});
    if (!query.next())
        return std::nullopt;
    return query.value(0).toString();
}

void setSetting(const Connection& connection, const QString& key, const QString& value)
{
    connection.run("INSERT INTO settings (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = "
                   "excluded.value",
                   {key, value.isNull() ? QString("") : value});
}

} // namespace lapwright::store
