#include "storage/shop_key.h"

#include "storage/rows.h"
#include "storage/signing_seed.h"

namespace lapwright::storage {

namespace {

constexpr const char* seedSetting = "signing_seed";

} // namespace

std::optional<documents::PublicKey> shopPublicKey(const Database& database)
{
    Rows rows = database.query("SELECT value FROM settings WHERE key = ?", {seedSetting});
    if (!rows.next())
        return std::nullopt;
    return keyOfSeed(text(rows.text(0))).publicKey();
}

documents::SigningKey shopKey(const Database& database)
{
    database.run("INSERT INTO settings (key, value) VALUES (?, ?) ON CONFLICT (key) DO NOTHING",
                 {seedSetting, freshSeed()});
    Rows rows = database.query("SELECT value FROM settings WHERE key = ?", {seedSetting});
    return keyOfSeed(rows.next() ? text(rows.text(0)) : QString());
}

void renewShopKey(const Database& database)
{
    database.run("INSERT INTO settings (key, value) VALUES (?, ?)"
                 " ON CONFLICT (key) DO UPDATE SET value = excluded.value",
                 {seedSetting, freshSeed()});
}

} // namespace lapwright::storage
