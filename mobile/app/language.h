#pragma once

#include <QString>

namespace lapwright::field {

/// Speaks the language of this code ("en", "de"), the system's if it is empty; English where there is no
/// translation. Call it before anything is shown; again to change.
void speak(const QString& language);

} // namespace lapwright::field
