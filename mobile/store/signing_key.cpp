#include "store/signing_key.h"

#include "storage/signing_seed.h"
#include "store/settings.h"

namespace lapwright::store {

namespace {

const QString seedSetting = QStringLiteral("signing_seed");

} // namespace

documents::SigningKey signingKey(const Connection& connection)
{
    QString seed = setting(connection, seedSetting).value_or(QString());
    if (!storage::isSeed(seed)) {
        seed = storage::freshSeed();
        setSetting(connection, seedSetting, seed);
    }
    return storage::keyOfSeed(seed);
}

} // namespace lapwright::store
