#pragma once

#include <QString>

namespace lapwright::field {

/// Speaks the language of this code ("en", "es") or of this .qm file, the system's if it is empty, English
/// where there is no translation, and writes numbers and dates as that language does where the tablet is at
/// home. What is shown already is said anew by QQmlEngine::retranslate() and FieldApp::sayAnew().
void speak(const QString& language);

} // namespace lapwright::field
