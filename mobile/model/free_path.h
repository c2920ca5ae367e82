#pragma once

#include <QString>

#include <functional>
#include <string>

namespace lapwright::field {

/// A time of the core (UTC, to the second or finer) as a file name takes it: "2026-11-25-080000".
[[nodiscard]] QString fileStamp(const std::string& time);

/// Where a document goes in `folder`: `stem` with `ending`, or "stem-2", "stem-3" … if another document
/// stands there. `mayReplace` is asked with the bytes of what stands there; what cannot be read is not
/// replaced.
[[nodiscard]] QString freePath(const QString& folder, const QString& stem, const QString& ending,
                               const std::function<bool(const std::string&)>& mayReplace);

} // namespace lapwright::field
