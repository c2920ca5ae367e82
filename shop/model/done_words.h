#pragma once

#include "acts/last_done.h"

#include <QString>

namespace lapwright::model {

/// "folded 2026-11-26 10:32 by Ann, folder". People and stations are called what they call themselves,
/// whatever language is spoken.
[[nodiscard]] QString inWords(const acts::Done& done);
/// " · folded 2026-11-26 10:32 by Ann, folder", to stand behind something else.
[[nodiscard]] QString behind(const acts::Done& done);

} // namespace lapwright::model
