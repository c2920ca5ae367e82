#include "store/shops.h"

#include "store/values.h"

namespace lapwright::store {

std::vector<KnownShop> knownShops(const Connection& connection)
{
    Rows query = connection.query("SELECT key, refused_at FROM shops ORDER BY trusted_at, key");
    std::vector<KnownShop> shops;
    while (query.next())
        shops.push_back({string(query.value(0)), string(query.value(1))});
    return shops;
}

void trustShop(const Connection& connection, const std::string& key, const std::string& at)
{
    connection.run("INSERT INTO shops (key, trusted_at, refused_at) VALUES (?, ?, '')"
                   " ON CONFLICT (key) DO UPDATE SET trusted_at = excluded.trusted_at, refused_at = ''",
                   {text(key), text(at)});
}

void refuseShop(const Connection& connection, const std::string& key, const std::string& at)
{
    connection.run("UPDATE shops SET refused_at = ? WHERE key = ?", {text(at), text(key)});
}

} // namespace lapwright::store
