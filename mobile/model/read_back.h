#pragma once

#include "documents/job.h"

#include <optional>
#include <string>

namespace lapwright::field {

/// What keeps a changed job from being opened again: the first error that reading `text`, which is `now`
/// written, would say; nothing if it reads. `before` is known to read, so that of chains and runs only what
/// differs is read: a run more in a house of a thousand costs what it does in a house of ten.
[[nodiscard]] std::optional<Error> whatDoesNotRead(const documents::JobDocument& before,
                                                   const documents::JobDocument& now,
                                                   const std::string& text);

} // namespace lapwright::field
