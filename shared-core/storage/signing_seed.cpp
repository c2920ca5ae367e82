#include "storage/signing_seed.h"

#include "storage/database.h"

#include <QByteArray>
#include <QRandomGenerator>

#include <algorithm>

namespace lapwright::storage {

using Seed = documents::SigningKey::Seed;

QString freshSeed()
{
    QByteArray bytes(static_cast<qsizetype>(Seed{}.size()), Qt::Uninitialized);
    std::generate(bytes.begin(), bytes.end(),
                  [] { return static_cast<char>(QRandomGenerator::system()->bounded(256)); });
    return QString::fromLatin1(bytes.toHex());
}

bool isSeed(const QString& text)
{
    return QByteArray::fromHex(text.toLatin1()).size() == static_cast<qsizetype>(Seed{}.size());
}

documents::SigningKey keyOfSeed(const QString& seed)
{
    if (!isSeed(seed))
        throw StorageFailure("the seed of the key that signs is damaged");
    const QByteArray bytes = QByteArray::fromHex(seed.toLatin1());
    Seed numbers{};
    std::copy(bytes.begin(), bytes.end(), numbers.begin());
    return documents::SigningKey(numbers);
}

} // namespace lapwright::storage
