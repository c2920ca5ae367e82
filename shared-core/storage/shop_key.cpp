#include "storage/shop_key.h"

#include "storage/rows.h"
#include "storage/signing_seed.h"

namespace lapwright::storage {

namespace {

constexpr const char* seedSetting = "signing_seed";

} // namespace

std::optional<documents::PublicKey> shopPublicKey(const Database& database)
{
    const auto seed = setting(database, seedSetting);
    return seed ? std::optional(keyOfSeed(text(*seed)).publicKey()) : std::nullopt;
}

documents::SigningKey shopKey(const Database& database)
{
    if (!setting(database, seedSetting))
        renewShopKey(database);
    return keyOfSeed(text(setting(database, seedSetting).value()));
}

void renewShopKey(const Database& database)
{
    saveSetting(database, seedSetting, freshSeed().toStdString());
}

} // namespace lapwright::storage
