#pragma once

#include "documents/signature.h"

#include <QString>

/// The secret numbers that keys are made from, as databases keep them.
namespace lapwright::storage {

/// 32 bytes of the system's own chance, as 64 hexadecimal digits.
[[nodiscard]] QString freshSeed();
/// The key of a seed that freshSeed() gave. Throws StorageFailure if `seed` is no such text.
[[nodiscard]] documents::SigningKey keyOfSeed(const QString& seed);
[[nodiscard]] bool isSeed(const QString& text);

} // namespace lapwright::storage
