#pragma once

#include <QString>

namespace lapwright::field {

/// Speaks the language of this code ("en", "de"), the system's if it is empty; English where there is no
/// translation. What is shown already is said anew by QQmlEngine::retranslate() and FieldApp::sayAnew().
void speak(const QString& language);

} // namespace lapwright::field
