#include "store/signing_key.h"

#include "store/settings.h"

#include <QRandomGenerator>

#include <algorithm>

namespace lapwright::store {

namespace {

const QString seedSetting = QStringLiteral("signing_seed");

QByteArray freshSeed()
{
    QByteArray seed(static_cast<qsizetype>(documents::SigningKey::Seed{}.size()), Qt::Uninitialized);
    std::generate(seed.begin(), seed.end(),
                  [] { return static_cast<char>(QRandomGenerator::system()->bounded(256)); });
    return seed;
}

} // namespace

documents::SigningKey signingKey(const Connection& connection)
{
    documents::SigningKey::Seed seed{};
    QByteArray kept = QByteArray::fromHex(setting(connection, seedSetting).value_or(QString()).toLatin1());
    if (kept.size() != static_cast<qsizetype>(seed.size())) {
        kept = freshSeed();
        setSetting(connection, seedSetting, QString::fromLatin1(kept.toHex()));
    }
    std::copy(kept.begin(), kept.end(), seed.begin());
    return documents::SigningKey(seed);
}

} // namespace lapwright::store
